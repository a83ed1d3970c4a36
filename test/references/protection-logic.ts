import type { Reference } from "./reference";

const ENG_TIPS = "Eng-Tips thread 326864";
const ENG_TIPS_PAGE = "http://www.eng-tips.com/viewthread.cfm?qid=326864";

/** H01, H02: times in print, in seconds. */
export const times = {
  processing: {
    id: "H01",
    statement: "API 670 (1993), 3.5.1.1.p: from detection to alarm; processing time, no persistence delay",
    expected: 0.1,
    source: `API 670 (1993) as quoted in ${ENG_TIPS}`,
    page: ENG_TIPS_PAGE,
    provenance: "published",
  },
  practice: {
    id: "H02",
    statement: "delays met in practice for a vibration shutdown; anecdotal",
    expected: [3, 5],
    source: `${ENG_TIPS}, question`,
    page: ENG_TIPS_PAGE,
    provenance: "published",
  },
} as const;

/** H03, H04: votes named in print. */
export const votesInPrint = [
  {
    id: "H03",
    statement: "alternatives to delay",
    expected: ["2oo2", "2oo3", "3oo4"],
    source: `${ENG_TIPS}, reply`,
    page: ENG_TIPS_PAGE,
    provenance: "published",
  },
  {
    id: "H04",
    statement: "an X-Y pair: 1oo2 gave spurious trips, 2oo2 and 2oo4 preferred",
    expected: ["1oo2", "2oo2", "2oo4"],
    source: "maintenance.org forum, Radial shaft vibration trips",
    page: "http://www.maintenance.org/topic/radial-shaft-vibration-trips?reply=399590942964281983",
    provenance: "published",
  },
] as const;

/** H06: de-energise to trip is the fail-safe principle: what loss of power does. */
export const failSafe = {
  id: "H06",
  expected: "trip",
  source: "Foord & Howard, Energise or De-energise to trip?, Measurement + Control 41 (2008)",
  page: "https://www.scribd.com/document/655929759/002029400804100903",
  provenance: "published",
} as const;

/** H23: setpoint multiplier during start-up. */
export const multipliers = {
  id: "H23",
  expected: [2, 3],
  source: "API 670 5th ed., set-point multiplier clause, recalled",
  provenance: "memory",
} as const;

/**
 * H09: a limit with a dead band clears once the level has come back by the dead band. That the edges count as set is
 * common practice, no source; the series of samples is ours.
 */
export const deadband = {
  id: "H09",
  limit: 10,
  deadband: 0.5,
  samples: [9.99, 10, 9.6, 9.5, 9.49],
  set: [false, true, true, true, false],
  source: "IEC 62682, alarm deadband; OPC UA Part 9 (OPC 10000-9), deadbands of a LimitAlarmType; both recalled",
  provenance: "memory",
} as const;

/** H12: the trap of 5 as a value, in the unit of the level, or as a percentage of the limit; the numbers are ours. */
export const relativeSetpoints = {
  id: "H12",
  limit: 160,
  value: { of: 5, dropout: 155 },
  percent: { of: 5, dropout: 152 },
  source:
    "value: OPC UA Part 9 (OPC 10000-9), deadbands of a LimitAlarmType; percentage: IEC 60255-1, reset ratio (here 95 %); both recalled",
  provenance: "memory",
} as const;

/** ISO 2954, seen in a survey that quotes the standard; the response at 12.6 Hz computed, order from memory. */
export const bandReferences = {
  upper: {
    id: "H15.upper",
    statement: "+10 % in decibels",
    printed: 0.83,
    tolerance: 0.005,
    agrees: true,
    source: "ISO 2954:2012, Table 2 note, as quoted in a survey",
    page: "https://www.iso.org/standard/21835.html",
    provenance: "published",
  },
  lower: {
    id: "H15.lower",
    statement: "-10 % in decibels",
    printed: -0.92,
    tolerance: 0.005,
    agrees: true,
    source: "ISO 2954:2012, Table 2 note, as quoted in a survey",
    page: "https://www.iso.org/standard/21835.html",
    provenance: "published",
  },
  edge: {
    id: "H16",
    statement: "a 10 Hz component read by a 10 Hz to 1000 Hz device, in decibels",
    printed: -3.01,
    tolerance: 0.005,
    agrees: true,
    source: "ISO 2954:2012, Table 2, as quoted in a survey",
    page: "https://www.iso.org/standard/21835.html",
    provenance: "published",
  },
  inside: {
    id: "H17",
    statement: "a 12.6 Hz component, third order, in decibels",
    printed: -0.97,
    tolerance: 0.005,
    agrees: true,
    source: "ISO 2954:2012; response computed",
    provenance: "memory",
  },
} as const satisfies Record<string, Reference>;

/** H22: mean + k standard deviations; the method is published, the numbers are ours. */
export const statistical = {
  id: "H22",
  mean: 2,
  standardDeviation: 0.3,
  limits: [
    [2, 2.6],
    [3, 2.9],
  ],
  source: "R. Blake, Statistical Approach to Machinery Condition Monitoring; A. Friedman, Statistical Alarms",
  provenance: "memory",
} as const;
