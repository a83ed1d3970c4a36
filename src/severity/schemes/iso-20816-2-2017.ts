import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { generatorOfSet } from "./generator-of-set";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory("ISO 20816-2:2017", "Annex A");
const GAS = /* @__PURE__ */ memory(
  "ISO 20816-2:2017",
  "Annex A",
  "not checked against a printed copy; believed carried over from ISO 10816-4",
);
const STEAM = ["steam turbine", "generator"] as const;

/** ISO 20816-2:2017, land-based gas and steam turbines and generators above 40 MW. */
// biome-ignore format: a row of a table is a line
export const iso20816Part2Of2017 = /* @__PURE__ */ builtIn({
  id: "iso-20816-2-2017",
  kind: "zones",
  standard: "ISO 20816-2",
  edition: "2017",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 2: Land-based gas turbines, steam turbines and generators in excess of 40 MW, with fluid-film bearings and rated speeds of 1 500, 1 800, 3 000 and 3 600 r/min",
  status: "current",
  statusNote: "from memory; title page read",
  scope: "land-based gas turbines, steam turbines and generators above 40 MW with fluid-film bearings, radial at rated speed in steady state (axial on thrust bearings)",
  machines: ["steam turbine", "generator", "gas turbine"],
  within: { power: { above: 40000 } },
  exclusions: [
    /* @__PURE__ */ generatorOfSet("ISO 20816-2"),
  ],
  place: "housing",
  measuredOn: "bearing housings or pedestals",
  band: [10, 500],
  notes: ["measuring band from memory: at least 10 to 500 Hz"],
  classes: () => flatTable({
    machine: ["type", "speed"],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: ANNEX }],
    rows: [
      // machine       r/min                      A/B  B/C  C/D, mm/s RMS
      [STEAM,          { oneOf: [1500, 1800] },   2.8, 5.3, 8.5],
      [STEAM,          { oneOf: [3000, 3600] },   3.8, 7.5, 11.8],
      ["gas turbine",  { oneOf: [3000, 3600] },   4.5, 9.3, 14.7, { source: GAS }],
    ],
  }),
});
