import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory } from "./sources";

const RANGES = /* @__PURE__ */ memory(
  "ISO 20816-1:2016",
  "informative annex, ranges of typical boundaries",
  "not checked against a printed copy; the same ranges are believed to be in ISO 10816-1 Amd 1:2009; which machines take which end was read in a blog that shows the numbers as an image, https://inertance.tistory.com/24",
);

/** ISO 20816-1:2016, the two ends of the ranges of typical boundaries: orientation only. */
// biome-ignore format: a row of a table is a line
export const iso20816Part1Ranges = /* @__PURE__ */ builtIn({
  id: "iso-20816-1-2016-ranges",
  kind: "zones",
  standard: "ISO 20816-1",
  edition: "2016",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 1: General guidelines",
  status: "current",
  statusNote: "from memory, in place of ISO 10816-1:1995 and ISO 7919-1:1996; title page read",
  scope: "ranges of typical boundaries over all machines, small ones at the low end, large ones on flexible supports at the high end",
  place: "housing",
  measuredOn: "non-rotating parts",
  band: [10, 1000],
  informative: true,
  notes: ["each boundary is a range: A/B 0.71 to 4.5, B/C 1.8 to 9.3, C/D 4.5 to 14.7 mm/s RMS"],
  classes: () => flatTable({
    machine: ["class"],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: RANGES }],
    rows: [
      // end of the range  A/B   B/C  C/D, mm/s RMS
      ["low end",          0.71, 1.8, 4.5],
      ["high end",         4.5,  9.3, 14.7],
    ],
  }),
});
