import { builtIn } from "./built-in";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory("ISO 10816-2:2009", "Annex A");

/** ISO 10816-2:2009, land-based steam turbines and generators above 50 MW. */
// biome-ignore format: a row of a table is a line
export const iso10816Part2Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-10816-2-2009",
  kind: "zones",
  standard: "ISO 10816-2",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 2: Land-based steam turbines and generators in excess of 50 MW with normal operating speeds of 1 500, 1 800, 3 000 and 3 600 r/min",
  status: "withdrawn",
  statusNote: "replaced (from memory); the same values are believed to be in the edition of 2001",
  replacedBy: "ISO 20816-2:2017",
  scope: "land-based steam turbines and generators above 50 MW, radial at rated speed in steady state (axial on thrust bearings)",
  machines: ["steam turbine", "generator"],
  within: { power: { above: 50000 } },
  place: "housing",
  measuredOn: "bearing housings or pedestals",
  band: [10, 500],
  notes: ["measuring band from memory: at least 10 to 500 Hz"],
  classes: [
    { when: { speed: { oneOf: [1500, 1800] } }, criteria: [{ as: "mm/s rms", limits: { "A/B": 2.8, "B/C": 5.3, "C/D": 8.5 }, source: ANNEX }] },
    { when: { speed: { oneOf: [3000, 3600] } }, criteria: [{ as: "mm/s rms", limits: { "A/B": 3.8, "B/C": 7.5, "C/D": 11.8 }, source: ANNEX }] },
  ],
});
