import { convertedAt, linearTypeOf } from "../../amplitude/index";
import { bandUse } from "../../device/index";
import { format, significant } from "../../reading/index";
import { COMMON_PRACTICE } from "../../setpoints/index";
import { checkAgainstKnown } from "../../verification/index";
import { monthsAfter } from "../calendar-day";
import { type DoubtfulPeriod, doubtOf } from "../doubtful-periods";
import { type AuditCase, isAbove, known } from "./audit-case";
import type { AuditRules, Found } from "./audit-rule";

/** The least share of the trip that a device should be checked at; common practice, no source. */
const LEAST_SHARE = 0.2;

/** The doubt that a check leaves, as the device was left or as it was found; nothing where it passed. */
function doubt({ machine }: AuditCase, which: "asFound" | "asLeft"): DoubtfulPeriod | undefined {
  const check = known(machine.check, "a check");
  const { date, asFound, asLeft } = check;
  const indicated = which === "asLeft" ? (asLeft ?? asFound) : asFound;
  const result = checkAgainstKnown({
    known: known(check.known, "the known level of the check"),
    indicated: known(indicated, "what the device showed at the check"),
    tolerance: known(check.tolerance ?? machine.tolerance, "the tolerance of the check"),
  });
  return doubtOf(machine, result, which === "asLeft" ? { from: date, to: null } : { from: null, to: date });
}

function left(machine: AuditCase, verdict: DoubtfulPeriod["verdict"]): Found | undefined {
  const found = doubt(machine, "asLeft");
  if (found?.verdict !== verdict) return undefined;
  return { what: `${found.why}; ${found.what}` };
}

/** What the last check is held against. */
export function checkRules() {
  return {
    "left out of tolerance": {
      severity: "error",
      says: "a device that its last check left out of tolerance",
      why: "one that reads low trips late, or never; one that reads high trips early, and is taken out for it",
      source: COMMON_PRACTICE,
      mend: "adjust or replace it and check it again before it is relied on",
      check: (machine) => left(machine, "fail"),
    },
    "left in doubt": {
      severity: "warning",
      says: "a device that its last check left neither within nor out of tolerance for certain",
      why: "nobody knows whether it would trip where it is set",
      source: COMMON_PRACTICE,
      mend: "adjust it, or check it again with a smaller uncertainty",
      check: (machine) => left(machine, "undecided"),
    },
    "found out of tolerance": {
      severity: "warning",
      says: "a device that its last check found out of tolerance, or not within it for certain",
      why: "what it read until then is in doubt, and it may drift again",
      source: COMMON_PRACTICE,
      mend: "look back at the readings, alarms and trips before that day, and check it sooner next time",
      check: (machine) => {
        const check = known(machine.machine.check, "a check");
        // what it was found at with nothing as left is what it was left at
        if (check.asLeft === undefined) return undefined;
        const found = doubt(machine, "asFound");
        return found === undefined ? undefined : { what: `${found.why}; ${found.what}` };
      },
    },
    "checked outside the band": {
      severity: "warning",
      says: "a known level at a frequency outside the measured band, or at its lower edge",
      why: "the device reads low there, so that such a check says nothing of how it reads within its band",
      source: COMMON_PRACTICE,
      mend: "check it at a frequency within the band, at least 1.26 times its lower edge",
      check: ({ machine }) => {
        const level = known(known(machine.check, "a check").known, "the known level of the check");
        const hertz = known(level.hertz, "the frequency of the known level");
        const { place, remark } = bandUse(hertz, known(machine.band, "the measured band"));
        if (place === "within") return undefined;
        return { what: `the known level is of ${significant(hertz)} Hz, ${remark}` };
      },
    },
    "checked far below the trip": {
      severity: "warning",
      says: `a known level under ${LEAST_SHARE * 100} % of the trip`,
      why: "how a device reads at so low a level says little of how it reads at its trip",
      source: COMMON_PRACTICE,
      mend: "check it at a level near its setpoints",
      check: ({ machine }) => {
        const trip = known(machine.trip, "a trip");
        const level = known(known(machine.check, "a check").known, "the known level of the check");
        const { value } = convertedAt(level, linearTypeOf(trip), level.hertz ?? trip.hertz);
        const share = value / convertedAt(trip, linearTypeOf(trip), undefined).value;
        if (!isAbove(LEAST_SHARE, share)) return undefined;
        return {
          what: `the known level of ${format(level)} is ${significant(100 * share, 2)} % of the trip of ${format(trip)}`,
        };
      },
    },
    "never checked": {
      severity: "warning",
      says: "a device of which no check against a known vibration is recorded",
      why: "nobody knows whether it would trip",
      source: COMMON_PRACTICE,
      mend: "check it against a known vibration (veladis check, veladis plan), and record it",
      check: ({ machine }) => (machine.check === undefined ? { what: "no check is recorded" } : undefined),
    },
    "check overdue": {
      severity: "warning",
      says: "a check that is longer ago than its interval",
      why: "a device that has drifted or failed since then is not found",
      source: COMMON_PRACTICE,
      mend: "check it now, or record why the interval was made longer",
      check: ({ machine, on }) => {
        const { date } = known(machine.check, "a check");
        const interval = known(machine.interval, "the interval of the checks");
        const day = known(on, "the day of the audit");
        const due = monthsAfter(date, interval);
        if (day <= due) return undefined;
        return { what: `the check of ${date} was due again by ${due}, after ${interval} months` };
      },
    },
  } as const satisfies AuditRules;
}
