import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { quoted } from "./sources";

const TABLE = /* @__PURE__ */ quoted(
  "IEC 60034-14:2003",
  "Table 1",
  "https://support.industry.siemens.com/cs/document/38716895/vibration-severities-and-influenceable-variables?lc=en-WW&pn=1RA45064FM00",
  "read in Siemens Industry Online Support, entry 38716895 of 2 October 2009, an excerpt from DIN EN 60034-14, of this edition by its date; the same in VASCAT, ID Motors Operation and Maintenance Manual CTT52 ed. 03, p. 17, Table 8",
);

/** IEC 60034-14:2003, factory acceptance of rotating electrical machines. */
// biome-ignore format: a row of a table is a line
export const iec60034Part14Of2003 = /* @__PURE__ */ builtIn({
  id: "iec-60034-14-2003",
  kind: "acceptance",
  standard: "IEC 60034-14",
  edition: "2003",
  title: "Rotating electrical machines - Part 14: Mechanical vibration of certain machines with shaft heights 56 mm and higher - Measurement, evaluation and limits of vibration severity",
  status: "withdrawn",
  statusNote: "superseded; SIST EN 60034-14:2004 withdrawn 15 August 2023 (read in the iTeh record)",
  replacedBy: "IEC 60034-14:2018, whose table differs",
  scope: "factory acceptance of uncoupled d.c. and three-phase a.c. machines, to 50 MW and 15 000 r/min; no in-service criterion",
  machines: ["motor", "generator"],
  within: { power: { to: 50000 }, speed: { to: 15000 }, condition: "new", frame: "IEC" },
  place: "housing",
  measuredOn: "bearing housings",
  band: [10, 1000],
  meanings: { mounting: "free suspension or rigid mounting on the test bed", grade: "A: no special requirements, which applies when none was ordered; B: special requirements" },
  notes: [
    "grade A: no special vibration requirements; grade B: special requirements; grade B rigid has no value for 56 to 132 mm",
    "crossovers: displacement to velocity at 10 Hz, velocity to acceleration at 250 Hz",
    "shaft heights as printed in the motor manual: 56<=H<=132, 132<H<=280, H>280; the excerpt prints 132<=H<=280, so that 132 stands in two rows, and the lower limits are taken",
  ],
  classes: () => flatTable({
    machine: ["grade", "mounting", "shaftHeight"],
    columns: [
      { as: "um rms", limits: ["acceptance"], source: TABLE },
      { as: "mm/s rms", limits: ["acceptance"], source: TABLE },
      { as: "m/s2 rms", limits: ["acceptance"], source: TABLE },
    ],
    rows: [
      // grade mounting shaft height, mm    um  mm/s m/s2, RMS
      ["A", "free",   { from: 56, to: 132 },   25, 1.6, 2.5],
      ["A", "free",   { above: 132, to: 280 }, 35, 2.2, 3.5],
      ["A", "free",   { above: 280 },          45, 2.8, 4.4],
      ["A", "rigid",  { from: 56, to: 132 },   21, 1.3, 2],
      ["A", "rigid",  { above: 132, to: 280 }, 29, 1.8, 2.8],
      ["A", "rigid",  { above: 280 },          37, 2.3, 3.6],
      ["B", "free",   { from: 56, to: 132 },   11, 0.7, 1.1],
      ["B", "free",   { above: 132, to: 280 }, 18, 1.1, 1.7],
      ["B", "free",   { above: 280 },          29, 1.8, 2.8],
      // B rigid, 56 to 132 mm: a dash in the print
      ["B", "rigid",  { above: 132, to: 280 }, 14, 0.9, 1.4],
      ["B", "rigid",  { above: 280 },          24, 1.5, 2.4],
    ],
  }),
});
