import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { quoted } from "./sources";

const PAGE = "https://scribd.com/document/477358469/VibrationAnalysis-0307-pdf";
const TABLE = /* @__PURE__ */ quoted(
  "NEMA MG 1 Part 7",
  "Table 7-1",
  PAGE,
  "read in D. Patterson, Vibration Analysis of Motors in the Service Center (EASA), Table 1; the mm/s beside it are rounded; the same in U.S. Electrical Motors, Installation and Maintenance, Large AC Electric Motors, p. 14, Table 1",
);
const FACTOR = /* @__PURE__ */ quoted(
  "NEMA MG 1 Part 7",
  "Table 7-1 times 0.8 for rigid mounting",
  PAGE,
  "read in the same text: for rigid mounting the limits are multiplied by 0.8; a rigid base must show under 0.02 in/s peak of background",
);

/** NEMA MG 1 Part 7, standard machines at no load, in/s peak. */
// biome-ignore format: a row of a table is a line
export const nemaMg1Part7 = /* @__PURE__ */ builtIn({
  id: "nema-mg1-7-table-7-1",
  kind: "acceptance",
  standard: "NEMA MG 1 Part 7",
  edition: "not stated, as quoted by EASA",
  title: "Table 7-1, unfiltered vibration limits of standard machines",
  status: "current",
  statusNote: "MG 1 is revised often and later editions differ in layout: check the edition in force",
  scope: "no-load test of motors on an elastic support whose natural frequency is at most 33 % of the lowest speed",
  machines: ["motor", "generator"],
  within: { condition: "new", frame: "NEMA" },
  place: "housing",
  measuredOn: "bearing housings",
  band: null,
  peakMeans: "open",
  meanings: { mounting: "resilient, as Table 7-1 is printed for, or rigid, which takes 0.8 times its limits" },
  notes: ["1200 r/min and up 0.15 in/s peak, below that the velocity of 2.5 mil peak-to-peak; between the speeds printed (900, 720, 600 r/min) the limit of the lower speed is taken"],
  classes: () => flatTable({
    machine: ["mounting", "speed"],
    columns: [{ as: "in/s pk", limits: ["acceptance"], source: TABLE }],
    rows: [
      // mounting    r/min                        in/s peak
      ["resilient",  { from: 1200 },              0.15], // 3600, 1800 and 1200 r/min
      ["resilient",  { from: 900, below: 1200 },  0.12],
      ["resilient",  { from: 720, below: 900 },   0.09],
      ["resilient",  { from: 600, below: 720 },   0.08],
      ["rigid",      { from: 1200 },              0.12, { source: FACTOR }],
      ["rigid",      { from: 900, below: 1200 },  0.096, { source: FACTOR }],
      ["rigid",      { from: 720, below: 900 },   0.072, { source: FACTOR }],
      ["rigid",      { from: 600, below: 720 },   0.064, { source: FACTOR }],
    ],
  }),
});
