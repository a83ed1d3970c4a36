import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory("ISO 14694:2003", "Table 5");
const CONFLICT = /* @__PURE__ */ memory(
  "ISO 14694:2003",
  "Table 5",
  "not checked against a printed copy; the harmonised ANSI/AMCA 204-05 has 0.20 in/s (5.1 mm/s) here, against 5.7 mm/s: recheck both",
);
const NO_SHUTDOWN = "no number for shutdown in the standard: set it from the fan's history";

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
  meanings: { category: "BV-1: residential, to 0.15 kW; BV-2: heating, ventilating and agricultural, to 3.7 kW; BV-3: industrial process and power generation, to 300 kW (transport to 15 kW, transit and tunnel to 75 kW, petrochemical to 37 kW); BV-4: transport above 15 kW, transit and tunnel above 75 kW, jet fans, petrochemical above 37 kW; BV-5: clean rooms, semiconductor" },
  notes: [
    "peak and RMS columns are both printed and not in ratio 1.414: the column of the reading's detector is used",
    "measuring band from memory",
  ],
  classes: [
    { when: { category: "BV-1", support: "rigid" }, within: { power: { to: 0.15 } }, note: NO_SHUTDOWN, criteria: [
      { as: "mm/s pk", limits: { "start-up": 14, alarm: 15.2, shutdown: null }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 10, alarm: 10.6, shutdown: null }, source: TABLE },
    ] },
    { when: { category: "BV-1", support: "flexible" }, within: { power: { to: 0.15 } }, note: NO_SHUTDOWN, criteria: [
      { as: "mm/s pk", limits: { "start-up": 15.2, alarm: 19.1, shutdown: null }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 11.2, alarm: 14, shutdown: null }, source: TABLE },
    ] },
    { when: { category: "BV-2", support: "rigid" }, within: { power: { to: 3.7 } }, note: NO_SHUTDOWN, criteria: [
      { as: "mm/s pk", limits: { "start-up": 7.6, alarm: 12.7, shutdown: null }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 5.6, alarm: 9, shutdown: null }, source: TABLE },
    ] },
    { when: { category: "BV-2", support: "flexible" }, within: { power: { to: 3.7 } }, note: NO_SHUTDOWN, criteria: [
      { as: "mm/s pk", limits: { "start-up": 12.7, alarm: 19.1, shutdown: null }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 9, alarm: 14, shutdown: null }, source: TABLE },
    ] },
    { when: { category: "BV-3", support: "rigid" }, within: { power: { to: 300 } }, criteria: [
      { as: "mm/s pk", limits: { "start-up": 6.4, alarm: 10.2, shutdown: 12.7 }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 4.5, alarm: 7.1, shutdown: 9 }, source: TABLE },
    ] },
    { when: { category: "BV-3", support: "flexible" }, within: { power: { to: 300 } }, criteria: [
      { as: "mm/s pk", limits: { "start-up": 8.8, alarm: 16.5, shutdown: 17.8 }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 6.3, alarm: 11.8, shutdown: 12.5 }, source: TABLE },
    ] },
    { when: { category: "BV-4", support: "rigid" }, criteria: [
      { as: "mm/s pk", limits: { "start-up": 4.1, alarm: 6.4, shutdown: 10.2 }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 2.8, alarm: 4.5, shutdown: 7.1 }, source: TABLE },
    ] },
    { when: { category: "BV-4", support: "flexible" }, criteria: [
      { as: "mm/s pk", limits: { "start-up": 6.4, alarm: 10.2, shutdown: 15.2 }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 4.5, alarm: 7.1, shutdown: 11.2 }, source: TABLE },
    ] },
    { when: { category: "BV-5", support: "rigid" }, criteria: [
      { as: "mm/s pk", limits: { "start-up": 2.5, alarm: 5.7, shutdown: 7.6 }, source: TABLE, limitSources: { alarm: CONFLICT } },
      { as: "mm/s rms", limits: { "start-up": 1.8, alarm: 4, shutdown: 5.6 }, source: TABLE },
    ] },
    { when: { category: "BV-5", support: "flexible" }, criteria: [
      { as: "mm/s pk", limits: { "start-up": 4.1, alarm: 7.6, shutdown: 10.2 }, source: TABLE },
      { as: "mm/s rms", limits: { "start-up": 2.8, alarm: 5.6, shutdown: 7.1 }, source: TABLE },
    ] },
  ],
});
