import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 10816-6:1995",
  "Table A.1",
  "not checked against a printed copy; which class number takes which grade is the weakest part",
);

/** ISO 10816-6:1995, reciprocating machines above 100 kW, classification numbers 1 to 7. */
// biome-ignore format: a row of a table is a line
export const iso10816Part6Of1995 = /* @__PURE__ */ builtIn({
  id: "iso-10816-6-1995",
  kind: "zones",
  standard: "ISO 10816-6",
  edition: "1995",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 6: Reciprocating machines with power ratings above 100 kW",
  status: "current",
  statusNote: "in force (from memory; amendment 1 of 2015), catalogue record read",
  scope: "reciprocating machines above 100 kW, rigid or resilient mounting; the standard does not fix which machine takes which class number",
  machines: ["reciprocating engine", "reciprocating compressor"],
  within: { power: { above: 100 } },
  exclusions: [{ when: { type: "reciprocating compressor" }, reason: "a reciprocating compressor: ISO 20816-8, not ISO 10816-6" }],
  place: "housing",
  measuredOn: "the main structure of the machine, not bearing housings",
  band: [2, 1000],
  meanings: { class: "the machine vibration classification number, agreed with the maker" },
  notes: [
    "zones A and B are not parted",
    "overall RMS displacement, velocity and acceleration are all to be measured; the worst governs (below 10 Hz displacement, 10 to 250 Hz velocity, above acceleration)",
  ],
  classes: [
    { when: { class: "1" }, criteria: [
      { as: "um rms", limits: { "B/C": 71, "C/D": 113 }, source: TABLE },
      { as: "mm/s rms", limits: { "B/C": 4.46, "C/D": 7.07 }, source: TABLE },
      { as: "m/s2 rms", limits: { "B/C": 7.01, "C/D": 11.1 }, source: TABLE },
    ] },
    { when: { class: "2" }, criteria: [
      { as: "um rms", limits: { "B/C": 113, "C/D": 178 }, source: TABLE },
      { as: "mm/s rms", limits: { "B/C": 7.07, "C/D": 11.2 }, source: TABLE },
      { as: "m/s2 rms", limits: { "B/C": 11.1, "C/D": 17.6 }, source: TABLE },
    ] },
    { when: { class: "3" }, criteria: [
      { as: "um rms", limits: { "B/C": 178, "C/D": 283 }, source: TABLE },
      { as: "mm/s rms", limits: { "B/C": 11.2, "C/D": 17.8 }, source: TABLE },
      { as: "m/s2 rms", limits: { "B/C": 17.6, "C/D": 27.9 }, source: TABLE },
    ] },
    { when: { class: "4" }, criteria: [
      { as: "um rms", limits: { "B/C": 283, "C/D": 448 }, source: TABLE },
      { as: "mm/s rms", limits: { "B/C": 17.8, "C/D": 28.2 }, source: TABLE },
      { as: "m/s2 rms", limits: { "B/C": 27.9, "C/D": 44.2 }, source: TABLE },
    ] },
    { when: { class: "5" }, criteria: [
      { as: "um rms", limits: { "B/C": 448, "C/D": 710 }, source: TABLE },
      { as: "mm/s rms", limits: { "B/C": 28.2, "C/D": 44.6 }, source: TABLE },
      { as: "m/s2 rms", limits: { "B/C": 44.2, "C/D": 70.1 }, source: TABLE },
    ] },
    { when: { class: "6" }, criteria: [
      { as: "um rms", limits: { "B/C": 710, "C/D": 1125 }, source: TABLE },
      { as: "mm/s rms", limits: { "B/C": 44.6, "C/D": 70.7 }, source: TABLE },
      { as: "m/s2 rms", limits: { "B/C": 70.1, "C/D": 111 }, source: TABLE },
    ] },
    { when: { class: "7" }, criteria: [
      { as: "um rms", limits: { "B/C": 1125, "C/D": 1784 }, source: TABLE },
      { as: "mm/s rms", limits: { "B/C": 70.7, "C/D": 112 }, source: TABLE },
      { as: "m/s2 rms", limits: { "B/C": 111, "C/D": 176 }, source: TABLE },
    ] },
  ],
});
