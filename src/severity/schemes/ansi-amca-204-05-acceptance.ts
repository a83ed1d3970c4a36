import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory("ANSI/AMCA 204-05", "Table 6.2");

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
  meanings: { category: "BV-1: residential, to 0.15 kW; BV-2: heating, ventilating and agricultural, to 3.7 kW; BV-3: industrial process and power generation, to 300 kW (transport to 15 kW, transit and tunnel to 75 kW, petrochemical to 37 kW); BV-4: transport above 15 kW, transit and tunnel above 75 kW, jet fans, petrochemical above 37 kW; BV-5: clean rooms, semiconductor" },
  notes: [
    "the standard does not define how the peak is taken (recorded in a public comment of 2016)",
  ],
  classes: [
    { when: { category: "BV-1", support: "rigid" }, within: { power: { to: 0.15 } }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.5 }, source: TABLE }] },
    { when: { category: "BV-1", support: "flexible" }, within: { power: { to: 0.15 } }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.6 }, source: TABLE }] },
    { when: { category: "BV-2", support: "rigid" }, within: { power: { to: 3.7 } }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.2 }, source: TABLE }] },
    { when: { category: "BV-2", support: "flexible" }, within: { power: { to: 3.7 } }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.3 }, source: TABLE }] },
    { when: { category: "BV-3", support: "rigid" }, within: { power: { to: 300 } }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.15 }, source: TABLE }] },
    { when: { category: "BV-3", support: "flexible" }, within: { power: { to: 300 } }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.2 }, source: TABLE }] },
    { when: { category: "BV-4", support: "rigid" }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.1 }, source: TABLE }] },
    { when: { category: "BV-4", support: "flexible" }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.15 }, source: TABLE }] },
    { when: { category: "BV-5", support: "rigid" }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.08 }, source: TABLE }] },
    { when: { category: "BV-5", support: "flexible" }, criteria: [{ as: "in/s pk", limits: { acceptance: 0.1 }, source: TABLE }] },
  ],
});
