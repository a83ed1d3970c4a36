import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 10816-21:2015",
  "Table A.1",
  "not checked against a printed copy; numbers as VDI 3834-1",
);

/** ISO 10816-21:2015, horizontal axis wind turbines with gearbox, by component and band. */
// biome-ignore format: a row of a table is a line
export const iso10816Part21Of2015 = /* @__PURE__ */ builtIn({
  id: "iso-10816-21-2015",
  kind: "zones",
  standard: "ISO 10816-21",
  edition: "2015",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 21: Horizontal axis wind turbines with gearbox",
  status: "withdrawn",
  statusNote: "listed as superseded; the date is not confirmed",
  replacedBy: "ISO 20816-21",
  scope: "onshore geared wind turbines of 200 kW to 3 MW, informative boundaries",
  machines: ["wind turbine"],
  within: { power: { above: 200, to: 3000 } },
  place: "housing",
  measuredOn: "nacelle and tower, rotor bearing, gearbox or generator",
  band: null,
  ask: ["part", "band"],
  meanings: { band: "low (0.1 to 10 Hz) or high (from 10 Hz)" },
  notes: ["zones A and B are not parted", "energy-averaged RMS: low band (0.1 to 10 Hz) over 10 min, others over 1 min"],
  classes: [
    { when: { part: "nacelle and tower" }, within: { band: "low" }, criteria: [
      { as: "m/s2 rms", limits: { "B/C": 0.3, "C/D": 0.5 }, source: TABLE, band: [0.1, 10] },
      { as: "mm/s rms", limits: { "B/C": 60, "C/D": 100 }, source: TABLE, band: [0.1, 10] },
    ] },
    { when: { part: "rotor bearing", band: "low" }, criteria: [{ as: "m/s2 rms", limits: { "B/C": 0.3, "C/D": 0.5 }, source: TABLE, band: [0.1, 10] }] },
    { when: { part: "rotor bearing", band: "high" }, criteria: [{ as: "mm/s rms", limits: { "B/C": 2, "C/D": 3.2 }, source: TABLE, band: [10, 1000] }] },
    { when: { part: "gearbox", band: "low" }, criteria: [{ as: "m/s2 rms", limits: { "B/C": 0.3, "C/D": 0.5 }, source: TABLE, band: [0.1, 10] }] },
    { when: { part: "gearbox", band: "high" }, criteria: [
      { as: "m/s2 rms", limits: { "B/C": 7.5, "C/D": 12 }, source: TABLE, band: [10, 2000] },
      { as: "mm/s rms", limits: { "B/C": 3.5, "C/D": 5.6 }, source: TABLE, band: [10, 1000] },
    ] },
    { when: { part: "generator" }, within: { band: "high" }, criteria: [
      { as: "m/s2 rms", limits: { "B/C": 10, "C/D": 16 }, source: TABLE, band: [10, 5000] },
      { as: "mm/s rms", limits: { "B/C": 6, "C/D": 10 }, source: TABLE, band: [10, 1000] },
    ] },
  ],
});
