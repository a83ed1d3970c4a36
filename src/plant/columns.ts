import { frozen } from "../core/index";

/**
 * What the cells of a column hold: a text, a number in the unit that the heading names, a reading with its unit, an
 * amount (a per cent or a reading), a date (2026-03-31), or one of a closed list.
 */
export type CellKind = "text" | "number" | "reading" | "amount" | "date" | "choice";

/** The parts of a row, in the order of the job. */
export type ColumnGroup = "machine" | "limits" | "measurement" | "device" | "baseline" | "check";

/** A column of the list of a plant. */
export interface PlantColumnEntry {
  readonly group: ColumnGroup;
  readonly holds: CellKind;
  readonly says: string;
  readonly example: string;
  /** Other headings that are read as this one. */
  readonly also?: readonly string[];
}

/**
 * The columns of the list of a plant. Only the tag and the kind of machine must be there; what is left empty is not known.
 * To add one, add its row here and its place in the data of a machine.
 */
// biome-ignore format: a row of a table is a line
export const plantColumns = /* @__PURE__ */ frozen({
  tag: { group: "machine", holds: "text", says: "what the machine is called on the plant, once in the list", example: "LU-01" },
  description: { group: "machine", holds: "text", says: "the machine in words, for people", example: "induced-draught fan 1" },
  kind: { group: "machine", holds: "text", says: "the kind of machine, as judge reads it", example: "fan" },
  power: { group: "machine", holds: "text", says: "the rated power with its unit, or a range", example: "132 kW" },
  speed: { group: "machine", holds: "text", says: "the running speed with its unit, or a range", example: "1485 r/min" },
  "shaft height": { group: "machine", holds: "text", says: "the shaft height of an electrical machine with its unit", example: "315 mm" },
  support: { group: "machine", holds: "choice", says: "rigid or flexible, in the measured direction", example: "rigid" },
  place: { group: "machine", holds: "choice", says: "where it is measured: housing or shaft", example: "housing" },
  nameplate: { group: "machine", holds: "text", says: "further words that a table asks for", example: "BV-3 in service" },
  "start-up s": { group: "machine", holds: "number", says: "seconds from the start until it runs steadily", example: "8" },
  "coast-down s": { group: "machine", holds: "number", says: "seconds from the trip until it stands", example: "90" },
  table: { group: "limits", holds: "text", says: "the table of limits by its id; empty: chosen by the nameplate, and told", example: "iso-14694-2003" },
  limits: { group: "limits", holds: "text", says: "limits of the maker or the site, B/C and C/D, in place of a table", example: "4.5, 7.1 mm/s rms" },
  "limits source": { group: "limits", holds: "text", says: "where these limits come from", example: "maker's manual, section 6" },
  ceiling: { group: "limits", holds: "reading", says: "the highest trip that the maker or the site allows", example: "9.5 mm/s rms" },
  sensor: { group: "measurement", holds: "text", says: "the sensitivity of the sensor", example: "100 mV/g" },
  loop: { group: "measurement", holds: "text", says: "the range of the 4-20 mA loop", example: "0 to 20 mm/s rms" },
  band: { group: "measurement", holds: "text", says: "the measured band by its -3 dB edges", example: "10 Hz to 1000 Hz" },
  alarm: { group: "device", holds: "reading", says: "the alarm as it is set", example: "5.6 mm/s rms" },
  "alarm delay s": { group: "device", holds: "number", says: "seconds that the level must stay up before the alarm", example: "5" },
  trip: { group: "device", holds: "reading", says: "the trip as it is set", example: "9 mm/s rms" },
  "trip delay s": { group: "device", holds: "number", says: "seconds that the level must stay up before the trip", example: "8" },
  hysteresis: { group: "device", holds: "amount", says: "how far the level must fall to clear", example: "8 %" },
  "off-delay s": { group: "device", holds: "number", says: "seconds below the reset level before an output clears", example: "0" },
  "start inhibit s": { group: "device", holds: "number", says: "seconds from each start in which no trip is set", example: "0" },
  multiplier: { group: "device", holds: "text", says: "factor on the threshold from each start, and for how long", example: "2 times for 10 s" },
  "timer resets": { group: "device", holds: "choice", says: "when the delay starts over: below threshold, or below reset level", example: "below threshold" },
  latching: { group: "device", holds: "choice", says: "whether a trip stays until it is reset by hand: yes or no", example: "yes" },
  contact: { group: "device", holds: "choice", says: "the contact while its coil is de-energised: normally open or normally closed", example: "normally open" },
  coil: { group: "device", holds: "choice", says: "the coil while nothing is wrong: normally energised or normally de-energised", example: "normally energised" },
  "sensor fault": { group: "device", holds: "choice", says: "what a sensor fault does: alarm, hold or bad", example: "alarm" },
  step: { group: "device", holds: "reading", says: "the smallest step of a setpoint", example: "0.2 mm/s rms" },
  lowest: { group: "device", holds: "reading", says: "the lowest setpoint the device holds", example: "1 mm/s rms" },
  highest: { group: "device", holds: "reading", says: "the highest setpoint the device holds", example: "25 mm/s rms" },
  baseline: { group: "baseline", holds: "reading", says: "the baseline level", example: "2.6 mm/s rms" },
  "baseline date": { group: "baseline", holds: "date", says: "when the baseline was taken", example: "2026-02-16" },
  "baseline count": { group: "baseline", holds: "number", says: "of how many readings it is the median", example: "14" },
  "baseline deviation": { group: "baseline", holds: "reading", says: "the standard deviation of these readings", example: "0.2 mm/s rms" },
  "check date": { group: "check", holds: "date", says: "when the device was last checked against a known vibration", example: "2026-03-10" },
  known: { group: "check", holds: "reading", says: "the known level of that check, with its frequency", example: "8 mm/s rms at 2400 r/min" },
  "as found": { group: "check", holds: "reading", says: "what the device showed before anything was adjusted", example: "7.9 mm/s rms" },
  "as left": { group: "check", holds: "reading", says: "what it showed at the end", example: "7.9 mm/s rms" },
  tolerance: { group: "check", holds: "amount", says: "the largest error allowed", example: "5 %" },
  "checked by": { group: "check", holds: "text", says: "who checked it", example: "shift B" },
  "interval months": { group: "check", holds: "number", says: "months from one check to the next", example: "12" },
} as const satisfies Record<string, PlantColumnEntry>);

/** The heading of a column: a key of {@link plantColumns}. */
export type PlantColumn = keyof typeof plantColumns;
