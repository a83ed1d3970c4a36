import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 2372:1974",
  "Table 2",
  "not checked against a printed copy; the ladder 0.28 to 45 mm/s and the order of its cells were read in a secondary table, the class of each cell inferred",
);

/** ISO 2372:1974, four example classes of machine, 600 to 12 000 r/min. */
// biome-ignore format: a row of a table is a line
export const iso2372Of1974 = /* @__PURE__ */ builtIn({
  id: "iso-2372-1974",
  kind: "zones",
  standard: "ISO 2372",
  edition: "1974",
  title: "Mechanical vibration of machines with operating speeds from 10 to 200 rev/s - Basis for specifying evaluation standards",
  status: "withdrawn",
  statusNote: "withdrawn 13 December 1995 (read in the iTeh catalogue record and the foreword of ISO 10816-1:1995)",
  replacedBy: "ISO 10816-1:1995",
  scope: "four example classes of machine, 600 to 12 000 r/min, judged by broad-band RMS velocity on bearings or mounting points",
  machines: ["pump", "fan", "motor", "generator", "compressor", "gear drive", "steam turbine", "gas turbine"],
  within: { speed: { from: 600, to: 12000 } },
  place: "housing",
  measuredOn: "bearings or mounting points, the largest of the measured directions",
  band: [10, 1000],
  notes: ["VDI 2056:1964 groups K, M, G, T and BS 4675-1:1976 carry the same boundaries"],
  classes: [
    { named: { class: "I" }, by: { power: { to: 15 } }, criteria: [{ as: "mm/s rms", limits: { "A/B": 0.71, "B/C": 1.8, "C/D": 4.5 }, source: TABLE }] },
    { named: { class: "II" }, by: { power: { above: 15, to: 300 } }, note: "Class II is 15 to 75 kW, and to 300 kW on special foundations; between 75 and 300 kW it is taken here because its limits are the lower ones, unless the class is named", criteria: [{ as: "mm/s rms", limits: { "A/B": 1.12, "B/C": 2.8, "C/D": 7.1 }, source: TABLE }] },
    { named: { class: "III" }, by: { power: { above: 300 }, support: "rigid" }, note: "Class III is large machines on rigid, heavy foundations, without a power; above 300 kW is where Class II ends", criteria: [{ as: "mm/s rms", limits: { "A/B": 1.8, "B/C": 4.5, "C/D": 11.2 }, source: TABLE }] },
    { named: { class: "IV" }, by: { power: { above: 300 }, support: "flexible" }, note: "Class IV is large machines on relatively soft foundations, such as turbogenerators and gas turbines above 10 MW; above 300 kW is where Class II ends", criteria: [{ as: "mm/s rms", limits: { "A/B": 2.8, "B/C": 7.1, "C/D": 18 }, source: TABLE }] },
  ],
});
