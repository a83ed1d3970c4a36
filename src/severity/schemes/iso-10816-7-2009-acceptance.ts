import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory } from "./sources";

const ROWS = /* @__PURE__ */ memory("ISO 10816-7:2009", "Table A.1, acceptance tests");
const SLOW = /* @__PURE__ */ memory("ISO 10816-7:2009", "Table A.2, acceptance tests of slow pumps");

/** The additional criterion at 600 r/min and below, the same for all categories and powers. */
function slow<const Value extends number>(acceptance: Value) {
  return { as: "um pp", limits: { acceptance }, source: SLOW, when: { speed: { to: 600 } } } as const;
}
const SITE_PREFERRED = /* @__PURE__ */ slow(50);
const SITE_ALLOWABLE = /* @__PURE__ */ slow(65);
const WORKS_PREFERRED = /* @__PURE__ */ slow(65);
const WORKS_ALLOWABLE = /* @__PURE__ */ slow(80);

/** ISO 10816-7:2009, acceptance tests of rotodynamic pumps, on site and at the works. */
// biome-ignore format: a row of a table is a line
export const iso10816Part7Acceptance = /* @__PURE__ */ builtIn({
  id: "iso-10816-7-2009-acceptance",
  kind: "acceptance",
  standard: "ISO 10816-7",
  edition: "2009",
  title: "Rotodynamic pumps for industrial applications: acceptance tests",
  status: "current",
  statusNote: "from memory, not checked; title page read",
  scope: "new rotodynamic pumps above 1 kW, in the preferred (POR) or the allowable (AOR) operating region",
  machines: ["pump"],
  within: { power: { above: 1 }, condition: "new" },
  place: "housing",
  measuredOn: "bearing housings of the pump",
  band: [10, 1000],
  meanings: { category: "I: high need of reliability, availability or safety; II: general or less critical" },
  slowBand: { below: 600, band: [2, 1000] },
  notes: ["preferred region: about 70 to 120 % of the best-efficiency flow (from memory)"],
  classes: () => flatTable({
    machine: ["category", "power", "test", "region"],
    columns: [{ as: "mm/s rms", limits: ["acceptance"], source: ROWS }],
    rows: [
      // category kW  test     region       mm/s RMS
      ["I",  { to: 200 },    "site",  "preferred", 2.5, { also: [SITE_PREFERRED] }],
      ["I",  { to: 200 },    "site",  "allowable", 3.4, { also: [SITE_ALLOWABLE] }],
      ["I",  { to: 200 },    "works", "preferred", 3.3, { also: [WORKS_PREFERRED] }],
      ["I",  { to: 200 },    "works", "allowable", 4,   { also: [WORKS_ALLOWABLE] }],
      ["I",  { above: 200 }, "site",  "preferred", 3.5, { also: [SITE_PREFERRED] }],
      ["I",  { above: 200 }, "site",  "allowable", 4.4, { also: [SITE_ALLOWABLE] }],
      ["I",  { above: 200 }, "works", "preferred", 4.3, { also: [WORKS_PREFERRED] }],
      ["I",  { above: 200 }, "works", "allowable", 5,   { also: [WORKS_ALLOWABLE] }],
      ["II", { to: 200 },    "site",  "preferred", 3.2, { also: [SITE_PREFERRED] }],
      ["II", { to: 200 },    "site",  "allowable", 4.2, { also: [SITE_ALLOWABLE] }],
      ["II", { to: 200 },    "works", "preferred", 4.2, { also: [WORKS_PREFERRED] }],
      ["II", { to: 200 },    "works", "allowable", 5.1, { also: [WORKS_ALLOWABLE] }],
      ["II", { above: 200 }, "site",  "preferred", 4.2, { also: [SITE_PREFERRED] }],
      ["II", { above: 200 }, "site",  "allowable", 5.2, { also: [SITE_ALLOWABLE] }],
      ["II", { above: 200 }, "works", "preferred", 5.2, { also: [WORKS_PREFERRED] }],
      ["II", { above: 200 }, "works", "allowable", 6.1, { also: [WORKS_ALLOWABLE] }],
    ],
  }),
});
