import { builtIn } from "./built-in";
import { published } from "./sources";

const TABLE = /* @__PURE__ */ published(
  "Technical Associates of Charlotte, Table II, criteria for overall condition rating (metric, RMS)",
  "rows of cooling-tower drives",
  "https://vi.scribd.com/doc/266718160/TECHNICAL-ASSOCIATES-OF-CHARLOTTE-pdf",
  "read on a one-page scan; row and column order taken from the order of the scanned text",
);

/** Consultant's criterion for cooling-tower drives, mm/s RMS. */
// biome-ignore format: a row of a table is a line
export const coolingTowerDrives = /* @__PURE__ */ builtIn({
  id: "tac-table-ii-cooling-tower",
  kind: "grades",
  standard: "Technical Associates of Charlotte, Table II",
  edition: "undated",
  title: "Criteria for overall condition rating: cooling-tower drives",
  status: "guide",
  statusNote: "a consultant's criterion, widely reprinted; not a standard",
  scope: "cooling-tower drives at 600 to 60 000 r/min, not on isolators",
  machines: ["cooling tower drive"],
  within: { speed: { from: 600, to: 60000 } },
  place: "housing",
  measuredOn: "bearing housings",
  band: null,
  grades: ["good", "fair", "alert", "critical"],
  ask: ["class"],
  meanings: { class: "the kind of drive" },
  notes: ["on isolators: alert and critical 30 to 50 % higher; at gearbox positions about 25 % higher"],
  classes: [
    { when: { class: "long hollow drive shaft" }, criteria: [{ as: "mm/s rms", limits: { good: 6.7, fair: 10.8, alert: 16.2 }, source: TABLE }] },
    { when: { class: "close-coupled belt drive" }, criteria: [{ as: "mm/s rms", limits: { good: 4.9, fair: 7.6, alert: 11.7 }, source: TABLE }] },
    { when: { class: "close-coupled direct drive" }, criteria: [{ as: "mm/s rms", limits: { good: 3.6, fair: 5.4, alert: 8.1 }, source: TABLE }] },
  ],
});
