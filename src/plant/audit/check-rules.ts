import { frozen } from "../../core/index";
import { COMMON_PRACTICE } from "../../setpoints/index";
import { monthsAfter } from "../calendar-day";
import { known } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** What the last check is held against. */
export const checkRules = /* @__PURE__ */ frozen({
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
} as const satisfies AuditRules);
