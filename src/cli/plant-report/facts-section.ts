import { type PlantMachine, plantColumns } from "../../plant/index";
import { format } from "../../reading/index";
import { bullets, facts, section } from "./list-parts";
import { type Markup, markup } from "./markup";

type Row = readonly [name: string, text: string | undefined];

const unitsOfKeys: Readonly<Record<string, string>> = {
  kilowatts: "kW",
  hertz: "Hz",
  millimetres: "mm",
  metres: "m",
};

/** A fact as it was given: a text, a number, a range, or a number under its unit. */
function factText(value: unknown): string {
  if (typeof value !== "object" || value === null) return String(value);
  if (Array.isArray(value)) return value.map(factText).join(", ");
  if ("from" in value && "to" in value) return `${factText(value.from)} to ${factText(value.to)}`;
  return Object.entries(value)
    .map(([key, one]) => {
      const unit = unitsOfKeys[key];
      return unit === undefined ? `${spaced(key)} ${factText(one)}` : `${factText(one)} ${unit}`;
    })
    .join(", ");
}

/** A speed as a nameplate has it. */
function speedText(value: unknown): string {
  if (typeof value !== "object" || value === null) return String(value);
  if ("from" in value && "to" in value) return `${speedText(value.from)} to ${speedText(value.to)}`;
  return "hertz" in value ? `${Number((60 * Number(value.hertz)).toPrecision(6))} r/min` : factText(value);
}

/** A key in words: `shaftHeight` as shaft height. */
function spaced(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

const seconds = (value: number | undefined): string | undefined => (value === undefined ? undefined : `${value} s`);
const yesOrNo = (value: boolean | undefined): string | undefined =>
  value === undefined ? undefined : value ? "yes" : "no";

function nameplateRows({ machine, startUp, coastDown }: PlantMachine): Row[] {
  const { assumedFacts, notUnderstood, type, ...given } = machine;
  return [
    ["kind", type],
    ...Object.entries(given).map(
      ([key, value]): Row => [
        spaced(key),
        value === undefined ? undefined : key === "speed" ? speedText(value) : factText(value),
      ],
    ),
    ["starts up in", seconds(startUp)],
    ["coasts down in", seconds(coastDown)],
  ];
}

function measurementRows({ sensor, loop, band }: PlantMachine): Row[] {
  const edges = band && [band.lowest, band.highest].map(factText);
  return [
    ["sensor", sensor],
    ["loop", loop],
    ["band", edges && `${edges[0]} to ${edges[1]}, by its -3 dB edges`],
  ];
}

function deviceRows({ alarm, alarmDelay, trip, tripDelay, settings, device }: PlantMachine): Row[] {
  const { hysteresis, offDelay, startInhibit, multiplier, timerResets, latching, contact, coil, sensorFault } =
    settings;
  return [
    ["alarm", alarm && format(alarm)],
    ["alarm delay", seconds(alarmDelay)],
    ["trip", trip && format(trip)],
    ["trip delay", seconds(tripDelay)],
    ["hysteresis", hysteresis],
    ["off-delay", seconds(offDelay)],
    ["start inhibit", seconds(startInhibit)],
    ["multiplier", multiplier && `${multiplier.factor} times for ${multiplier.seconds} s from each start`],
    ["timer resets", timerResets],
    ["latching", yesOrNo(latching)],
    ["contact", contact],
    ["coil", coil],
    ["sensor fault", sensorFault],
    ["step", device.step],
    ["lowest", device.lowest],
    ["highest", device.highest],
  ];
}

function baselineRows({ baseline }: PlantMachine): Row[] {
  return [
    ["baseline", baseline && format(baseline.level)],
    ["baseline date", baseline?.date],
    ["baseline count", baseline?.count === undefined ? undefined : `median of ${baseline.count} readings`],
    ["baseline deviation", baseline?.deviation && format(baseline.deviation)],
  ];
}

/** Headings of the list of which a group of facts lacks some. */
function notGiven(rows: readonly Row[]): string[] {
  const lacking = rows.flatMap(([name, text]) => (text === undefined && name in plantColumns ? [name] : []));
  return lacking.length === 0 ? [] : [`Not in the list: ${lacking.join(", ")}.`];
}

function group(title: string, rows: readonly Row[]): Markup {
  const told = rows.flatMap(([name, text]) => (text === undefined ? [] : [[name, text] as const]));
  return markup`<div class="group">
<h3>${title}</h3>
${facts(told)}${notGiven(rows).map((text) => markup`<p class="aside">${text}</p>\n`)}</div>
`;
}

/** Nameplate, measurement, device and baseline as the list has them, with what it lacks of them. */
export function factsSection(machine: PlantMachine): Markup | undefined {
  const { assumedFacts = [], notUnderstood = [] } = machine.machine;
  const own = Object.entries(machine.own).filter(([, text]) => text.trim() !== "");
  return section(
    "nameplate",
    "Nameplate and settings",
    markup`<div class="groups">
${group("Nameplate", nameplateRows(machine))}${group("Measurement", measurementRows(machine))}${group("Device as it is set", deviceRows(machine))}${group("Baseline", baselineRows(machine))}${own.length > 0 && group("Columns of the list’s own", own)}</div>
`,
    bullets([
      ...assumedFacts.map((text) => `Taken from the words: ${text}.`),
      ...notUnderstood.map(({ word }) => `Not understood, and plays no part: ${word}.`),
    ]),
  );
}
