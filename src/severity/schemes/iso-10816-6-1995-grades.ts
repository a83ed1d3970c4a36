import { builtIn } from "./built-in";
import { flatGrades } from "./flat-table";
import { GENERATOR } from "./iso-10816-6-1995";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 10816-6:1995",
  "Table 1",
  "not checked against a printed copy; each triple agrees with d = v/(2 pi 10 Hz) and a = v 2 pi 250 Hz within 0.6 %",
);

/** ISO 10816-6:1995, vibration severity grades of reciprocating machines. */
// biome-ignore format: a row of a table is a line
export const iso10816Part6Grades = /* @__PURE__ */ builtIn({
  id: "iso-10816-6-1995-grades",
  kind: "grades",
  standard: "ISO 10816-6",
  edition: "1995",
  title: "Reciprocating machines with power ratings above 100 kW: vibration severity grades",
  status: "current",
  statusNote: "in force, with amendment 1 of 2015 (from memory); the catalogue record of UNI ISO 10816-6:2015 was read",
  scope: "vibration severity grades of reciprocating machines above 100 kW; a grade is no verdict without the classification number",
  machines: ["reciprocating engine", "reciprocating compressor"],
  within: { power: { above: 100 } },
  exclusions: [GENERATOR],
  place: "housing",
  measuredOn: "the main structure of the machine, not bearing housings",
  band: [2, 1000],
  grades: ["grade 1.1", "grade 1.8", "grade 2.8", "grade 4.5", "grade 7.1", "grade 11", "grade 18", "grade 28", "grade 45", "grade 71", "grade 112", "grade 180"],
  notes: ["overall RMS displacement, velocity and acceleration are all to be measured; the grade is the highest of the three"],
  classes: () => flatGrades({
    columns: [{ as: "um rms", source: TABLE }, { as: "mm/s rms", source: TABLE }, { as: "m/s2 rms", source: TABLE }],
    rows: [
      // upper ends    um RMS  mm/s RMS  m/s2 RMS
      ["grade 1.1",    17.8,   1.12,     1.76],
      ["grade 1.8",    28.3,   1.78,     2.79],
      ["grade 2.8",    44.8,   2.82,     4.42],
      ["grade 4.5",    71,     4.46,     7.01],
      ["grade 7.1",    113,    7.07,     11.1],
      ["grade 11",     178,    11.2,     17.6],
      ["grade 18",     283,    17.8,     27.9],
      ["grade 28",     448,    28.2,     44.2],
      ["grade 45",     710,    44.6,     70.1],
      ["grade 71",     1125,   70.7,     111],
      ["grade 112",    1784,   112,      176],
    ],
  }),
});
