import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory("ANSI/AMCA 204-05", "Table 6.3");
const CONFLICT = /* @__PURE__ */ memory(
  "ANSI/AMCA 204-05",
  "Table 6.3",
  "not checked against a printed copy; the harmonised ISO 14694:2003 has 5.7 mm/s (0.22 in/s) here, against 0.20 in/s: recheck both",
);
const NO_SHUTDOWN = "no number for shutdown in the standard: set it from the fan's history";

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
  meanings: { category: "BV-1: residential, to 0.15 kW; BV-2: heating, ventilating and agricultural, to 3.7 kW; BV-3: industrial process and power generation, to 300 kW (transport to 15 kW, transit and tunnel to 75 kW, petrochemical to 37 kW); BV-4: transport above 15 kW, transit and tunnel above 75 kW, jet fans, petrochemical above 37 kW; BV-5: clean rooms, semiconductor" },
  notes: [
    "the standard does not define how the peak is taken (recorded in a public comment of 2016)",
  ],
  classes: [
    { when: { category: "BV-1", support: "rigid" }, within: { power: { to: 0.15 } }, note: NO_SHUTDOWN, criteria: [{ as: "in/s pk", limits: { "start-up": 0.55, alarm: 0.6, shutdown: null }, source: TABLE }] },
    { when: { category: "BV-1", support: "flexible" }, within: { power: { to: 0.15 } }, note: NO_SHUTDOWN, criteria: [{ as: "in/s pk", limits: { "start-up": 0.6, alarm: 0.75, shutdown: null }, source: TABLE }] },
    { when: { category: "BV-2", support: "rigid" }, within: { power: { to: 3.7 } }, note: NO_SHUTDOWN, criteria: [{ as: "in/s pk", limits: { "start-up": 0.3, alarm: 0.5, shutdown: null }, source: TABLE }] },
    { when: { category: "BV-2", support: "flexible" }, within: { power: { to: 3.7 } }, note: NO_SHUTDOWN, criteria: [{ as: "in/s pk", limits: { "start-up": 0.5, alarm: 0.75, shutdown: null }, source: TABLE }] },
    { when: { category: "BV-3", support: "rigid" }, within: { power: { to: 300 } }, criteria: [{ as: "in/s pk", limits: { "start-up": 0.25, alarm: 0.4, shutdown: 0.5 }, source: TABLE }] },
    { when: { category: "BV-3", support: "flexible" }, within: { power: { to: 300 } }, criteria: [{ as: "in/s pk", limits: { "start-up": 0.35, alarm: 0.65, shutdown: 0.7 }, source: TABLE }] },
    { when: { category: "BV-4", support: "rigid" }, criteria: [{ as: "in/s pk", limits: { "start-up": 0.16, alarm: 0.25, shutdown: 0.4 }, source: TABLE }] },
    { when: { category: "BV-4", support: "flexible" }, criteria: [{ as: "in/s pk", limits: { "start-up": 0.25, alarm: 0.4, shutdown: 0.6 }, source: TABLE }] },
    { when: { category: "BV-5", support: "rigid" }, criteria: [{ as: "in/s pk", limits: { "start-up": 0.1, alarm: 0.2, shutdown: 0.3 }, source: TABLE, limitSources: { alarm: CONFLICT } }] },
    { when: { category: "BV-5", support: "flexible" }, criteria: [{ as: "in/s pk", limits: { "start-up": 0.16, alarm: 0.3, shutdown: 0.4 }, source: TABLE }] },
  ],
});
