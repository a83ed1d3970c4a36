import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { quoted } from "./sources";

const TEST = /* @__PURE__ */ quoted(
  "API 617 8th ed.",
  "mechanical running test",
  "https://digilib.universitaspertamina.ac.id/ebook/Forsthoffer's%20best%20practice%20handbook%20for%20rotating%20machinery/files/basic-html/page205.html",
  "formula read in Forsthoffer's Best Practice Handbook for Rotating Machinery, p. 205, which names no edition; the stop at 1.0 mil, whichever is less, on a page of inspection-for-industry.com, and in Turbomachinery International: first none, later 2 mil, now 1 mil, so counted for the newest edition; API 612 is alike, API 672 stops at 40 um (1.5 mil) and is not",
);

/** API 617 8th edition, shaft vibration in the mechanical running test. */
// biome-ignore format: a row of a table is a line
export const api617Shaft = /* @__PURE__ */ builtIn({
  id: "api-617-8th-shaft",
  kind: "acceptance",
  standard: "API 617",
  edition: "8th",
  title: "Axial and centrifugal compressors and expander-compressors: mechanical running test",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "compressors, and by the sister standards special-purpose steam turbines and gear drives, in the mechanical running test",
  machines: ["compressor", "steam turbine", "gear drive"],
  within: { condition: "new" },
  place: "shaft",
  measuredOn: "the shaft against its bearing housing",
  band: null,
  notes: [
    "the smaller of 1.0 mil and root(12 000/n) mil peak-to-peak, unfiltered; n is the maximum continuous speed in r/min: give that as the speed",
    "older editions stop at 50 um (2 mil) or nowhere, other machine types elsewhere (API 672: 40 um): check the edition of the contract",
    "run-out: 25 % of the limit or 6.5 um (0.25 mil), the lesser where the document leaves it open; API 610 says the lesser; as a vector, and only in the works test",
    "band read: 0.25 to 8 times the maximum continuous speed, in API 612 from 0.05 times; discrete frequencies other than running speed: not above 20 % of the limit (API 612 as a blog quotes it; a page that says 120 % misreads it)",
    "above the maximum continuous speed up to trip speed: not more than 0.5 mil above the reading at the maximum continuous speed",
    "for service a handbook quotes API alarm at root(24 000/n) and trip at root(36 000/n) mil",
  ],
  classes: () => flatTable<"acceptance">({
    machine: ["speed"],
    columns: [{ as: "mil pp", limits: ["acceptance"], source: TEST }],
    // any speed: mil peak-to-peak
    rows: [[{}, { rootOf: 12000, atMost: 1 }]],
  }),
});
