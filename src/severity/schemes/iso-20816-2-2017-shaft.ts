import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 20816-2:2017",
  "annex on rotating shafts",
  "not checked against a printed copy: only the scope was read",
);

/** ISO 20816-2:2017, shaft vibration of large steam turbine sets. */
// biome-ignore format: a row of a table is a line
export const iso20816Part2Shaft = /* @__PURE__ */ builtIn({
  id: "iso-20816-2-2017-shaft",
  kind: "zones",
  standard: "ISO 20816-2",
  edition: "2017",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 2: Land-based gas turbines, steam turbines and generators in excess of 40 MW: shaft vibration",
  status: "current",
  statusNote: "current (from memory); title page read, limits believed carried over from ISO 7919-2:2009",
  scope: "land-based steam turbines and generators above 40 MW, on the shaft",
  machines: ["steam turbine", "generator"],
  within: { power: { above: 40000 } },
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
