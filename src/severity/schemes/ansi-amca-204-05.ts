import { builtIn } from "./built-in";
import { amcaCategories } from "./fan-categories";
import { flatTable } from "./flat-table";
import { disputed, memory, quoted } from "./sources";

const TABLE = /* @__PURE__ */ memory("ANSI/AMCA 204-05", "Table 6.3");
const OF_BV_4 = /* @__PURE__ */ memory(
  "ANSI/AMCA 204-05",
  "Table 6.3, row BV-4",
  "not checked against a printed copy; category by Table 4-1 of ANSI/AMCA 204-96, read on a scan: https://es.scribd.com/document/406049291/Balanceo-dinamico",
);
const BLOWER = /* @__PURE__ */ quoted(
  "ANSI/AMCA 204-05",
  "Table 6.3",
  "https://manualshive.com/en/manual/cincinnati-fan/hdaf/2607286?page=7",
  "read in Cincinnati Fan, Operating manual HDAF blowers, OMM-05-0509, p. 7: not to be operated above 0.40 in/s, filter out, if rigidly mounted, 0.65 in/s on isolators; category and peak are not printed there, number and mounting fit BV-3 alone",
);
const CONFLICT = /* @__PURE__ */ disputed(
  TABLE,
  "memory says 0.20 in/s; the harmonised ISO 14694:2003 has 5.7 mm/s here, which is 0.224 in/s; both are from memory; the lower is shipped, check against the standard",
);
const ROUNDED = /* @__PURE__ */ disputed(
  TABLE,
  "the harmonised ISO 14694:2003 has 8.8 mm/s here, which is 0.346 in/s; memory says 0.35 in/s, as the print with two decimals would have both; both are from memory; the lower is shipped, check against the standard",
);
const NO_SHUTDOWN = "no number for shutdown in the standard: set it from the fan's history";

/** What each category bounds; above 298 kW the application decides, by Table 4-1 of the edition of 1996. */
// biome-ignore format: a row of a table is a line
const CATEGORIES = {
  "BV-1": { when: { category: "BV-1" }, within: { power: { to: 0.15 } }, note: NO_SHUTDOWN },
  "BV-2": { when: { category: "BV-2" }, within: { power: { to: 3.7 } }, note: NO_SHUTDOWN },
  "BV-3": { when: { category: "BV-3" }, within: { power: { to: 298 } } },
  "BV-4 above 298 kW": { when: { application: "industrial", power: { above: 298 } }, within: { category: "BV-3" }, note: "an industrial fan above 298 kW (400 hp) is of category BV-4, not BV-3 (Table 4-1 of ANSI/AMCA 204-96, read on a scan): these are the limits of BV-4" },
} as const;

const ALARM_READ = { limitSources: { "in/s pk": { alarm: BLOWER } } };
const BV_3_FLEXIBLE = { limitSources: { "in/s pk": { "start-up": ROUNDED, alarm: BLOWER } } };
const BV_5_RIGID = { limitSources: { "in/s pk": { alarm: CONFLICT } } };

/** ANSI/AMCA 204-05, fans on site: start-up, alarm and shutdown, in/s peak. */
// biome-ignore format: a row of a table is a line
export const ansiAmca204Of2005 = /* @__PURE__ */ builtIn({
  id: "ansi-amca-204-05",
  kind: "operation",
  standard: "ANSI/AMCA 204",
  edition: "05, R2012",
  title: "Balance Quality and Vibration Levels for Fans",
  status: "withdrawn",
  statusNote: "superseded (from memory); harmonised with ISO 14694:2003 (read on its authority page)",
  replacedBy: "ANSI/AMCA 204-20",
  scope: "fans on site, by application category as in ISO 14694",
  machines: ["fan"],
  place: "housing",
  measuredOn: "bearing housings of the fan, filter out",
  band: null,
  peakMeans: "open",
  meanings: { category: amcaCategories },
  notes: [
    "peak, filter out: the standard leaves open how the peak is taken, as true peak or as 1.414 times RMS (recorded in a public comment of 2016), and names no band",
    "categories by Table 4-1 of the edition of 1996, read on a scan; that the edition of 2005 kept it is from memory",
  ],
  classes: () => flatTable<"operation">({
    machine: ["category", "support"],
    means: { category: CATEGORIES },
    columns: [{ as: "in/s pk", limits: ["start-up", "alarm", "shutdown"], source: TABLE }],
    rows: [
      //                    in/s peak: start-up, alarm, shutdown
      ["BV-1", "rigid",     0.55, 0.6,  null],
      ["BV-1", "flexible",  0.6,  0.75, null],
      ["BV-2", "rigid",     0.3,  0.5,  null],
      ["BV-2", "flexible",  0.5,  0.75, null],
      ["BV-3", "rigid",     0.25, 0.4,  0.5,   ALARM_READ],
      ["BV-3", "flexible",  0.346, 0.65, 0.7,  BV_3_FLEXIBLE],
      ["BV-4 above 298 kW", "rigid",    0.16, 0.25, 0.4, { source: OF_BV_4 }],
      ["BV-4 above 298 kW", "flexible", 0.25, 0.4,  0.6, { source: OF_BV_4 }],
      ["BV-4", "rigid",     0.16, 0.25, 0.4],
      ["BV-4", "flexible",  0.25, 0.4,  0.6],
      ["BV-5", "rigid",     0.1,  0.2,  0.3,   BV_5_RIGID],
      ["BV-5", "flexible",  0.16, 0.3,  0.4],
    ],
  }),
});
