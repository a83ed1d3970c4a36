import { judgeRoute, machineVerdict, type PlantMachine, scheduleSetpoints } from "veladis/plant";
import { knownDay } from "../../src/plant/known-day";
import { limitsOfRow } from "../../src/plant/machine-verdict";
import { alikeBasis } from "../../src/plant/route-basis";
import { factNotes } from "../../src/plant/route-facts";
import { requireNamed } from "../../src/plant/route-point";
import { routeAmplitude } from "../../src/plant/route-reading";
import { machineByTag } from "../../src/plant/route-tags";
import { scheduledMachine } from "../../src/plant/schedule-setpoints";

const row = (more: Partial<PlantMachine> = {}): PlantMachine => ({
  ...{ tag: "PU-03", line: 2, settings: {}, device: {}, own: {} },
  machine: { type: "pump", power: "90 kW", speed: "2980 r/min", category: "II", place: "housing" },
  ...more,
});
const plantOf = (machines: readonly PlantMachine[], refused: Parameters<typeof judgeRoute>[0]["refused"] = []) => ({
  ...{ machines, refused, ownColumns: [] },
});
const route = (rows: unknown, options?: unknown) => judgeRoute(plantOf([row()]), rows as never, options as never);
/** The refusal of a tag, which stands in the answer. */
const tag = (one: string, plant = plantOf([row(), row({ line: 3 })])) => {
  const found = machineByTag(plant, undefined)(one);
  if (found instanceof Error) throw found;
};
/** The refusal of a reading, which stands in the answer. */
const reading = (written: string) => {
  const machine = { machine: row(), limits: limitsOfRow(row()), schemes: undefined, alike: "" };
  alikeBasis(machine, routeAmplitude({ reading: written }));
};
const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" };

/** What routes and schedules refuse, by what is wrong. */
export const routeRefusals: Readonly<Record<string, () => unknown>> = {
  "route, no plant": () => judgeRoute(undefined as never, []),
  "route, a plant without machines": () => judgeRoute({ refused: [] } as never, []),
  "route, a plant without its refused rows": () => judgeRoute({ machines: [] } as never, []),
  "schedule, no plant": () => scheduleSetpoints(undefined as never),
  "schedule, a plant without machines": () => scheduleSetpoints({ refused: [] } as never),
  "schedule, a plant without its refused rows": () => scheduleSetpoints({ machines: [] } as never),
  "schedule, an option there is none of": () => scheduleSetpoints(plantOf([]), { before: [] } as never),
  "route, no list": () => route(7),
  "route, a row that is none": () => route([7]),
  "route, a key that no row has": () => route([{ tag: "PU-03", line: 2, reading: "1 mm/s rms", pont: "DE" }]),
  "route, a tag that is no text": () => route([{ tag: 3, line: 2, reading: "1 mm/s rms" }]),
  "route, a point that is no text": () => route([{ tag: "PU-03", line: 2, reading: "1 mm/s rms", point: 3 }]),
  "route, facts of the machine that are no text": () =>
    route([{ tag: "PU-03", line: 2, reading: "1 mm/s rms", machine: 3 }]),
  "route, a speed that is not that of the list": () => factNotes("9000 r/min", row().machine),
  "route, words that say no fact": () => factNotes("9000", row().machine),
  "route, a plant that is no list of machines": () => judgeRoute([] as never, []),
  "route, a point that names a state": () => requireNamed("DE clipped"),
  "route, an option there is none of": () => route([], { befor: [] }),
  "route, a tag that no row has": () => tag("PU-30"),
  "route, a tag that two rows have": () => tag("PU-03"),
  "route, a tag whose row was refused": () =>
    tag(
      "PU-03",
      plantOf([row()], [{ line: 2, tag: "PU-03", column: "trip", code: "syntax", message: "expected a reading" }]),
    ),
  "route, a reading without its frequency": () => reading("40 um pp"),
  "route, a date that is none": () => knownDay("31.03.2026", {}),
  "row, no machine": () => machineVerdict(undefined as never, "2 mm/s rms"),
  "row, a table and limits": () => machineVerdict(row({ table: "iso-10816-7-2009", limits }), "2 mm/s rms"),
  "row, limits without a source": () => machineVerdict(row({ limits: { ...limits, source: "" } }), "2 mm/s rms"),
  "row, limits in two units": () => machineVerdict(row({ limits: { ...limits, "B/C": "0.2 in/s pk" } }), "2 mm/s rms"),
  "schedule, a tag that two rows have": () => scheduledMachine(row(), undefined, [2, 3]),
  "schedule, a shaft without a unit": () =>
    scheduledMachine(row({ machine: { type: "pump", place: "shaft" } }), undefined, undefined),
};
