import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory, quoted } from "./sources";

const BOOK = /* @__PURE__ */ quoted(
  "ISO 20816-8:2018",
  "table of guide values, horizontal compressors",
  "https://digilib.universitaspertamina.ac.id/ebook/Compression%20Machinery%20for%20Oil%20and%20Gas/files/basic-html/page193.html",
  "read in Compression Machinery for Oil and Gas, p. 182, acceptable and marginal velocity; the page does not name the standard; its twelve numbers are those remembered of it",
);
const GUIDE = /* @__PURE__ */ memory(
  "ISO 20816-8:2018",
  "table of guide values, horizontal compressors",
  "not checked against a printed copy; values as ISO 10816-8:2014",
);

/** ISO 20816-8:2018, horizontal reciprocating compressor systems, part by part. */
// biome-ignore format: a row of a table is a line
export const iso20816Part8Of2018 = /* @__PURE__ */ builtIn({
  id: "iso-20816-8-2018",
  kind: "zones",
  standard: "ISO 20816-8",
  edition: "2018",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 8: Reciprocating compressor systems",
  status: "current",
  statusNote: "status and scope read in the catalogue record of shop.standards.ie; it replaced ISO 10816-8:2014",
  scope: "horizontal reciprocating compressors on rigid foundations, 120 to 1800 r/min, their drivers not included; parts judged separately, aimed at fatigue",
  machines: ["reciprocating compressor"],
  within: { speed: { from: 120, to: 1800 }, support: "rigid" },
  place: "housing",
  measuredOn: "foundation, frame, cylinder, dampers or piping",
  band: [2, 1000],
  ask: ["part"],
  meanings: { part: "the part the reading was taken on: the foundation; the frame, which is the crankcase, on its top; a cylinder, lateral across its axis or rod along it; the pulsation dampers; the piping" },
  notes: ["horizontal compressors only; the standard's displacement and acceleration limits and its table for vertical compressors are not held here"],
  classes: () => flatTable({
    machine: ["part"],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: BOOK, limitSources: { "A/B": GUIDE } }],
    rows: [
      // part                A/B   B/C C/D, mm/s RMS
      ["foundation",         2,    3,  4.5],
      ["frame",              5.3,  8,  12,   { note: "frame: its top" }],
      ["cylinder lateral",   8.7,  13, 19.5],
      ["cylinder rod",       10.7, 16, 24],
      ["dampers",            12.7, 19, 28.5],
      ["piping",             12.7, 19, 28.5],
    ],
  }),
});
