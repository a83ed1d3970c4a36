import { convertedAt, linearTypeOf } from "../../amplitude/index";
import { format } from "../../reading/index";
import { AS_STATED, COMMON_PRACTICE, highestOf, setpointRules } from "../../setpoints/index";
import { highestIn, isAbove, known, setpointText } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** What an alarm is held against. */
export function alarmRules() {
  return {
    "alarm above ceiling": {
      severity: "error",
      says: "an alarm above the highest that the rules allow: 1.25 times B/C, the alarm limit or the highest setting of the table",
      why: "the machine is damaged before anybody is warned",
      source: setpointRules["alarm cap"].source,
      mend: "lower the alarm, or give the limits of the maker with their source",
      check: (machine) => {
        const alarm = known(machine.machine.alarm, "an alarm");
        const limits = machine.limits(alarm);
        const { lower, ceilings, kind } = limits;
        const highest = highestOf(limits, "alarm") ?? lower.amplitude;
        if (!isAbove(convertedAt(alarm, linearTypeOf(alarm), undefined).value, highest.value)) return undefined;
        const ceiling =
          kind === "zones" && highest.value === ceilings?.alarm.amplitude.value ? ceilings.alarm : undefined;
        const most = ceiling?.text ?? (kind === "operation" ? lower.text : `1.25 times ${lower.text}`);
        return {
          what: `the alarm of ${setpointText(alarm)} is above ${format(highest)}, which is ${most}`,
          source: ceiling?.source ?? (kind === "operation" ? lower.source : setpointRules["alarm cap"].source),
          mend: `lower the alarm to at most ${format(highest)}, or give the limits of the maker with their source`,
        };
      },
    },
    "alarm above the maker's ceiling": {
      severity: "error",
      says: "an alarm above the highest trip that the maker or the site allows",
      why: "the maker of the machine and the rules of the site govern",
      source: { title: "the ceiling in the plant's list", provenance: "memory", note: AS_STATED },
      mend: "lower the alarm well below the ceiling",
      check: (machine) => {
        const { ceiling } = machine.machine;
        if (ceiling === undefined || machine.machine.alarm === undefined) return undefined;
        const alarm = machine.machine.alarm;
        if (!isAbove(highestIn(alarm, ceiling, machine).value, ceiling.value)) return undefined;
        return { what: `the alarm of ${setpointText(alarm)} is above the ceiling of ${format(ceiling)}` };
      },
    },
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
  } as const satisfies AuditRules;
}
