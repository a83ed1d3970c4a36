import { builtIn } from "./built-in";
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
  statusNote: "believed current (from memory, not checked); title page read",
  scope: "new rotodynamic pumps above 1 kW, in the preferred (POR) or the allowable (AOR) operating region",
  machines: ["pump"],
  within: { power: { above: 1 }, condition: "new" },
  place: "housing",
  measuredOn: "bearing housings of the pump",
  band: [10, 1000],
  meanings: { category: "I: high need of reliability, availability or safety; II: general or less critical" },
  slowBand: { below: 600, band: [2, 1000] },
  notes: ["preferred region: about 70 to 120 % of the best-efficiency flow (from memory)"],
  classes: [
    { when: { category: "I", power: { to: 200 }, test: "site", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 2.5 }, source: ROWS }, SITE_PREFERRED] },
    { when: { category: "I", power: { to: 200 }, test: "site", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 3.4 }, source: ROWS }, SITE_ALLOWABLE] },
    { when: { category: "I", power: { to: 200 }, test: "works", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 3.3 }, source: ROWS }, WORKS_PREFERRED] },
    { when: { category: "I", power: { to: 200 }, test: "works", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 4 }, source: ROWS }, WORKS_ALLOWABLE] },
    { when: { category: "I", power: { above: 200 }, test: "site", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 3.5 }, source: ROWS }, SITE_PREFERRED] },
    { when: { category: "I", power: { above: 200 }, test: "site", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 4.4 }, source: ROWS }, SITE_ALLOWABLE] },
    { when: { category: "I", power: { above: 200 }, test: "works", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 4.3 }, source: ROWS }, WORKS_PREFERRED] },
    { when: { category: "I", power: { above: 200 }, test: "works", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 5 }, source: ROWS }, WORKS_ALLOWABLE] },
    { when: { category: "II", power: { to: 200 }, test: "site", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 3.2 }, source: ROWS }, SITE_PREFERRED] },
    { when: { category: "II", power: { to: 200 }, test: "site", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 4.2 }, source: ROWS }, SITE_ALLOWABLE] },
    { when: { category: "II", power: { to: 200 }, test: "works", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 4.2 }, source: ROWS }, WORKS_PREFERRED] },
    { when: { category: "II", power: { to: 200 }, test: "works", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 5.1 }, source: ROWS }, WORKS_ALLOWABLE] },
    { when: { category: "II", power: { above: 200 }, test: "site", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 4.2 }, source: ROWS }, SITE_PREFERRED] },
    { when: { category: "II", power: { above: 200 }, test: "site", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 5.2 }, source: ROWS }, SITE_ALLOWABLE] },
    { when: { category: "II", power: { above: 200 }, test: "works", region: "preferred" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 5.2 }, source: ROWS }, WORKS_PREFERRED] },
    { when: { category: "II", power: { above: 200 }, test: "works", region: "allowable" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 6.1 }, source: ROWS }, WORKS_ALLOWABLE] },
  ],
});
