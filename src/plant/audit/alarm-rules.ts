import { frozen } from "../../core/index";
import { format } from "../../reading/index";
import { COMMON_PRACTICE } from "../../setpoints/index";
import { highestIn, isAbove, known } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** What an alarm is held against. */
export const alarmRules = /* @__PURE__ */ frozen({
  "alarm at the baseline": {
    severity: "error",
    says: "an alarm at or below the baseline",
    why: "it stands all the time, and warns of nothing",
    source: COMMON_PRACTICE,
    mend: "set the alarm anew from the baseline, as veladis setpoints proposes it; find out first why the baseline is so high",
    check: (machine) => {
      const alarm = known(machine.machine.alarm, "an alarm");
      const baseline = highestIn(known(machine.machine.baseline, "a baseline").level, alarm, machine);
      if (isAbove(alarm.value, baseline.value)) return undefined;
      return { what: `the alarm of ${format(alarm)} is not above the baseline of ${format(baseline)}` };
    },
  },
  "alarm not below trip": {
    severity: "error",
    says: "an alarm at or above the trip",
    why: "the machine trips before anybody is warned",
    source: COMMON_PRACTICE,
    mend: "lower the alarm below the trip",
    check: (machine) => {
      const trip = known(machine.machine.trip, "a trip");
      const alarm = highestIn(known(machine.machine.alarm, "an alarm"), trip, machine);
      if (isAbove(trip.value, alarm.value)) return undefined;
      return { what: `the alarm of ${format(alarm)} is not below the trip of ${format(trip)}` };
    },
  },
} as const satisfies AuditRules);
