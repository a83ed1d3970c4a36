import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory, quoted } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 10816-6:1995",
  "Table A.1",
  "not checked against a printed copy; which class takes which grade is borne out by class 4 alone, and the others follow by the step",
);
const MAKER = /* @__PURE__ */ quoted(
  "ISO 10816-6:1995",
  "Annex A",
  "https://easymanua.ls/sabroe/sab-233-s/manual?p=101",
  "read in Johnson Controls Denmark, Sabroe engineering manual SAB 193-233-283 S, 008831 en 2022.02, p. 101, 6.15.1: Annex A, group 4, AB, at most 17.8 mm/s",
);
/** The standard judges the main structure of the engine. */
export const GENERATOR = {
  when: { part: "generator" },
  reason: "the generator of a set: ISO 10816-6 judges the engine's structure; see lr-generating-sets",
} as const;
const ENDS = ["B/C", "C/D"] as const;

/** ISO 10816-6:1995, reciprocating machines above 100 kW, classification numbers 1 to 7. */
// biome-ignore format: a row of a table is a line
export const iso10816Part6Of1995 = /* @__PURE__ */ builtIn({
  id: "iso-10816-6-1995",
  kind: "zones",
  standard: "ISO 10816-6",
  edition: "1995",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 6: Reciprocating machines with power ratings above 100 kW",
  status: "current",
  statusNote: "in force, with amendment 1 of 2015 (from memory); the catalogue record of UNI ISO 10816-6:2015 was read",
  scope: "reciprocating machines above 100 kW, rigid or resilient mounting; the standard does not fix which machine takes which class number",
  machines: ["reciprocating engine", "reciprocating compressor"],
  within: { power: { above: 100 } },
  exclusions: [{ when: { type: "reciprocating compressor" }, reason: "a reciprocating compressor: ISO 20816-8, not ISO 10816-6" }, GENERATOR],
  place: "housing",
  measuredOn: "the main structure of the machine, not bearing housings",
  band: [2, 1000],
  meanings: { class: "the machine vibration classification number, agreed with the maker" },
  notes: [
    "zones A and B are not parted",
    "overall RMS displacement, velocity and acceleration are all to be measured; the worst governs (below 10 Hz displacement, 10 to 250 Hz velocity, above acceleration)",
  ],
  classes: () => flatTable({
    machine: ["class"],
    columns: [
      { as: "um rms", limits: ENDS, source: TABLE },
      { as: "mm/s rms", limits: ENDS, source: TABLE },
      { as: "m/s2 rms", limits: ENDS, source: TABLE },
    ],
    rows: [
      //      um RMS        mm/s RMS      m/s2 RMS
      // class B/C   C/D     B/C   C/D     B/C   C/D
      ["1",   71,   113,    4.46, 7.07,   7.01, 11.1],
      ["2",   113,  178,    7.07, 11.2,   11.1, 17.6],
      ["3",   178,  283,    11.2, 17.8,   17.6, 27.9],
      ["4",   283,  448,    17.8, 28.2,   27.9, 44.2, { limitSources: { "mm/s rms": { "B/C": MAKER } } }],
      ["5",   448,  710,    28.2, 44.6,   44.2, 70.1],
      ["6",   710,  1125,   44.6, 70.7,   70.1, 111],
      ["7",   1125, 1784,   70.7, 112,    111,  176],
    ],
  }),
});
