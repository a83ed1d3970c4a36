import type { Reference } from "./reference";

const CLAUSE_6 = "ISO 21940-11:2016, clause 6, e_per = G / omega, recalled";
const MANCUSO = "J. R. Mancuso, The Manufacturer's World of Coupling Potential Unbalance";
const MANCUSO_PAGE = "https://studylib.net/doc/18313826/the-manufacturers--world-of-coupling-potential-unbalance";

/** Permissible eccentricity in um. */
export const eccentricities = [
  { id: "G04", grade: 2.5, speed: 3000, printed: 7.96, tolerance: 0.005, source: CLAUSE_6, provenance: "memory" },
  { id: "G05", grade: 6.3, speed: 1500, printed: 40.1, tolerance: 0.05, source: CLAUSE_6, provenance: "memory" },
  { id: "G07", grade: 16, speed: 1000, printed: 152.8, tolerance: 0.05, source: CLAUSE_6, provenance: "memory" },
] as const;

/** G08: the workshop rule 10 000 G / n, 4.7 % lenient: the library must not reproduce it. */
export const workshopRule = {
  id: "G08",
  statement: "eccentricity in um for G 1 at 1 r/min",
  printed: 10_000,
  tolerance: 1,
  agrees: false,
  source: "workshop rule, recalled",
  provenance: "memory",
  note: "exact 9549.3",
} as const satisfies Reference;

/** G02: the grades. */
export const gradeSeries = {
  id: "G02",
  grades: [0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000],
  source: "ISO 21940-11:2016, Table 1, the list read in two excerpts",
  provenance: "published",
} as const;

/** G10: 6350 W / N per plane as a grade. */
export const apiGrade = {
  id: "G10",
  statement: "grade of 6350 g·mm per kg and r/min",
  printed: 0.665,
  tolerance: 0.0005,
  agrees: true,
  source: "derived",
  provenance: "memory",
} as const satisfies Reference;

export const unbalances = [
  {
    id: "G11",
    statement: "4 oz at 2 in, oz·in",
    mass: "4 oz",
    radius: "2 in",
    printed: 8,
    tolerance: 1e-9,
    agrees: true,
    source: `${MANCUSO}, figure 1`,
    page: MANCUSO_PAGE,
    provenance: "published",
  },
  {
    id: "G12",
    statement: "50 lb displaced by 0.001 in, oz·in",
    mass: "50 lb",
    radius: "0.001 in",
    printed: 8,
    tolerance: 0.5,
    agrees: false,
    source: `${MANCUSO}, text`,
    page: MANCUSO_PAGE,
    provenance: "published",
    note: "a lost decimal point: 0.8",
  },
] as const satisfies readonly (Reference & { mass: string; radius: string })[];

/** G13: two correction planes of a rigid rotor get half each; lb to oz is 16. */
export const planes = {
  id: "G13",
  half: 0.5,
  ouncesPerPound: 16,
  source: "Bloch & Geitner, Machinery Component Maintenance and Repair, figure 6-33, page 301",
  page: "https://digilib.universitaspertamina.ac.id/ebook/Machinery%20Component%20Maintenance/files/basic-html/page319.html",
  provenance: "published",
} as const;
