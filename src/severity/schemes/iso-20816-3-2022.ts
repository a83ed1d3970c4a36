import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory(
  "ISO 20816-3:2022",
  "Annex A",
  "not checked against a printed copy: only the title page was read, and the limits of ISO 10816-3:2009 are believed unchanged",
);

/** What each group of machines is. */
// biome-ignore format: a row of a table is a line
const GROUPS = {
  "1": { named: { group: "1" }, by: { power: { above: 300 }, shaftHeight: { from: 315 } } },
  "2": { named: { group: "2" }, by: { power: { above: 15, to: 300 }, shaftHeight: { from: 160, below: 315 } } },
} as const;
const ZONES = ["A/B", "B/C", "C/D"] as const;

/** ISO 20816-3:2022, industrial machinery above 15 kW at 120 to 30 000 r/min, measured on the housing. */
// biome-ignore format: a row of a table is a line
export const iso20816Part3Of2022 = /* @__PURE__ */ builtIn({
  id: "iso-20816-3-2022",
  kind: "zones",
  standard: "ISO 20816-3",
  edition: "2022",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 3: Industrial machinery with a power rating above 15 kW and operating speeds between 120 r/min and 30 000 r/min",
  status: "current",
  statusNote: "from memory, in place of ISO 10816-3:2009 and ISO 7919-3:2009; title page read",
  scope: "industrial machinery of groups 1 and 2, on the housing; rotodynamic pumps are in ISO 10816-7; for screw compressors and twin-shaft blowers a maker calls ISO 10816 inadmissible (Aerzen, TN01151 B, 2006): see VDI 3836",
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
  classes: () => flatTable({
    machine: ["group", "support"],
    means: { group: GROUPS },
    columns: [{ as: "mm/s rms", limits: ZONES, source: ANNEX }, { as: "um rms", limits: ZONES, source: ANNEX }],
    rows: [
      //                 mm/s RMS         um RMS
      // group support   A/B  B/C  C/D    A/B B/C C/D
      ["1", "rigid",    2.3, 4.5, 7.1,   29, 57, 90],
      ["1", "flexible", 3.5, 7.1, 11,    45, 90, 140],
      ["2", "rigid",    1.4, 2.8, 4.5,   22, 45, 71],
      ["2", "flexible", 2.3, 4.5, 7.1,   37, 71, 113],
    ],
  }),
});
