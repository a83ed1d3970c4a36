import { auditPlant, parsePlant } from "veladis/plant";
import { auditCase, limitsByRow } from "../../src/plant/audit/audit-case";
import { type AuditCode, rulesInOrder } from "../../src/plant/audit/audit-rules";
import { monthsAfter } from "../../src/plant/calendar-day";
import { machineOfRow } from "../../src/plant/machine-of-row";
import { requireWidth } from "../../src/plant/plant-headings";
import { holdWording } from "../refusals/hold-wording";
import { checkRefusals } from "./check-refusals";
import { type Cells, plantOf, sound } from "./lists";
import { routeRefusals } from "./route-refusals";

const headed = (...own: string[]) => parsePlant({ heading: ["tag", "kind", ...own], rows: [] });
const table = (more: object) => parsePlant({ heading: ["tag", "kind"], rows: [["A", "fan"]], ...more } as never);
const told = (options: object) => parsePlant({ heading: ["tag", "kind"], rows: [] }, options as never);
/** The refusal of a cell, of which the answer holds the message. */
const cell = (cells: Cells, options: Parameters<typeof machineOfRow>[3] = {}) => {
  const all = Object.entries({ ...sound, ...cells }).filter(([, text]) => text !== "");
  for (const { error } of machineOfRow(Object.fromEntries(all), 2, {}, options).refused) throw error;
};

/** A rule on a machine without some of its cells; what it says of them stands in the answer as not known. */
const rule = (code: AuditCode, cells: Cells, on?: string) => {
  const [machine] = plantOf(cells).machines;
  const [, { check }] = rulesInOrder().find(([name]) => name === code) as ReturnType<typeof rulesInOrder>[number];
  check(
    auditCase(machine as NonNullable<typeof machine>, {
      on,
      schemes: undefined,
      linesOf: new Map(),
      limitsOf: limitsByRow(undefined),
    }),
  );
};
const noBaseline = { baseline: "", "baseline date": "", "baseline count": "", "baseline deviation": "" };
const noCheck = { "check date": "", known: "", "as found": "", "as left": "", "checked by": "" };
const audited = (machine: object) => {
  const [one] = plantOf({}).machines;
  auditPlant({ machines: [{ ...one, ...machine }], refused: [], ownColumns: [] } as never);
};

/** Cells without which a rule cannot be checked. */
const needed: readonly (readonly [code: AuditCode, cells: Cells])[] = [
  ["trip above ceiling", { trip: "" }],
  [
    "trip above ceiling",
    { limits: "", "limits source": "", table: "motor-maker-alarms", kind: "motor", power: "400 kW", nameplate: "" },
  ],
  ["alarm above ceiling", { alarm: "" }],
  ["baseline above zone C", noBaseline],
  [
    "baseline above zone C",
    { limits: "", "limits source": "", table: "motor-maker-alarms", kind: "motor", power: "400 kW", nameplate: "" },
  ],
  ["left out of tolerance", noCheck],
  ["left out of tolerance", { known: "" }],
  ["left out of tolerance", { "as found": "", "as left": "" }],
  ["left out of tolerance", { tolerance: "" }],
  ["found out of tolerance", noCheck],
  ["checked outside the band", noCheck],
  ["checked outside the band", { known: "" }],
  ["checked outside the band", { known: "8 mm/s rms" }],
  ["checked outside the band", { band: "" }],
  ["checked far below the trip", noCheck],
  ["checked far below the trip", { known: "" }],
  ["checked far below the trip", { trip: "" }],
  ["long alarm delay", { "alarm delay s": "" }],
  ["never clears at the baseline", { hysteresis: "" }],
  ["never clears at the baseline", noBaseline],
  ["never clears at the baseline", { alarm: "", trip: "" }],
  ["trip not latching", { trip: "" }],
  ["trip not latching", { latching: "" }],
  ["loop does not carry the alarm", { loop: "" }],
  ["loop does not show the baseline", noBaseline],
  ["loop does not show the baseline", { loop: "" }],
  ["multiplied trip out of reach", { multiplier: "2 times for 8 s", trip: "" }],
  ["trip above the maker's ceiling", { trip: "" }],
  ["trip at the baseline", { trip: "" }],
  ["trip at the baseline", noBaseline],
  ["alarm at the baseline", { alarm: "" }],
  ["alarm at the baseline", noBaseline],
  ["alarm not below trip", { trip: "" }],
  ["alarm not below trip", { alarm: "" }],
  ["loop does not carry the trip", { trip: "" }],
  ["loop does not carry the trip", { loop: "" }],
  ["loop of another quantity", { trip: "" }],
  ["loop of another quantity", { loop: "" }],
  ["band does not hold 1x", { band: "" }],
  ["band does not hold 1x", { speed: "" }],
  ["setpoint not held", { step: "", lowest: "", highest: "" }],
  ["date after the audit", {}],
  ["baseline of another quantity", noBaseline],
  ["baseline of another quantity", { alarm: "", trip: "" }],
  ["baseline of zero", noBaseline],
  ["baseline of few readings", noBaseline],
  ["baseline of few readings", { "baseline count": "" }],
  ["trip delay above coast-down", { "trip delay s": "" }],
  ["trip delay above coast-down", { "coast-down s": "" }],
  ["long trip delay", { "trip delay s": "" }],
  ["start-up not ridden out", { "start-up s": "" }],
  ["start-up not ridden out", { "trip delay s": "" }],
  ["hysteresis within the spread", { hysteresis: "" }],
  ["hysteresis within the spread", { alarm: "", trip: "" }],
  ["hysteresis within the spread", noBaseline],
  ["hysteresis within the spread", { "baseline deviation": "" }],
  ["check overdue", noCheck],
  ["check overdue", { "interval months": "" }],
  ["check overdue", {}],
  ["sensor failure unseen", { "sensor fault": "" }],
  ["wire failure unseen", { contact: "" }],
  ["wire failure unseen", { coil: "" }],
];

