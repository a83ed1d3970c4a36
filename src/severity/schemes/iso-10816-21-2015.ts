import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 10816-21:2015",
  "Table A.1",
  "not checked against a printed copy; numbers as VDI 3834-1",
);
const ENDS = ["B/C", "C/D"] as const;
const LOW = { "m/s2 rms": [0.1, 10], "mm/s rms": [0.1, 10] } as const;
const HIGH = { "m/s2 rms": [10, 2000], "mm/s rms": [10, 1000] } as const;
const GENERATOR = { "m/s2 rms": [10, 5000], "mm/s rms": [10, 1000] } as const;

/** ISO 10816-21:2015, horizontal axis wind turbines with gearbox, by component and band. */
// biome-ignore format: a row of a table is a line
export const iso10816Part21Of2015 = /* @__PURE__ */ builtIn({
  id: "iso-10816-21-2015",
  kind: "zones",
  standard: "ISO 10816-21",
  edition: "2015",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 21: Horizontal axis wind turbines with gearbox",
  status: "withdrawn",
  statusNote: "listed as superseded in a shop's record; the project record (genorma) has it to be revised since 13 May 2022; the date of its successor is not known; scope read in the DIN catalogue record",
  replacedBy: "ISO 20816-21",
  scope: "onshore geared wind turbines above 200 kW; informative boundaries from the data of about 1 000 turbines to 3 MW",
  machines: ["wind turbine"],
  within: { power: { above: 200, to: 3000 } },
  place: "housing",
  measuredOn: "nacelle and tower, rotor bearing, gearbox or generator",
  band: null,
  ask: ["part", "band"],
  meanings: { band: "low (0.1 to 10 Hz) or high (from 10 Hz)" },
  notes: ["zones A and B are not parted", "energy-averaged RMS: low band (0.1 to 10 Hz) over 10 min, others over 1 min"],
  classes: () => flatTable({
    machine: ["part", "band"],
    columns: [{ as: "m/s2 rms", limits: ENDS, source: TABLE }, { as: "mm/s rms", limits: ENDS, source: TABLE }],
    rows: [
      //                              m/s2 RMS      mm/s RMS
      // part                band     B/C   C/D     B/C   C/D
      ["nacelle and tower",  null,    0.3,  0.5,    60,   100,  { within: { band: "low" }, bands: LOW }],
      ["rotor bearing",      "low",   0.3,  0.5,    null, null, { bands: LOW }],
      ["rotor bearing",      "high",  null, null,   2,    3.2,  { bands: HIGH }],
      ["gearbox",            "low",   0.3,  0.5,    null, null, { bands: LOW }],
      ["gearbox",            "high",  7.5,  12,     3.5,  5.6,  { bands: HIGH }],
      ["generator",          null,    10,   16,     6,    10,   { within: { band: "high" }, bands: GENERATOR }],
    ],
  }),
});
