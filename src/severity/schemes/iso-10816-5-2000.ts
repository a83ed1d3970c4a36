import { builtIn } from "./built-in";
import { courseHandbook } from "./course-handbook";
import { flatTable } from "./flat-table";
import { printed } from "./sources";

const PAGE = "https://www.scribd.com/document/394074221/ISO-10816-5-2000-21";
const HOW =
  "read on a scanned page of ISO 10816-5:2000(E) with Tables A.2 to A.4; the micro sign of its displacements is lost in the scan, and the course handbook has micrometres peak-to-peak";
const A1 = /* @__PURE__ */ courseHandbook({
  title: "ISO 10816-5:2000",
  where: "Table A.1",
  section: "4.6",
  edition: "BSI/ISO 10816-5, 2001, the British print of this edition",
});
const A2 = /* @__PURE__ */ printed("ISO 10816-5:2000", "Table A.2", PAGE, HOW);
const A3 = /* @__PURE__ */ printed("ISO 10816-5:2000", "Table A.3", PAGE, HOW);
const A4 = /* @__PURE__ */ printed("ISO 10816-5:2000", "Table A.4", PAGE, HOW);
const ZONES = ["A/B", "B/C", "C/D"] as const;

/** ISO 10816-5:2000, machine sets in hydraulic power generating and pumping plants. */
// biome-ignore format: a row of a table is a line
export const iso10816Part5Of2000 = /* @__PURE__ */ builtIn({
  id: "iso-10816-5-2000",
  kind: "zones",
  standard: "ISO 10816-5",
  edition: "2000",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 5: Machine sets in hydraulic power generating and pumping plants",
  status: "withdrawn",
  statusNote: "from memory, by a different, statistical scheme; scope read in the catalogue abstract of Document Center",
  replacedBy: "ISO 20816-5:2018",
  scope: "hydro sets of 1 MW and more at 60 to 1800 r/min with shell or shoe type sleeve bearings, also pumps with electrical machines as motors; four groups by orientation and bracing of the bearings",
  machines: ["hydro set"],
  within: { power: { from: 1000 }, speed: { from: 60, to: 1800 } },
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
  classes: () => flatTable({
    machine: ["group", "part"],
    columns: [{ as: "um pp", limits: ZONES, source: A1 }, { as: "mm/s rms", limits: ZONES, source: A1 }],
    rows: [
      //                               um peak-to-peak     mm/s RMS
      // group  bearing                A/B   B/C   C/D     A/B  B/C  C/D
      ["1", null,                      30,   50,   80,     1.6, 2.5, 4],
      ["2", null,                      null, null, null,   2.5, 4,   6.4, { source: A2, note: "the standard gives no displacement limits for group 2" }],
      ["3", null,                      30,   50,   80,     1.6, 2.5, 4,   { source: A3 }],
      ["4", "location 1",              65,   100,  160,    2.5, 4,   6.4, { source: A4 }],
      ["4", "other main bearings",     30,   50,   80,     1.6, 2.5, 4,   { source: A4 }],
    ],
  }),
});
