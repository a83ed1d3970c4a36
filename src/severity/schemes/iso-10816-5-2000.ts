import { builtIn } from "./built-in";
import { memory, quoted } from "./sources";

const PAGE = "https://www.scribd.com/document/394074221/ISO-10816-5-2000-21";
const HOW =
  "read on a scanned page of ISO 10816-5:2000(E); the micro sign of the displacement column is lost in the scan";
const A1 = /* @__PURE__ */ memory("ISO 10816-5:2000", "Table A.1");
const A2 = /* @__PURE__ */ quoted("ISO 10816-5:2000", "Table A.2", PAGE, HOW);
const A3 = /* @__PURE__ */ quoted("ISO 10816-5:2000", "Table A.3", PAGE, HOW);
const A4 = /* @__PURE__ */ quoted("ISO 10816-5:2000", "Table A.4", PAGE, HOW);

/** ISO 10816-5:2000, machine sets in hydraulic power generating and pumping plants. */
// biome-ignore format: a row of a table is a line
export const iso10816Part5Of2000 = /* @__PURE__ */ builtIn({
  id: "iso-10816-5-2000",
  kind: "zones",
  standard: "ISO 10816-5",
  edition: "2000",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 5: Machine sets in hydraulic power generating and pumping plants",
  status: "withdrawn",
  statusNote: "replaced by a different, statistical scheme (from memory)",
  replacedBy: "ISO 20816-5:2018",
  scope: "hydro sets and large pumps above 1 MW at 60 to 1800 r/min (from memory), four groups by orientation and bracing of the bearings",
  machines: ["hydro set"],
  within: { power: { above: 1000 }, speed: { from: 60, to: 1800 } },
  place: "housing",
  measuredOn: "main bearings",
  band: [2, 1000],
  meanings: {
    group: "1: horizontal, pedestal or end-shield bearings on rigid foundation, usually above 300 r/min; 2: horizontal, bearing housings braced only against the hydraulic machine casing, usually below 300 r/min; 3: vertical, all bearing housings braced against foundation, usually 60 to 1800 r/min; 4: vertical, lower bearing braced against foundation, upper against the generator stator only, usually 60 to 1000 r/min",
    part: "location 1 of the standard's figure, or another main bearing",
  },
  notes: [
    "displacement limits are peak-to-peak, from a quarter of the rotation frequency to 3 times blade passing (from memory); velocity 2 to 1000 Hz (from memory)",
  ],
  classes: [
    { when: { group: "1" }, criteria: [
      { as: "um pp", limits: { "A/B": 30, "B/C": 50, "C/D": 80 }, source: A1 },
      { as: "mm/s rms", limits: { "A/B": 1.6, "B/C": 2.5, "C/D": 4 }, source: A1 },
    ] },
    { when: { group: "2" }, note: "the standard gives no displacement limits for group 2", criteria: [
      { as: "mm/s rms", limits: { "A/B": 2.5, "B/C": 4, "C/D": 6.4 }, source: A2 },
    ] },
    { when: { group: "3" }, criteria: [
      { as: "um pp", limits: { "A/B": 30, "B/C": 50, "C/D": 80 }, source: A3 },
      { as: "mm/s rms", limits: { "A/B": 1.6, "B/C": 2.5, "C/D": 4 }, source: A3 },
    ] },
    { when: { group: "4", part: "location 1" }, criteria: [
      { as: "um pp", limits: { "A/B": 65, "B/C": 100, "C/D": 160 }, source: A4 },
      { as: "mm/s rms", limits: { "A/B": 2.5, "B/C": 4, "C/D": 6.4 }, source: A4 },
    ] },
    { when: { group: "4", part: "other main bearings" }, criteria: [
      { as: "um pp", limits: { "A/B": 30, "B/C": 50, "C/D": 80 }, source: A4 },
      { as: "mm/s rms", limits: { "A/B": 1.6, "B/C": 2.5, "C/D": 4 }, source: A4 },
    ] },
  ],
});
