import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 7919-2:2009",
  "Table A.1",
  "not checked against a printed copy: only the scope was read; a turbine maker's manual prints 165 and 240 um at 3000 r/min of ISO 20816-2, which is believed to have taken them over",
);

/** ISO 7919-2:2009, shaft vibration of large steam turbine sets. */
// biome-ignore format: a row of a table is a line
export const iso7919Part2Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-7919-2-2009",
  kind: "zones",
  standard: "ISO 7919-2",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on rotating shafts - Part 2: Land-based steam turbines and generators in excess of 50 MW with normal operating speeds of 1 500, 1 800, 3 000 and 3 600 r/min",
  status: "withdrawn",
  statusNote: "replaced (from memory); scope of the edition of 2001 read",
  replacedBy: "ISO 20816-2:2017",
  scope: "land-based steam turbines and generators above 50 MW",
  machines: ["steam turbine", "generator"],
  within: { power: { above: 50000 } },
  place: "shaft",
  measuredOn: "the shaft against its bearing housing, the larger of two probes at right angles",
  band: null,
  notes: ["close to but not equal to 4800, 9000 and 13 200 over root n", "run-out of the shaft is in the reading unless it was subtracted"],
  classes: () => flatTable<"zones">({
    machine: ["speed"],
    columns: [{ as: "um pp", limits: ["A/B", "B/C", "C/D"], source: TABLE }],
    rows: [
      // r/min              um peak-to-peak
      [{ oneOf: [1500] },   100, 200, 320],
      [{ oneOf: [1800] },   95,  185, 290],
      [{ oneOf: [3000] },   90,  165, 240],
      [{ oneOf: [3600] },   80,  150, 220],
    ],
  }),
});
