import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const SHEET = /* @__PURE__ */ reported(
  "19XR VIB LIMITS",
  "one page",
  "https://www.scribd.com/document/716189808/19XR-VIB-LIMITS",
  "read on a chiller maker's sheet of one page on a document site; it prints 0.10 Fair, 0.20 Slightly Rough, 0.30 Rough, taken for the most that each word covers, since that judges the harder",
);

/** One maker's sheet for centrifugal chillers, in/s peak on the housing. */
// biome-ignore format: a row of a table is a line
export const chillerMakerSheet = /* @__PURE__ */ builtIn({
  id: "chiller-maker-sheet",
  kind: "grades",
  standard: "a maker's sheet for centrifugal chillers",
  edition: "undated",
  title: "Centrifugal chillers: velocity of compressor or motor housing",
  status: "guide",
  statusNote: "one maker's sheet, for that maker's centrifugal chillers",
  scope: "centrifugal chillers of one maker",
  machines: ["centrifugal chiller"],
  place: "housing",
  measuredOn: "housing of compressor or motor",
  band: null,
  peakMeans: "open",
  grades: ["fair or better", "slightly rough", "rough", "beyond rough"],
  notes: [
    "the displacements that the sheet calls peak are peak-to-peak: 0.10 in/s peak at 49.58 Hz is 0.642 mil peak-to-peak, and it prints 0.641 mil; do not enter them as peak",
    "the sheet cites 0.2 in/s for centrifugal refrigeration compressors (ASHRAE 2000, Systems and Equipment, p. 34.32)",
  ],
  classes: () => flatTable({
    machine: [],
    columns: [{ as: "in/s pk", limits: ["fair or better", "slightly rough", "rough"], source: SHEET }],
    rows: [
      // fair slightly rough
      [0.1,   0.2,     0.3],
    ],
  }),
});
