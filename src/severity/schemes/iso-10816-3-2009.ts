import { builtIn } from "./built-in";
import { memory, quoted } from "./sources";

const ABB = /* @__PURE__ */ quoted(
  "ISO 10816-3:2009",
  "Table A.1",
  "https://manualshive.com/ru/manual/abb/ama-series/ama-series_manual_3508-83.html",
  "read in ABB, Manual for Induction Motors and Generators, 3BFP 000 050 R0101 REV E, p. 68, Table 7-3, which quotes ISO 10816 without edition",
);
const REITZ = /* @__PURE__ */ quoted(
  "ISO 10816-3:2009",
  "Table A.2",
  "https://manualshive.com/ru/manual/reitz/design-kxe/1435396?page=64",
  "read in Reitz, Operating Manual Fan KXE 04, p. 64, Table 8-5, which quotes DIN ISO 10816-3 without edition",
);
const A1 = /* @__PURE__ */ memory("ISO 10816-3:2009", "Table A.1");
const A2 = /* @__PURE__ */ memory("ISO 10816-3:2009", "Table A.2");
const LARGE = { power: { above: 300, to: 50000 }, shaftHeight: { from: 315 } };
const MEDIUM = { power: { above: 15, to: 300 }, shaftHeight: { from: 160, below: 315 } };

/** ISO 10816-3:2009, industrial machines above 15 kW at 120 to 15 000 r/min, in situ. */
// biome-ignore format: a row of a table is a line
export const iso10816Part3Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-10816-3-2009",
  kind: "zones",
  standard: "ISO 10816-3",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 3: Industrial machines with nominal power above 15 kW and nominal speeds between 120 r/min and 15 000 r/min when measured in situ",
  status: "withdrawn",
  statusNote: "withdrawn 2022 (from memory)",
  replacedBy: "ISO 20816-3:2022",
  scope: "industrial machines of groups 1 and 2; rotodynamic pumps are in ISO 10816-7",
  machines: ["fan", "motor", "generator", "compressor", "steam turbine", "gas turbine"],
  within: { power: { above: 15, to: 50000 }, speed: { from: 120, to: 15000 } },
  exclusions: [
    { when: { type: "gas turbine", power: { above: 3000 } }, reason: "a gas turbine above 3 MW: ISO 10816-4 or ISO 20816-4, not ISO 10816-3" },
    { when: { type: "fan", power: { below: 300 } }, reason: "a fan below 300 kW: ISO 14694, not ISO 10816-3" },
    { when: { type: "pump" }, reason: "a rotodynamic pump: ISO 10816-7, not ISO 10816-3:2009" },
  ],
  place: "housing",
  measuredOn: "bearing housings or pedestals",
  band: [10, 1000],
  slowBand: { below: 600, band: [2, 1000] },
  notes: ["displacement limits are RMS, not peak-to-peak", "measuring bands from memory"],
  classes: [
    { named: { group: "1" }, by: LARGE, when: { support: "rigid" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 2.3, "B/C": 4.5, "C/D": 7.1 }, source: ABB },
      { as: "um rms", limits: { "A/B": 29, "B/C": 57, "C/D": 90 }, source: A1 },
    ] },
    { named: { group: "1" }, by: LARGE, when: { support: "flexible" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 3.5, "B/C": 7.1, "C/D": 11 }, source: ABB },
      { as: "um rms", limits: { "A/B": 45, "B/C": 90, "C/D": 140 }, source: A1 },
    ] },
    { named: { group: "2" }, by: MEDIUM, when: { support: "rigid" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 1.4, "B/C": 2.8, "C/D": 4.5 }, source: REITZ, limitSources: { "A/B": A2 } },
      { as: "um rms", limits: { "A/B": 22, "B/C": 45, "C/D": 71 }, source: A2 },
    ] },
    { named: { group: "2" }, by: MEDIUM, when: { support: "flexible" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 2.3, "B/C": 4.5, "C/D": 7.1 }, source: REITZ, limitSources: { "A/B": A2 } },
      { as: "um rms", limits: { "A/B": 37, "B/C": 71, "C/D": 113 }, source: A2 },
    ] },
  ],
});
