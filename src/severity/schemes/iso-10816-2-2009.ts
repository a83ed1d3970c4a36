import { builtIn } from "./built-in";
import { courseHandbook } from "./course-handbook";
import { flatTable } from "./flat-table";

const ANNEX = /* @__PURE__ */ courseHandbook({
  title: "ISO 10816-2:2009",
  where: "Annex A",
  section: "4.3",
  edition: "BSI/ISO 10816-2, 2009",
});

/** ISO 10816-2:2009, land-based steam turbines and generators above 50 MW. */
// biome-ignore format: a row of a table is a line
export const iso10816Part2Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-10816-2-2009",
  kind: "zones",
  standard: "ISO 10816-2",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 2: Land-based steam turbines and generators in excess of 50 MW with normal operating speeds of 1 500, 1 800, 3 000 and 3 600 r/min",
  status: "withdrawn",
  statusNote: "from memory; scope read in the catalogue record of SS-ISO 10816-2; the same values are believed to be in the edition of 2001",
  replacedBy: "ISO 20816-2:2017",
  scope: "land-based steam turbines and generators above 50 MW, also those coupled to a gas turbine, whose own limits are in Part 4; radial at rated speed in steady state (axial on thrust bearings); not the vibration of a stator core at twice the line frequency",
  machines: ["steam turbine", "generator"],
  within: { power: { above: 50000 } },
  place: "housing",
  measuredOn: "bearing housings or pedestals",
  band: [10, 500],
  notes: ["measuring band from memory: at least 10 to 500 Hz"],
  classes: () => flatTable({
    machine: ["speed"],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: ANNEX }],
    rows: [
      // r/min                     A/B  B/C  C/D, mm/s RMS
      [{ oneOf: [1500, 1800] },    2.8, 5.3, 8.5],
      [{ oneOf: [3000, 3600] },    3.8, 7.5, 11.8],
    ],
  }),
});
