import { builtIn } from "./built-in";
import { flatGrades } from "./flat-table";
import { printed } from "./sources";

const TEXT = /* @__PURE__ */ printed(
  "Compressor Handbook",
  "p. 103, text of Fig. 8-6",
  "https://fliphtml5.com/xvthr/aftl/Compressor-Handbook/116/",
  "read on the page: smooth below 0.03 in/s, rough above 0.2 in/s; its formula takes mils peak-to-peak to in/s peak",
);

/** A textbook rule of thumb: smooth and rough by velocity, in/s peak. */
// biome-ignore format: a row of a table is a line
export const compressorHandbookRule = /* @__PURE__ */ builtIn({
  id: "compressor-handbook-rule",
  kind: "grades",
  standard: "Compressor Handbook",
  edition: "undated",
  title: "Compressor Handbook: smooth and rough by velocity",
  status: "guide",
  statusNote: "a rule of thumb",
  scope: "rotating machinery in general",
  place: "housing",
  measuredOn: "not stated",
  band: null,
  peakMeans: "open",
  grades: ["smooth", "between smooth and rough", "rough"],
  classes: () => flatGrades({
    columns: [{ as: "in/s pk", source: TEXT }],
    rows: [
      // upper ends                 in/s peak
      ["smooth",                    0.03],
      ["between smooth and rough",  0.2],
    ],
  }),
});
