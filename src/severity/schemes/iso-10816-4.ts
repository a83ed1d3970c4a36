import { builtIn } from "./built-in";
import { courseHandbook } from "./course-handbook";
import { flatTable } from "./flat-table";
import { generatorOfSet } from "./generator-of-set";

const ANNEX = /* @__PURE__ */ courseHandbook({
  title: "ISO 10816-4:2009",
  where: "Annex A",
  section: "4.5",
  edition: "BSI/ISO 10816-4, 2009",
  note: 'a chart sheet of unknown making, "03-iso-10816-new" (https://pdfcookie.com/documents/03-iso-10816-new-zmlyg3k45pl0), p. 2, prints the same without edition',
});

/** ISO 10816-4, gas turbine sets with fluid-film bearings. */
// biome-ignore format: a row of a table is a line
export const iso10816Part4 = /* @__PURE__ */ builtIn({
  id: "iso-10816-4",
  kind: "zones",
  standard: "ISO 10816-4",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 4: Gas turbine sets with fluid-film bearings",
  status: "withdrawn",
  statusNote: "that it is withdrawn is from memory; so is the lower end of 3 MW, which the ISO catalogue has for its successor, and the speeds of 3000 to 20 000 r/min",
  replacedBy: "ISO 20816-4:2018",
  scope: "heavy-duty gas turbine sets above 3 MW at 3000 to 20 000 r/min, steady state at rated speed",
  machines: ["gas turbine"],
  within: { power: { above: 3000 }, speed: { from: 3000, to: 20000 } },
  exclusions: [
    /* @__PURE__ */ generatorOfSet("ISO 10816-4"),
    { when: { type: "aero-derivative gas turbine" }, reason: "an aero-derivative gas turbine: not within ISO 10816-4; ask its maker" },
  ],
  place: "housing",
  measuredOn: "radial on all bearing housings, axial on thrust-bearing housings",
  band: [10, 500],
  notes: ["measuring band from memory"],
  classes: () => flatTable({
    machine: [],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: ANNEX }],
    rows: [
      // A/B  B/C  C/D, mm/s RMS
      [4.5,   9.3, 14.7],
    ],
  }),
});
