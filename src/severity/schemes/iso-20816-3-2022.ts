import { builtIn } from "./built-in";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory(
  "ISO 20816-3:2022",
  "Annex A",
  "not checked against a printed copy: only the title page was read, and the limits of ISO 10816-3:2009 are believed unchanged",
);
const LARGE = { power: { above: 300 }, shaftHeight: { from: 315 } };
const MEDIUM = { power: { above: 15, to: 300 }, shaftHeight: { from: 160, below: 315 } };

/** ISO 20816-3:2022, industrial machinery above 15 kW at 120 to 30 000 r/min, measured on the housing. */
// biome-ignore format: a row of a table is a line
export const iso20816Part3Of2022 = /* @__PURE__ */ builtIn({
  id: "iso-20816-3-2022",
  kind: "zones",
  standard: "ISO 20816-3",
  edition: "2022",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 3: Industrial machinery with a power rating above 15 kW and operating speeds between 120 r/min and 30 000 r/min",
  status: "current",
  statusNote: "current and replacing ISO 10816-3:2009 and ISO 7919-3:2009 (from memory); title page read",
  scope: "industrial machinery of groups 1 and 2, on the housing; rotodynamic pumps are in ISO 10816-7",
  machines: ["fan", "motor", "generator", "compressor", "steam turbine", "gas turbine"],
  within: { power: { above: 15 }, speed: { from: 120, to: 30000 } },
  exclusions: [
    { when: { type: "gas turbine", power: { above: 3000 } }, reason: "a gas turbine above 3 MW: ISO 10816-4 or ISO 20816-4, not ISO 20816-3" },
    { when: { type: "fan", power: { below: 300 } }, reason: "a fan below 300 kW: ISO 14694, not ISO 20816-3" },
    { when: { type: "pump" }, reason: "a rotodynamic pump: ISO 10816-7, not ISO 20816-3" },
    { when: { type: "steam turbine", power: { above: 40000 } }, reason: "a steam turbine above 40 MW: ISO 20816-2, not ISO 20816-3" },
  ],
  place: "housing",
  measuredOn: "bearing housings or pedestals",
  band: [10, 1000],
  slowBand: { below: 600, band: [2, 1000] },
  notes: ["displacement limits are RMS, not peak-to-peak", "measuring bands from memory"],
  classes: [
    { named: { group: "1" }, by: LARGE, when: { support: "rigid" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 2.3, "B/C": 4.5, "C/D": 7.1 }, source: ANNEX },
      { as: "um rms", limits: { "A/B": 29, "B/C": 57, "C/D": 90 }, source: ANNEX },
    ] },
    { named: { group: "1" }, by: LARGE, when: { support: "flexible" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 3.5, "B/C": 7.1, "C/D": 11 }, source: ANNEX },
      { as: "um rms", limits: { "A/B": 45, "B/C": 90, "C/D": 140 }, source: ANNEX },
    ] },
    { named: { group: "2" }, by: MEDIUM, when: { support: "rigid" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 1.4, "B/C": 2.8, "C/D": 4.5 }, source: ANNEX },
      { as: "um rms", limits: { "A/B": 22, "B/C": 45, "C/D": 71 }, source: ANNEX },
    ] },
    { named: { group: "2" }, by: MEDIUM, when: { support: "flexible" }, criteria: [
      { as: "mm/s rms", limits: { "A/B": 2.3, "B/C": 4.5, "C/D": 7.1 }, source: ANNEX },
      { as: "um rms", limits: { "A/B": 37, "B/C": 71, "C/D": 113 }, source: ANNEX },
    ] },
  ],
});
