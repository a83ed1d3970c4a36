import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 7919-2:2009",
  "Table A.1",
  "not checked against a printed copy: only the scope was read",
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
  classes: [
    { when: { speed: { oneOf: [1500] } }, criteria: [{ as: "um pp", limits: { "A/B": 100, "B/C": 200, "C/D": 320 }, source: TABLE }] },
    { when: { speed: { oneOf: [1800] } }, criteria: [{ as: "um pp", limits: { "A/B": 95, "B/C": 185, "C/D": 290 }, source: TABLE }] },
    { when: { speed: { oneOf: [3000] } }, criteria: [{ as: "um pp", limits: { "A/B": 90, "B/C": 165, "C/D": 240 }, source: TABLE }] },
    { when: { speed: { oneOf: [3600] } }, criteria: [{ as: "um pp", limits: { "A/B": 80, "B/C": 150, "C/D": 220 }, source: TABLE }] },
  ],
});
