import { builtIn } from "./built-in";
import { amcaCategories } from "./fan-categories";
import { flatTable } from "./flat-table";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory("ANSI/AMCA 204-05", "Table 6.2");
const OF_BV_4 = /* @__PURE__ */ memory(
  "ANSI/AMCA 204-05",
  "Table 6.2, row BV-4",
  "not checked against a printed copy; category by Table 4-1 of ANSI/AMCA 204-96, read on a scan: https://es.scribd.com/document/406049291/Balanceo-dinamico",
);

/** What each category bounds; above 298 kW the application decides, by Table 4-1 of the edition of 1996. */
// biome-ignore format: a row of a table is a line
const CATEGORIES = {
  "BV-1": { when: { category: "BV-1" }, within: { power: { to: 0.15 } } },
  "BV-2": { when: { category: "BV-2" }, within: { power: { to: 3.7 } } },
  "BV-3": { when: { category: "BV-3" }, within: { power: { to: 298 } } },
  "BV-4 above 298 kW": { when: { application: "industrial", power: { above: 298 } }, within: { category: "BV-3" }, note: "an industrial fan above 298 kW (400 hp) is of category BV-4, not BV-3 (Table 4-1 of ANSI/AMCA 204-96, read on a scan): these are the limits of BV-4" },
} as const;

/** ANSI/AMCA 204-05, fans tested at the maker's works, in/s peak. */
// biome-ignore format: a row of a table is a line
export const ansiAmca204Acceptance = /* @__PURE__ */ builtIn({
  id: "ansi-amca-204-05-acceptance",
  kind: "acceptance",
  standard: "ANSI/AMCA 204",
  edition: "05, R2012",
  title: "Balance Quality and Vibration Levels for Fans: test at the maker's works",
  status: "withdrawn",
  statusNote: "superseded (from memory); harmonised with ISO 14694:2003 (read on its authority page)",
  replacedBy: "ANSI/AMCA 204-20",
  scope: "new fans at the maker's works, by application category as in ISO 14694",
  machines: ["fan"],
  within: { condition: "new", test: "works" },
  place: "housing",
  measuredOn: "bearing housings of the fan, filter out",
  band: null,
  peakMeans: "open",
  meanings: { category: amcaCategories },
  notes: [
    "peak, filter out: the standard leaves open how the peak is taken, as true peak or as 1.414 times RMS (recorded in a public comment of 2016), and names no band",
    "categories by Table 4-1 of the edition of 1996, read on a scan; that the edition of 2005 kept it is from memory",
  ],
  classes: () => flatTable<"acceptance">({
    machine: ["category", "support"],
    means: { category: CATEGORIES },
    columns: [{ as: "in/s pk", limits: ["acceptance"], source: TABLE }],
    rows: [
      //                    in/s peak
      ["BV-1", "rigid",     0.5],
      ["BV-1", "flexible",  0.6],
      ["BV-2", "rigid",     0.2],
      ["BV-2", "flexible",  0.3],
      ["BV-3", "rigid",     0.15],
      ["BV-3", "flexible",  0.2],
      ["BV-4 above 298 kW", "rigid",    0.1, { source: OF_BV_4 }],
      ["BV-4 above 298 kW", "flexible", 0.15, { source: OF_BV_4 }],
      ["BV-4", "rigid",     0.1],
      ["BV-4", "flexible",  0.15],
      ["BV-5", "rigid",     0.08],
      ["BV-5", "flexible",  0.1],
    ],
  }),
});
