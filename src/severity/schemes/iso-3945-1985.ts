import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { disputed, memory, reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "ISO 3945:1985",
  "its table of severity grades",
  "http://vibratechnica.com/vibrationseverity.html",
  'decoded from the order of the cells of a page, "Vibration Severity Standard", Table 2, which says it is based on ISO 3945; it heads the table 600 to 1200 r/min, against 10 to 200 r/s in the title of the standard',
);
const LOWER = /* @__PURE__ */ disputed(
  /* @__PURE__ */ memory("ISO 3945:1985", "its table of severity grades"),
  "the page http://vibratechnica.com/vibrationseverity.html prints 4.60 in a ladder with 0.46 and 46.0; memory says 4.5, a step of the preferred numbers; the lower is shipped",
);

/** ISO 3945:1985, large machines measured in situ. */
// biome-ignore format: a row of a table is a line
export const iso3945Of1985 = /* @__PURE__ */ builtIn({
  id: "iso-3945-1985",
  kind: "zones",
  standard: "ISO 3945",
  edition: "1985",
  title: "Mechanical vibration of large rotating machines with speed range from 10 to 200 r/s - Measurement and evaluation of vibration severity in situ",
  status: "withdrawn",
  statusNote: "replaced (read in the foreword of ISO 10816-1:1995)",
  replacedBy: "ISO 10816-1:1995",
  scope: "large rotating machines above 300 kW (from memory), 600 to 12 000 r/min, measured in situ",
  machines: ["pump", "fan", "motor", "generator", "compressor", "steam turbine", "gas turbine"],
  within: { power: { above: 300 }, speed: { from: 600, to: 12000 } },
  place: "housing",
  measuredOn: "bearing housings, the largest of the measured directions",
  band: [10, 1000],
  classes: () => flatTable({
    machine: ["support"],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: TABLE }],
    rows: [
      // support     A/B  B/C  C/D, mm/s RMS
      ["rigid",      1.8, 4.5, 11.2, { limitSources: { "mm/s rms": { "B/C": LOWER } } }],
      ["flexible",   2.8, 7.1, 18],
    ],
  }),
});
