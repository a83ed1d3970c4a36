import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory, quoted } from "./sources";

const ABB = /* @__PURE__ */ quoted(
  "ISO 10816-3:1998",
  "Table A.1",
  "https://manualshive.com/ru/manual/abb/ama-series/ama-series_manual_3508-83.html",
  "read in ABB, Manual for Induction Motors and Generators, 3BFP 000 050 R0101 REV E, p. 68, Table 7-3, which quotes ISO 10816 without edition; counted for 1998 alone, since this revision is believed older than the edition of 2009 (from memory); the same B/C and C/D in the fan maker's manual",
);
const REITZ = /* @__PURE__ */ quoted(
  "ISO 10816-3:1998",
  "Table A.2",
  "https://manualshive.com/ru/manual/reitz/design-kxe/1435396?page=64",
  "read in Reitz, Operating Manual Fan KXE 04, p. 64, Table 8-5, which quotes DIN ISO 10816-3 without edition; counted for 1998 alone, since the edition of 2009 has a source that names it",
);
const SAME = "not checked against a printed copy; the same limits were read for the edition of 2009 only";
const A1 = /* @__PURE__ */ memory("ISO 10816-3:1998", "Table A.1", SAME);
const A2 = /* @__PURE__ */ memory("ISO 10816-3:1998", "Table A.2", SAME);
const A3 = /* @__PURE__ */ memory("ISO 10816-3:1998", "Table A.3");
const A4 = /* @__PURE__ */ memory("ISO 10816-3:1998", "Table A.4");
const OTHERS = ["fan", "motor", "generator", "compressor", "steam turbine", "gas turbine"] as const;

/** What each group of machines is. */
// biome-ignore format: a row of a table is a line
const GROUPS = {
  "1": { named: { group: "1" }, by: { power: { above: 300, to: 50000 }, shaftHeight: { from: 315 }, type: OTHERS } },
  "2": { named: { group: "2" }, by: { power: { above: 15, to: 300 }, shaftHeight: { from: 160, below: 315 }, type: OTHERS } },
  "3": { when: { group: "3" }, within: { type: "pump" }, note: "group 3: pumps with multivane impeller and separate driver" },
  "4": { when: { group: "4" }, within: { type: "pump" }, note: "group 4: pumps with multivane impeller and integrated driver" },
} as const;

const GROUP_2 = { sources: { "mm/s rms": REITZ, "um rms": A2 }, limitSources: { "mm/s rms": { "A/B": A2 } } };
const ZONES = ["A/B", "B/C", "C/D"] as const;

/** ISO 10816-3:1998, industrial machines above 15 kW, with pumps in groups 3 and 4. */
// biome-ignore format: a row of a table is a line
export const iso10816Part3Of1998 = /* @__PURE__ */ builtIn({
  id: "iso-10816-3-1998",
  kind: "zones",
  standard: "ISO 10816-3",
  edition: "1998",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 3: Industrial machines with nominal power above 15 kW and nominal speeds between 120 r/min and 15 000 r/min when measured in situ",
  status: "withdrawn",
  statusNote: "on 28 January 2009 (read in the iTeh catalogue record); IS 14817-3:2004 is identical",
  replacedBy: "ISO 10816-3:2009",
  scope: "industrial machines in four groups: 1 large, 2 medium, 3 pumps with separate driver, 4 pumps with integrated driver; for screw compressors and twin-shaft blowers a maker calls ISO 10816 inadmissible (Aerzen, TN01151 B, 2006): see VDI 3836",
  machines: ["pump", "fan", "motor", "generator", "compressor", "steam turbine", "gas turbine"],
  within: { power: { above: 15, to: 50000 }, speed: { from: 120, to: 15000 } },
  exclusions: [
    { when: { type: "fan", power: { below: 300 } }, reason: "a fan below 300 kW: ISO 14694, not ISO 10816-3" },
    { when: { type: "gas turbine", power: { above: 3000 } }, reason: "a gas turbine above 3 MW: ISO 10816-4 or ISO 20816-4, not ISO 10816-3" },
  ],
  place: "housing",
  measuredOn: "bearing housings or pedestals",
  band: [10, 1000],
  meanings: { group: "pumps: 3 with separate driver, 4 with integrated driver; other machines: 1 large, 2 medium" },
  slowBand: { below: 600, band: [2, 1000] },
  notes: ["displacement limits are RMS, not peak-to-peak", "measuring bands from memory"],
  classes: () => flatTable({
    machine: ["group", "support"],
    means: { group: GROUPS },
    columns: [{ as: "mm/s rms", limits: ZONES, source: ABB }, { as: "um rms", limits: ZONES, source: A1 }],
    rows: [
      //                 mm/s RMS         um RMS
      // group support   A/B  B/C  C/D    A/B B/C C/D
      ["1", "rigid",    2.3, 4.5, 7.1,   29, 57, 90],
      ["1", "flexible", 3.5, 7.1, 11,    45, 90, 140],
      ["2", "rigid",    1.4, 2.8, 4.5,   22, 45, 71,   GROUP_2],
      ["2", "flexible", 2.3, 4.5, 7.1,   37, 71, 113,  GROUP_2],
      ["3", "rigid",    2.3, 4.5, 7.1,   18, 36, 56,   { source: A3 }],
      ["3", "flexible", 3.5, 7.1, 11,    28, 56, 90,   { source: A3 }],
      ["4", "rigid",    1.4, 2.8, 4.5,   11, 22, 36,   { source: A4 }],
      ["4", "flexible", 2.3, 4.5, 7.1,   18, 36, 56,   { source: A4 }],
    ],
  }),
});
