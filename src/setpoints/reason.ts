import { frozen, type Source } from "../core/index";

/** Why a number is what it is, and where the rule comes from. */
export interface Reason {
  readonly text: string;
  readonly source: Source;
}

/** The source of a rule that the trade follows and no publication states. */
export const COMMON_PRACTICE = /* @__PURE__ */ Object.freeze({
  title: "common practice, no source",
  provenance: "practice",
} as const satisfies Source);

const CLAUSE = {
  title: "ISO 10816-3, operational limits",
  where: "reproduced in a motor maker's manual, 3BFP 000 050 R0101 REV E, page 68",
  provenance: "quoted",
  page: "https://manualshive.com/ru/manual/abb/ama-series/ama-series_manual_3508-83.html",
  note: "read as quoted there, not in the standard",
} as const satisfies Source;

const RECALLED = {
  title: "ISO 10816-1/-2/-3 and ISO 20816-1:2016, operational limits",
  provenance: "memory",
  note: "not checked against a printed copy",
} as const satisfies Source;

const HANDBOOK = {
  title: "Forsthoffer's Best Practice Handbook for Rotating Machinery",
  where: "p. 205",
  provenance: "quoted",
  page: "https://digilib.universitaspertamina.ac.id/ebook/Forsthoffer's%20best%20practice%20handbook%20for%20rotating%20machinery/files/basic-html/page205.html",
  note: "read there as what API recommends; which of its standards, and which edition, is not told",
} as const satisfies Source;

/** The rules for setpoints, by name, each with its source. */
// biome-ignore format: a row of a table is a line
export const setpointRules = /* @__PURE__ */ frozen({
  "alarm from baseline": { text: "ALARM is the baseline plus a quarter of the upper limit of zone B", source: CLAUSE },
  "alarm below zone C": { text: "with a low baseline the ALARM may lie below zone C", source: CLAUSE },
  "alarm cap": { text: "ALARM should not normally exceed 1.25 times the upper limit of zone B", source: RECALLED },
  "trip nature": { text: "TRIP follows the mechanical integrity of the machine, is generally the same for all of similar design, and is not tied to the baseline", source: CLAUSE },
  "trip cap": { text: "TRIP normally lies in zone C or D and should not exceed 1.25 times the upper limit of zone C", source: RECALLED },
  "trip proposed": { text: "the upper limit of zone C, the lower end of where a TRIP normally lies within zone D; up to the cap is for the person who answers for the machine to decide", source: COMMON_PRACTICE },
  statistical: { text: "mean plus k standard deviations of readings of the machine in good state, k of 2 to 3; vibration is skewed, so the share it leaves out is only nominal", source: { title: "R. Blake, Statistical Approach to Machinery Condition Monitoring; A. Friedman, Statistical Alarms", where: "method; abstract and text opened, k from memory", provenance: "memory", page: "https://vi-institute.org/publications/statistical-approach-to-machinery-condition-monitoring/" } },
  "printed ceiling": { text: "no higher than the highest setting of the table for this class", source: RECALLED },
  "fan limits": { text: "the alarm and shutdown limits of the standard for fans on site", source: { title: "ISO 14694:2003, clause 9 and Table 5", provenance: "memory", note: "not checked against a printed copy" } },
  "api shaft": { text: "API recommends for the shaft an alarm of root(24 000/n) and a trip of root(36 000/n) mil peak-to-peak, n in r/min", source: HANDBOOK },
  "multiple of baseline": { text: "setpoints as multiples of the baseline; no standard states a multiple", source: COMMON_PRACTICE },
  "raised setpoint": { text: "API 670 has the setpoints multiplied by 2 or 3 while critical speeds are passed, on a command from outside, and shown while it is so", source: { title: "API 670, 5th edition, set-point multiplier", provenance: "memory", note: "not checked against a printed copy" } },
  "no baseline": { text: "without a baseline the first ALARM is set from similar machines and set anew once there is a steady baseline", source: RECALLED },
  "device steps": { text: "rounded down to a step of the device, so that it acts no later than asked", source: COMMON_PRACTICE },
} as const satisfies Record<string, Reason>);
