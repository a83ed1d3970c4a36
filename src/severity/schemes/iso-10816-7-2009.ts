import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { disputed, memory, reported } from "./sources";

const PAGE = "https://www.scribd.com/document/612569992/Vibration-grades-to-ISO";
const READ = /* @__PURE__ */ reported(
  "ISO 10816-7:2009",
  "Table A.1",
  PAGE,
  'read in a one-page extract, "Vibration grades to ISO", which attributes it to ISO 10816-7, the columns by the order of the bars; a course handbook that names the edition of 2009, Engenharia de Confiabilidade, section 4.7, prints the same column by column',
);
const LOWER = /* @__PURE__ */ disputed(
  /* @__PURE__ */ reported(
    "ISO 10816-7:2009",
    "Table A.1",
    PAGE,
    'read in a one-page extract, "Vibration grades to ISO", which attributes it to ISO 10816-7, the columns by the order of the bars',
  ),
  "the extract prints 6.5; a course handbook that names the edition of 2009, Engenharia de Confiabilidade, section 4.7, prints 6.6 (https://github.com/matheus1456/curso-analise-vibracao); the ceiling of the row, from memory, is 1.25 x 6.6 = 8.3, and 1.25 x 6.5 = 8.1; the lower is shipped, check against the standard",
);
const CEILING = /* @__PURE__ */ memory(
  "ISO 10816-7:2009",
  "Table A.1",
  "not checked against a printed copy; that they are about 1.25 times the upper limit of zones B and C was read in a course handbook, Engenharia de Confiabilidade, section 4.7",
);
const SLOW = /* @__PURE__ */ memory("ISO 10816-7:2009", "Table A.2, additional criterion for slow pumps");

/** The additional criterion at 600 r/min and below. */
const slow = {
  as: "um pp",
  limits: { "A/B": 50, "B/C": 80, "C/D": 130 },
  source: SLOW,
  ceilings: { alarm: 100, trip: 160, source: SLOW },
  when: { speed: { to: 600 } },
} as const;

/** ISO 10816-7:2009, rotodynamic pumps above 1 kW in service. */
// biome-ignore format: a row of a table is a line
export const iso10816Part7Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-10816-7-2009",
  kind: "zones",
  standard: "ISO 10816-7",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 7: Rotodynamic pumps for industrial applications, including measurements on rotating shafts",
  status: "current",
  statusNote: "from memory, not checked; a revision as ISO 20816-7 is expected; title page read",
  scope: "rotodynamic pumps above 1 kW; category I: high need of reliability, availability or safety; category II: general or less critical",
  machines: ["pump"],
  within: { power: { above: 1 } },
  place: "housing",
  measuredOn: "bearing housings of the pump",
  band: [10, 1000],
  meanings: { category: "I: high need of reliability, availability or safety; II: general or less critical" },
  slowBand: { below: 600, band: [2, 1000] },
  notes: [
    "no difference between rigid and flexible supports; power is at the pump shaft",
    "200 kW belongs to the lower row, as the course handbook prints; the extract prints <200 and >200 kW",
  ],
  classes: () => flatTable({
    machine: ["category", "power"],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: READ, ceilings: CEILING }],
    also: [slow],
    rows: [
      //                     mm/s RMS        at most, mm/s RMS
      // category  kW        A/B  B/C  C/D   alarm trip
      ["I",  { to: 200 },    2.5, 4,   6.5,  5,   8.3,  { limitSources: { "mm/s rms": { "C/D": LOWER } } }],
      ["I",  { above: 200 }, 3.5, 5,   7.6,  6.3, 9.5],
      ["II", { to: 200 },    3.2, 5.1, 8.5,  6.4, 10.6],
      ["II", { above: 200 }, 4.2, 6.1, 9.5,  7.6, 11.9],
    ],
  }),
});
