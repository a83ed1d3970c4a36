import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { over4800, over9000, over13200 } from "./shaft-law";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory(
  "ISO 7919-4:2009",
  "annex of zone boundaries",
  "not checked against a printed copy: only the scope was read",
);

/** ISO 7919-4:2009, shaft vibration of gas turbine sets, 3000 to 30 000 r/min. */
// biome-ignore format: a row of a table is a line
export const iso7919Part4Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-7919-4-2009",
  kind: "zones",
  standard: "ISO 7919-4",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on rotating shafts - Part 4: Gas turbine sets with fluid-film bearings",
  status: "withdrawn",
  statusNote: "merged into another standard (from memory)",
  replacedBy: "ISO 20816-4:2018",
  scope: "gas turbine sets above 3 MW with fluid-film bearings at 3000 to 30 000 r/min",
  machines: ["gas turbine"],
  within: { power: { above: 3000 } },
  place: "shaft",
  measuredOn: "the shaft against its bearing housing, the larger of two probes at right angles",
  band: null,
  notes: ["limits fall with the root of the speed: 4800, 9000 and 13 200 over root n, um peak-to-peak, n in r/min", "run-out of the shaft is in the reading unless it was subtracted"],
  classes: () => flatTable<"zones">({
    machine: ["speed"],
    columns: [{ as: "um pp", limits: ["A/B", "B/C", "C/D"], source: ANNEX }],
    rows: [
      // r/min                       um peak-to-peak: over root n
      [{ from: 3000, to: 30000 }, over4800, over9000, over13200],
    ],
  }),
});
