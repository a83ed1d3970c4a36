import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { disputed, memory, practice, printed, reported } from "./sources";

const TITLE = "Lloyd's Register, Ship Vibration and Noise Guidance Notes";
const WHERE = "chapter 7, Table 7.5.1";
const PAGE = "https://imorules.com/GUID-9359E6C9-F525-441F-9A12-0A004210F121.html";
const LINE = /* @__PURE__ */ printed(TITLE, WHERE, PAGE, "read on the page, where this row stands in one line");
const LAID_OUT = /* @__PURE__ */ reported(
  TITLE,
  WHERE,
  PAGE,
  "numbers read on the page; which spans of speed and power they belong to is laid out from merged cells: check the row",
);
const LOWER = /* @__PURE__ */ disputed(
  /* @__PURE__ */ practice(TITLE, WHERE, "by the arithmetic of its row; not checked against another print"),
  "the page prints 0.39 mm, which does not fit its own row: 24 mm/s and 15 m/s2 meet 0.38 mm at 10 Hz, as all other rows do; the lower is shipped, check against the publication",
);
const BRACKETED =
  "the page prints one value for any support; the table of ISO 8528-9, from memory, has lower ones in brackets for a solid concrete foundation; the lower is shipped, check against the publication";
const CONCRETE = /* @__PURE__ */ disputed(/* @__PURE__ */ memory(TITLE, WHERE), BRACKETED);
const CONCRETE_FITTED = /* @__PURE__ */ disputed(
  /* @__PURE__ */ memory(TITLE, WHERE),
  "the page prints one value for any support; as the rows beside, from memory in brackets for a solid concrete foundation; memory has 6.5 m/s2, but 10 mm/s at 100 Hz is 6.3 m/s2, as in all other rows; the lower is shipped, check against the publication",
);
const AGREED = "above 40 kW at 2000 to 3600 r/min the values are subject to agreement";
const ENGINE =
  "for the engine one value alone is printed: above it the table does not part what is to be agreed from special designs only, and the worse is said";

/** Generating sets driven by reciprocating engines: a class society's table, engine and generator apart. */
// biome-ignore format: a row of a table is a line
export const lrGeneratingSets = /* @__PURE__ */ builtIn({
  id: "lr-generating-sets",
  kind: "grades",
  standard: "Lloyd's Register guidance",
  edition: "2006 rev. 2.1",
  title: "Ship Vibration and Noise Guidance Notes, Chapter 7 Section 5: AC generating sets driven by reciprocating internal combustion engines",
  status: "guide",
  statusNote: "guidance, current when it was read; the table is believed to be that of ISO 8528-9, which the page does not name",
  scope: "AC generating sets driven by reciprocating internal combustion engines, up to 3600 r/min, in the spans of speed and power that the table prints",
  machines: ["reciprocating generating set"],
  within: { speed: { to: 3600 } },
  place: "housing",
  measuredOn: "engine or generator of the set; the points were not seen",
  band: null,
  ask: ["part"],
  meanings: { part: "what the reading was taken on: the engine or the generator", support: "to 720 r/min: rigid is a solid concrete foundation" },
  grades: ["no damage expected with standard designs", "to be agreed: assess structure and components", "special designs only"],
  notes: [
    "not zones A to D: the grades are the table's own words for below value 1, between value 1 and value 2, and above value 2",
    "displacement, velocity and acceleration are all to be judged, and the worst governs; they cross near 10 Hz and 100 Hz",
    "the engine end of a flange-coupled generator meets the values of the generator",
    "power is that of the set in kW; the page takes 1 kVA for 0.8 kW",
    "to 720 r/min, on a solid concrete foundation (a rigid support), the lower values in brackets of ISO 8528-9 are held, from memory; along the shaft half of them is remembered, which is not held here",
    "where the page has a dash for the engine, no limit is held",
  ],
  classes: () => flatTable({
    machine: ["part", "speed", "power", "support"],
    means: { part: { engine: { when: { part: "engine" }, note: ENGINE } } },
    columns: [
      { as: "mm rms", limits: ["no damage expected with standard designs", "to be agreed: assess structure and components"], source: LAID_OUT },
      { as: "mm/s rms", limits: ["no damage expected with standard designs", "to be agreed: assess structure and components"], source: LAID_OUT },
      { as: "m/s2 rms", limits: ["no damage expected with standard designs", "to be agreed: assess structure and components"], source: LAID_OUT },
    ],
    rows: [
      //                                                                           mm RMS       mm/s RMS  m/s2 RMS; value 1 and value 2
      ["generator", { from: 2000, to: 3600 },    { above: 40 },        null,       0.64, 0.8,   40, 50,   25, 31,   { note: AGREED }],
      ["generator", { from: 2000, to: 3600 },    { to: 40 },           null,       0.8,  0.95,  50, 60,   31, 38],
      ["engine",    { from: 1300, below: 2000 }, { above: 200 },       null,       0.72, null,  45, null, 28, null, { source: LINE }],
      ["generator", { from: 1300, below: 2000 }, { above: 200 },       null,       0.32, 0.45,  20, 28,   13, 18,   { source: LINE }],
      ["engine",    { from: 1300, below: 2000 }, { above: 100, to: 200 }, null,       0.72, null,  45, null, 28, null],
      ["generator", { from: 1300, below: 2000 }, { above: 100, to: 200 }, null,       0.4,  0.48,  25, 30,   16, 19],
      ["generator", { from: 1300, below: 2000 }, { above: 40, to: 100 }, null,       0.4,  0.48,  25, 30,   16, 19],
      ["generator", { above: 720, below: 1300 }, { above: 1000 },      null,       0.29, 0.35,  18, 22,   11, 14],
      ["engine",    { above: 720, below: 1300 }, { above: 200, to: 1000 }, null,       0.72, null,  45, null, 28, null],
      ["generator", { above: 720, below: 1300 }, { above: 200, to: 1000 }, null,       0.32, 0.38,  20, 24,   13, 15,   { limitSources: { "mm rms": { "to be agreed: assess structure and components": LOWER } } }],
      ["engine",    { to: 720 },                 { above: 1000 },      null,       0.72, null,  45, null, 28, null],
      ["generator", { to: 720 },                 { above: 1000 },      "flexible", 0.24, 0.32,  15, 20,   9.5, 13],
      ["generator", { to: 720 },                 { above: 1000 },      "rigid",    0.16, 0.24,  10, 15,   6.3, 9.5,  { source: CONCRETE, limitSources: { "m/s2 rms": { "no damage expected with standard designs": CONCRETE_FITTED } } }],
    ],
  }),
});
