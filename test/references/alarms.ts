const CLAUSE =
  "ISO 10816-3 operational limits as reproduced in a motor maker's manual, 3BFP 000 050 R0101 REV E, page 68";

/** Rules for alarm and trip, with what each gives for a machine with limits 4.5 and 7.1 mm/s RMS. */
export const alarmRules = [
  {
    id: "alarm-baseline-25",
    rule: "ALARM is the baseline plus 25 % of B/C",
    case: { baseline: 2, BC: 4.5, CD: 7.1 },
    expected: { alarm: 3.125 },
    source: CLAUSE,
    provenance: "published",
  },
  {
    id: "alarm-may-be-below-C",
    rule: "with a low baseline the ALARM may lie below zone C: no clamping up to B/C",
    case: { baseline: 0.5, BC: 4.5, CD: 7.1 },
    expected: { alarm: 1.625 },
    source: CLAUSE,
    provenance: "published",
  },
  {
    id: "alarm-cap",
    rule: "ALARM not above 1.25 B/C",
    case: { baseline: 5, BC: 4.5, CD: 7.1 },
    expected: { alarm: 5.625 },
    source: "ISO 10816-3:2009 and ISO 20816-1:2016, recalled",
    provenance: "memory",
  },
  {
    id: "trip-cap",
    rule: "TRIP within zone C or D and not above 1.25 C/D",
    case: { baseline: 2, BC: 4.5, CD: 7.1 },
    expected: { tripLowest: 4.5, tripHighest: 8.875 },
    source: "ISO 10816-3:2009 and ISO 20816-1:2016, recalled",
    provenance: "memory",
  },
] as const;

/** Highest settings that ISO 10816-7:2009 prints, mm/s RMS; from memory. */
export const pumpCeilings = {
  machine: "pump 90 kW 1490 r/min category I",
  alarm: 5,
  trip: 8.3,
  source: "ISO 10816-7:2009, Table A.1, recalled",
  provenance: "memory",
} as const;
