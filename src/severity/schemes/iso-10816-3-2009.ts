import { builtIn } from "./built-in";
import { courseHandbook } from "./course-handbook";
import { flatTable } from "./flat-table";

const EDITION = "BSI/ISO 10816-3, 2009";
const A1 = /* @__PURE__ */ courseHandbook({
  title: "ISO 10816-3:2009",
  where: "Table A.1",
  section: "4.4",
  edition: EDITION,
  note: "a motor maker's manual has the same velocities without edition, counted for that of 1998",
});
const A2 = /* @__PURE__ */ courseHandbook({
  title: "ISO 10816-3:2009",
  where: "Table A.2",
  section: "4.4",
  edition: EDITION,
  note: "a fan maker's manual has the same velocities for B/C and C/D without edition, counted for that of 1998",
});

/** What each group of machines is. */
// biome-ignore format: a row of a table is a line
const GROUPS = {
  "1": { named: { group: "1" }, by: { power: { above: 300, to: 50000 }, shaftHeight: { from: 315 } } },
  "2": { named: { group: "2" }, by: { power: { above: 15, to: 300 }, shaftHeight: { from: 160, below: 315 } } },
} as const;
const ZONES = ["A/B", "B/C", "C/D"] as const;

/** ISO 10816-3:2009, industrial machines above 15 kW at 120 to 15 000 r/min, in situ. */
// biome-ignore format: a row of a table is a line
export const iso10816Part3Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-10816-3-2009",
  kind: "zones",
  standard: "ISO 10816-3",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 3: Industrial machines with nominal power above 15 kW and nominal speeds between 120 r/min and 15 000 r/min when measured in situ",
  status: "withdrawn",
  statusNote: "in 2022 (from memory)",
  replacedBy: "ISO 20816-3:2022",
  scope: "industrial machines of groups 1 and 2; rotodynamic pumps are in ISO 10816-7; for screw compressors and twin-shaft blowers a maker calls ISO 10816 inadmissible (Aerzen, TN01151 B, 2006): see VDI 3836",
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
  classes: () => flatTable({
    machine: ["group", "support"],
    means: { group: GROUPS },
    columns: [{ as: "mm/s rms", limits: ZONES, source: A1 }, { as: "um rms", limits: ZONES, source: A1 }],
    rows: [
      //                 mm/s RMS         um RMS
      // group support   A/B  B/C  C/D    A/B B/C C/D
      ["1", "rigid",    2.3, 4.5, 7.1,   29, 57, 90],
      ["1", "flexible", 3.5, 7.1, 11,    45, 90, 140],
      ["2", "rigid",    1.4, 2.8, 4.5,   22, 45, 71, { source: A2 }],
      ["2", "flexible", 2.3, 4.5, 7.1,   37, 71, 113, { source: A2 }],
    ],
  }),
});