holdWording("plant", {
  ...routeRefusals,
  "no list": () => parsePlant(undefined as never),
  "a part there is none of": () => table({ headings: [] }),
  "a torn row": () => requireWidth(["A"], 2),
  "a row that is none": () => table({ rows: ["fan"] }),
  "a cell that is no text": () => table({ rows: [["A", 7]] }),
  "a line too many": () => table({ lines: [2, 3] }),
  "an option there is none of": () => told({ date: "day-first" }),
  "decimals, a word": () => told({ decimal: "comma" }),
  "dates, a word": () => told({ dates: "american" }),
  "own, no list": () => told({ own: "room" }),
  "own, a heading that is no text": () => told({ own: [7] }),
  "schemes, no list": () => told({ schemes: "iso-14694-2003" }),
  "a column of one's own twice": () => headed("room", "Room"),
  "no heading": () => table({ heading: "tag" }),
  "rows, no list": () => table({ rows: "A" }),
  "a line that is none": () => table({ lines: [0] }),
  "audit, a machine that is none": () => audited({ machine: null }),
  "lines, no list": () => table({ lines: 2 }),
  "own, of the list": () => told({ own: ["trip"] }),
  "own, not there": () => told({ own: ["room"] }),
  "no tag and no kind": () => parsePlant({ heading: ["room"], rows: [] }),
  "a column twice": () => headed("trip", "Trip"),
  "a heading that is nearly one": () => headed("trip dely s"),
  "a heading with a unit": () => headed("trip [mm/s rms]"),
  "no tag": () => cell({ tag: "" }),
  "a date of a check without the check": () => cell({ "check date": "" }),
  "a table and limits": () => cell({ table: "iso-14694-2003" }),
  "a kind there is none of": () => cell({ kind: "pmup", limits: "", "limits source": "" }),
  "a power in the place of the speed": () => cell({ speed: "132 kW" }),
  "a second power": () => cell({ nameplate: "110 kW" }),
  "a number with its unit": () => cell({ "trip delay s": "8 s" }),
  "a count of halves": () => cell({ "baseline count": "7.5" }),
  "a trip of zero": () => cell({ trip: "0 mm/s rms" }),
  "a hysteresis of bananas": () => cell({ hysteresis: "8 bananas" }),
  "a word of no list": () => cell({ contact: "open" }),
  "a band that falls": () => cell({ band: "1 kHz to 10 Hz" }),
  "a multiplier below 1": () => cell({ multiplier: "0.5 for 3 s" }),
  "a date that is none": () => cell({ "check date": "last spring" }),
  "a day that no calendar has": () => cell({ "check date": "2026-02-30" }),
  "a date of either order": () => cell({ "check date": "03.04.2026" }),
  "thousands or decimals": () => cell({ speed: "1.480 r/min" }, { decimal: "," }),
  ...Object.fromEntries(
    needed.map(([code, cells]) => {
      const lacks = Object.keys(cells)[0];
      return [`${code}, without ${lacks ?? "the day"}`, () => rule(code, cells)] as const;
    }),
  ),
  "a day beyond the calendar": () => monthsAfter("2026-03-31", 1e6),
  "audit, no plant": () => auditPlant(null as never),
  "audit, a plant of another form": () => auditPlant({ machines: [{}], refused: [] } as never),
  "audit, a contact there is none of": () => audited({ settings: { contact: "open" } }),
  "audit, a check of no day": () => audited({ check: { date: 7 } }),
  "audit, tables, no list": () => auditPlant(plantOf({}), { schemes: "iso-14694-2003" as never }),
  "audit, a day that is no text": () => auditPlant(plantOf({}), { on: 7 as never }),
  "audit, a day that is none": () => auditPlant(plantOf({}), { on: "2026-02-30" }),
  ...checkRefusals,
  "audit, an option there is none of": () => auditPlant(plantOf({}), { day: "2026-02-28" } as never),
});
