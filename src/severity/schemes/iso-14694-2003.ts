import { builtIn } from "./built-in";
import { isoFanCategories } from "./fan-categories";
import { flatTable } from "./flat-table";
import { disputed, memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 14694:2003",
  "8.4, table of limits in situ",
  "not checked against a printed copy; Table 5 from memory, but a maker of air handling units (Saiver) gives that number to the table of the maker's works: go by the clause, not by the number",
);
const CONFLICT = /* @__PURE__ */ disputed(
  TABLE,
  "the harmonised ANSI/AMCA 204-05 has 0.20 in/s here, which is 5.08 mm/s; memory says 5.7 mm/s, which is the RMS column's 4.0 times 1.414; both are from memory; the lower is shipped, check against the standard",
);
const ROUNDED = /* @__PURE__ */ disputed(
  TABLE,
  "memory says 8.8 mm/s; the harmonised ANSI/AMCA 204-05 has 0.35 in/s here, which is 8.89 mm/s; both are from memory; the lower is shipped, check against the standard",
);
const NO_SHUTDOWN = "no number for shutdown in the standard: set it from the fan's history";

/** What each category bounds. */
// biome-ignore format: a row of a table is a line
const CATEGORIES = {
  "BV-1": { when: { category: "BV-1" }, within: { power: { to: 0.15 } }, note: NO_SHUTDOWN },
  "BV-2": { when: { category: "BV-2" }, within: { power: { to: 3.7 } }, note: NO_SHUTDOWN },
  "BV-3": { when: { category: "BV-3" }, within: { power: { to: 300 } } },
} as const;

const STEPS = ["start-up", "alarm", "shutdown"] as const;
const BV_3_FLEXIBLE = { limitSources: { "mm/s pk": { "start-up": ROUNDED } } };
const BV_5_RIGID = { limitSources: { "mm/s pk": { alarm: CONFLICT } } };

/** ISO 14694:2003, industrial fans below 300 kW on site: start-up, alarm and shutdown. */
// biome-ignore format: a row of a table is a line
export const iso14694Of2003 = /* @__PURE__ */ builtIn({
  id: "iso-14694-2003",
  kind: "operation",
  standard: "ISO 14694",
  edition: "2003",
  title: "Industrial fans - Specifications for balance quality and vibration levels",
  status: "current",
  statusNote: "current (from memory; amendment 1 of 2010), scope page read",
  scope: "fans below 300 kW (with standard motors, to 355 kW) on site, by application category",
  machines: ["fan"],
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
  classes: () => flatTable<"operation">({
    machine: ["category", "support"],
    means: { category: CATEGORIES },
    columns: [{ as: "mm/s pk", limits: STEPS, source: TABLE }, { as: "mm/s rms", limits: STEPS, source: TABLE }],
    rows: [
      //                    start-up, alarm, shutdown
      //                    mm/s peak           mm/s rms
      ["BV-1", "rigid",     14, 15.2, null,     10, 10.6, null],
      ["BV-1", "flexible",  15.2, 19.1, null,   11.2, 14, null],
      ["BV-2", "rigid",     7.6, 12.7, null,    5.6, 9, null],
      ["BV-2", "flexible",  12.7, 19.1, null,   9, 14, null],
      ["BV-3", "rigid",     6.4, 10.2, 12.7,    4.5, 7.1, 9],
      ["BV-3", "flexible",  8.8, 16.5, 17.8,    6.3, 11.8, 12.5,  BV_3_FLEXIBLE],
      ["BV-4", "rigid",     4.1, 6.4, 10.2,     2.8, 4.5, 7.1],
      ["BV-4", "flexible",  6.4, 10.2, 15.2,    4.5, 7.1, 11.2],
      ["BV-5", "rigid",     2.5, 5.08, 7.6,     1.8, 4, 5.6,      BV_5_RIGID],
      ["BV-5", "flexible",  4.1, 7.6, 10.2,     2.8, 5.6, 7.1],
    ],
  }),
});
