import type { Reference } from "./reference";

const ILAC = "ILAC-G8:09/2019";
const NOTE = "micrometer example in a French metrology note on ILAC-G8";
const NOTE_PAGE =
  "https://talalspecialbolt.com/en-fr/blogs/methodes-detalonnage/regle-de-decision-ilac-g8-et-zone-de-garde-comment-prononcer-la-conformite-en-metrologie-iso-17025";

/** I09: the four calls of the guard band, limit 10 and guard band 1; numbers ours, rule in print. */
export const calls = {
  id: "I09",
  limit: 10,
  guard: 1,
  cases: [
    [8.9, "pass"],
    [9, "pass"],
    [9.5, "conditional pass"],
    [10.5, "conditional fail"],
    [11.5, "fail"],
  ],
  source: `${ILAC}, 4.2.3, page 10`,
  page: "https://fliphtml5.com/szbrq/ktfm/ILAC_G8_09_2019_Quy_tac_ra_QD/10",
  provenance: "published",
} as const;

/** I12 to I14: a worked decision in mm, here with a known level of 1. */
export const micrometer = {
  tolerance: 0.003,
  uncertainty: 0.001,
  acceptance: 0.002,
  cases: [
    [0.0017, true],
    [0.0025, false],
  ],
  source: NOTE,
  page: NOTE_PAGE,
  provenance: "published",
} as const;

/** I18: ours, by the rule of ILAC-G8. */
export const fieldCheck = {
  known: "10 mm/s rms",
  indicated: "9.6 mm/s rms",
  tolerance: "5 %",
  uncertainty: "3 % (k=2)",
  errorPercent: -4,
  acceptance: 0.2,
  call: "conditional pass",
  provenance: "memory",
} as const;

export const combined = {
  id: "I17",
  statement: "3 % and 5 % by root sum of squares",
  printed: 5.83,
  tolerance: 0.005,
  agrees: true,
  source: "JCGM 100:2008, 5.1.2, recalled",
  provenance: "memory",
} as const satisfies Reference;

/** Reference frequencies, in hertz, of round angular frequencies; printed forms. */
export const referenceFrequencies = [
  {
    id: "I01",
    statement: "1000 rad/s, rounded as it is named",
    printed: 160,
    tolerance: 1,
    agrees: true,
    source: "ISO 2954 as quoted in a survey",
    page: "https://www.iso.org/standard/21835.html",
    provenance: "published",
  },
  {
    id: "I04.500",
    statement: "500 rad/s",
    printed: 79.577,
    tolerance: 0.0005,
    agrees: true,
    source: "ISO 16063-21, reference conditions, recalled",
    provenance: "memory",
  },
  {
    id: "I04.100",
    statement: "100 rad/s",
    printed: 15.915,
    tolerance: 0.0005,
    agrees: true,
    source: "ISO 16063-21, reference conditions, recalled",
    provenance: "memory",
  },
] as const satisfies readonly Reference[];

/** I03: what taking 160 Hz for 159.155 Hz costs, in percent of velocity and displacement; ours. */
export const wrongReference = { hertz: 160, exact: 1000 / (2 * Math.PI), velocity: -0.528, displacement: -1.054 };

/** I11: share of wrong passes at the acceptance limit with a guard band of U, in percent: "< 2.5 %" in print. */
export const falseAccept = {
  exact: 2.28,
  most: 2.5,
  source: `${ILAC} as applied by an inspection body`,
  page: "http://tla.sgs.com/thelabsgs/Decision-Rule.php",
  provenance: "published",
} as const;
