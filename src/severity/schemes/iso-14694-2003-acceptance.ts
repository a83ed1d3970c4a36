import { builtIn } from "./built-in";
import { isoFanCategories } from "./fan-categories";
import { flatTable } from "./flat-table";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 14694:2003",
  "8.3, table of limits at the maker's works",
  "not checked against a printed copy; Table 4 from memory, but a maker of air handling units (Saiver, http://www.saiver.com/de/kundenspezifische-tests/) calls it Table 5: go by the clause, not by the number",
);

/** What each category bounds. */
// biome-ignore format: a row of a table is a line
const CATEGORIES = {
  "BV-1": { when: { category: "BV-1" }, within: { power: { to: 0.15 } } },
  "BV-2": { when: { category: "BV-2" }, within: { power: { to: 3.7 } } },
  "BV-3": { when: { category: "BV-3" }, within: { power: { to: 300 } } },
} as const;

/** ISO 14694:2003, industrial fans below 300 kW tested at the maker's works. */
// biome-ignore format: a row of a table is a line
export const iso14694Acceptance = /* @__PURE__ */ builtIn({
  id: "iso-14694-2003-acceptance",
  kind: "acceptance",
  standard: "ISO 14694",
  edition: "2003",
  title: "Industrial fans - Specifications for balance quality and vibration levels: test at the maker's works",
  status: "current",
  statusNote: "current (from memory; amendment 1 of 2010), scope page read",
  scope: "new fans below 300 kW (with standard motors, to 355 kW) at the maker's works, by application category",
  machines: ["fan"],
  within: { condition: "new", test: "works" },
  exclusions: [{ when: { type: "fan", power: { from: 300 } }, reason: "a fan of 300 kW or more: ISO 10816-3 or ISO 20816-3, not ISO 14694" }],
  place: "housing",
  measuredOn: "bearing housings of the fan",
  band: [10, 1000],
  peakMeans: "open",
  meanings: { category: isoFanCategories },
  notes: [
    "peak and RMS columns are both printed and not in ratio 1.414: the column of the reading's detector is used; which peak is meant, true or 1.414 times RMS, is not known here",
    "measuring band from memory",
    "categories by the harmonised ANSI/AMCA 204, Table 4-1 of its edition of 1996, read on a scan; 300 kW in place of its 298 kW (400 hp) from memory",
  ],
  classes: () => flatTable<"acceptance">({
    machine: ["category", "support"],
    means: { category: CATEGORIES },
    columns: [{ as: "mm/s pk", limits: ["acceptance"], source: TABLE }, { as: "mm/s rms", limits: ["acceptance"], source: TABLE }],
    rows: [
      //                    mm/s peak, mm/s rms
      ["BV-1", "rigid",     12.7, 9],
      ["BV-1", "flexible",  15.2, 11.2],
      ["BV-2", "rigid",     5.1,  3.5],
      ["BV-2", "flexible",  7.6,  5.6],
      ["BV-3", "rigid",     3.8,  2.8],
      ["BV-3", "flexible",  5.1,  3.5],
      ["BV-4", "rigid",     2.5,  1.8],
      ["BV-4", "flexible",  3.8,  2.8],
      ["BV-5", "rigid",     2,    1.4],
      ["BV-5", "flexible",  2.5,  1.8],
    ],
  }),
});
