import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "ISO 2373:1974",
  "its table of limits",
  "https://scribd.com/doc/231073359/Vibration-Severity-1",
  'read in a table of unknown making, "Vibration Severity", Table 3, which says it is based on ISO 2373',
);

/** ISO 2373:1974, factory test of electrical machines of shaft height 80 to 400 mm. */
// biome-ignore format: a row of a table is a line
export const iso2373Of1974 = /* @__PURE__ */ builtIn({
  id: "iso-2373-1974",
  kind: "acceptance",
  standard: "ISO 2373",
  edition: "1974",
  title: "Mechanical vibration of certain rotating electrical machinery with shaft heights between 80 and 400 mm",
  status: "withdrawn",
  statusNote: "from memory; second edition 1987",
  replacedBy: "IEC 60034-14",
  scope: "factory test of motors, freely suspended; grades normal (N), reduced (R) and special (S)",
  machines: ["motor", "generator"],
  within: { condition: "new", mounting: "free", frame: "IEC" },
  place: "housing",
  measuredOn: "bearing housings",
  band: [10, 1000],
  meanings: { grade: "the grade ordered: normal (N), reduced (R) or special (S)" },
  notes: ["the source prints 80-132-225-400 mm without saying which row owns 132 and 225; the row with the lower limit is taken"],
  classes: () => flatTable({
    machine: ["grade", "speed", "shaftHeight"],
    columns: [{ as: "mm/s rms", limits: ["acceptance"], source: TABLE }],
    rows: [
      // grade    r/min                      shaft height, mm           mm/s RMS
      ["normal",   { from: 600, to: 3600 },   { from: 80, to: 132 },     1.8],
      ["normal",   { from: 600, to: 3600 },   { above: 132, to: 225 },   2.8],
      ["normal",   { from: 600, to: 3600 },   { above: 225, to: 400 },   4.5],
      ["reduced",  { from: 600, to: 1800 },   { from: 80, to: 132 },     0.71],
      ["reduced",  { from: 600, to: 1800 },   { above: 132, to: 225 },   1.12],
      ["reduced",  { from: 600, to: 1800 },   { above: 225, to: 400 },   1.8],
      ["reduced",  { above: 1800, to: 3600 }, { from: 80, to: 132 },     1.12],
      ["reduced",  { above: 1800, to: 3600 }, { above: 132, to: 225 },   1.8],
      ["reduced",  { above: 1800, to: 3600 }, { above: 225, to: 400 },   2.8],
      ["special",  { from: 600, to: 1800 },   { from: 80, to: 132 },     0.45],
      ["special",  { from: 600, to: 1800 },   { above: 132, to: 225 },   0.71],
      ["special",  { from: 600, to: 1800 },   { above: 225, to: 400 },   1.12],
      ["special",  { above: 1800, to: 3600 }, { from: 80, to: 132 },     0.71],
      ["special",  { above: 1800, to: 3600 }, { above: 132, to: 225 },   1.12],
      ["special",  { above: 1800, to: 3600 }, { above: 225, to: 400 },   1.8],
    ],
  }),
});
