import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const SCAN = /* @__PURE__ */ reported(
  "Ariel Corporation, Table 3-1, Typical vibration levels",
  "p. 1",
  "https://ru.scribd.com/doc/276152111/Limites-Ariel-Compressor",
  "read on a scanned page on a document site, which spoils some of its signs for at most and below; mm/s stand beside, rounded",
);

/** A maker's typical levels for reciprocating compressors, part by part, in/s zero to peak. */
// biome-ignore format: a row of a table is a line
export const recipCompressorMaker = /* @__PURE__ */ builtIn({
  id: "recip-compressor-maker",
  kind: "grades",
  standard: "a maker's table for reciprocating compressors",
  edition: "undated scan",
  title: "Balanced opposed reciprocating compressors of one maker: typical vibration levels of skid, frame and cylinder",
  status: "guide",
  statusNote: "guidelines of one maker, by its own words no more than that",
  scope: "balanced opposed reciprocating compressors of one maker; not vertical ones, nor those that are not balanced",
  machines: ["reciprocating compressor"],
  place: "housing",
  measuredOn: "skid, frame or cylinder; no limits on skid piping, bottles and scrubbers",
  band: [10, 250],
  peakMeans: "open",
  ask: ["part"],
  meanings: { part: "the part the reading was taken on; a cylinder in any direction, where ISO 20816-8 parts lateral from rod" },
  grades: ["first level", "second level", "third level", "above all levels"],
  notes: [
    "the names of the three levels were not seen: they are numbered here",
    "in/s zero to peak in 10 to 250 Hz, where ISO 20816-8 has mm/s RMS in 2 to 1000 Hz; its foundation is not this table's skid",
  ],
  classes: () => flatTable({
    machine: ["part"],
    means: { part: { cylinder: { when: { part: ["cylinder", "cylinder lateral", "cylinder rod"] } } } },
    columns: [{ as: "in/s pk", limits: ["first level", "second level", "third level"], source: SCAN }],
    rows: [
      //           three levels
      ["skid",     0.1,  0.15, 0.2],
      ["frame",    0.2,  0.4,  0.5],
      ["cylinder", 0.45, 0.8,  1],
    ],
  }),
});
