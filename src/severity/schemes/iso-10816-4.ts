import { builtIn } from "./built-in";
import { quoted } from "./sources";

const SHEET = /* @__PURE__ */ quoted(
  "ISO 10816-4",
  "Annex A",
  "https://pdfcookie.com/documents/03-iso-10816-new-zmlyg3k45pl0",
  'read in a chart sheet, "03-iso-10816-new", p. 2, block headed ISO 10816-4, edition not stated; its in/s column is truncated, not rounded',
);

/** ISO 10816-4, gas turbine sets with fluid-film bearings. */
// biome-ignore format: a row of a table is a line
export const iso10816Part4 = /* @__PURE__ */ builtIn({
  id: "iso-10816-4",
  kind: "zones",
  standard: "ISO 10816-4",
  edition: "not stated, 1998 or 2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 4: Gas turbine sets with fluid-film bearings",
  status: "withdrawn",
  statusNote: "replaced (from memory)",
  replacedBy: "ISO 20816-4:2018",
  scope: "heavy-duty gas turbine sets above 3 MW (from memory), steady state at rated speed",
  machines: ["gas turbine"],
  within: { power: { above: 3000 } },
  place: "housing",
  measuredOn: "radial on all bearing housings, axial on thrust-bearing housings",
  band: [10, 500],
  notes: ["measuring band from memory"],
  classes: [
    { criteria: [{ as: "mm/s rms", limits: { "A/B": 4.5, "B/C": 9.3, "C/D": 14.7 }, source: SHEET }] },
  ],
});
