import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory("ISO 14694:2003", "Table 4");

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
  meanings: { category: "BV-1: residential, to 0.15 kW; BV-2: heating, ventilating and agricultural, to 3.7 kW; BV-3: industrial process and power generation, to 300 kW (transport to 15 kW, transit and tunnel to 75 kW, petrochemical to 37 kW); BV-4: transport above 15 kW, transit and tunnel above 75 kW, jet fans, petrochemical above 37 kW; BV-5: clean rooms, semiconductor" },
  notes: [
    "peak and RMS columns are both printed and not in ratio 1.414: the column of the reading's detector is used",
    "measuring band from memory",
  ],
  classes: [
    { when: { category: "BV-1", support: "rigid" }, within: { power: { to: 0.15 } }, criteria: [{ as: "mm/s pk", limits: { acceptance: 12.7 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 9 }, source: TABLE }] },
    { when: { category: "BV-1", support: "flexible" }, within: { power: { to: 0.15 } }, criteria: [{ as: "mm/s pk", limits: { acceptance: 15.2 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 11.2 }, source: TABLE }] },
    { when: { category: "BV-2", support: "rigid" }, within: { power: { to: 3.7 } }, criteria: [{ as: "mm/s pk", limits: { acceptance: 5.1 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 3.5 }, source: TABLE }] },
    { when: { category: "BV-2", support: "flexible" }, within: { power: { to: 3.7 } }, criteria: [{ as: "mm/s pk", limits: { acceptance: 7.6 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 5.6 }, source: TABLE }] },
    { when: { category: "BV-3", support: "rigid" }, within: { power: { to: 300 } }, criteria: [{ as: "mm/s pk", limits: { acceptance: 3.8 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 2.8 }, source: TABLE }] },
    { when: { category: "BV-3", support: "flexible" }, within: { power: { to: 300 } }, criteria: [{ as: "mm/s pk", limits: { acceptance: 5.1 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 3.5 }, source: TABLE }] },
    { when: { category: "BV-4", support: "rigid" }, criteria: [{ as: "mm/s pk", limits: { acceptance: 2.5 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }] },
    { when: { category: "BV-4", support: "flexible" }, criteria: [{ as: "mm/s pk", limits: { acceptance: 3.8 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 2.8 }, source: TABLE }] },
    { when: { category: "BV-5", support: "rigid" }, criteria: [{ as: "mm/s pk", limits: { acceptance: 2 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.4 }, source: TABLE }] },
    { when: { category: "BV-5", support: "flexible" }, criteria: [{ as: "mm/s pk", limits: { acceptance: 2.5 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }] },
  ],
});
