import { convertedAt, linearTypeOf } from "../../amplitude/index";
import { format, quantityOf, writtenIn } from "../../reading/index";
import { COMMON_PRACTICE, ENOUGH, setpointRules } from "../../setpoints/index";
import { type AuditCase, isAbove, known } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** The baseline with the setpoint that its unit is held against. */
function besideSetpoint({ machine }: AuditCase) {
  const { level } = known(machine.baseline, "a baseline");
  return { level, setpoint: known(machine.alarm ?? machine.trip, "an alarm or a trip") };
}

/** What a baseline is held against. */
export function baselineRules() {
  return {
    "no baseline": {
      severity: "warning",
      says: "a machine without a baseline",
      why: setpointRules["no baseline"].text,
      source: setpointRules["no baseline"].source,
      mend: "take readings of steady running, as veladis setpoints --file reads them, and write their median into the list",
      check: ({ machine }) =>
        machine.baseline === undefined ? { what: "the list has none for this machine" } : undefined,
    },
    "baseline above zone C": {
      severity: "error",
      says: "a baseline above C/D or above the shutdown limit",
      why: "the machine runs at levels that the limits call dangerous, and its setpoints are judged from there",
      source: COMMON_PRACTICE,
      mend: "find out why it vibrates so and mend that first; then take the baseline anew",
      check: (machine) => {
        const { level } = known(machine.machine.baseline, "a baseline");
        const { upper } = machine.limits(level);
        const limit = known(upper ?? undefined, "an upper limit of zone C or a shutdown limit in the table");
        if (!isAbove(convertedAt(level, linearTypeOf(level), undefined).value, limit.amplitude.value)) return undefined;
        return {
          what: `the baseline of ${format(level)} is above ${format(limit.amplitude)}, ${limit.text}`,
          source: limit.source,
        };
      },
    },
    "baseline of another quantity": {
      severity: "warning",
      says: "a baseline of another quantity than the setpoints",
      why: "across quantities a reading is carried at one frequency, the running speed; what it holds of others is judged wrongly",
      source: COMMON_PRACTICE,
      mend: "take the baseline in the quantity of the setpoints",
      check: (machine) => {
        const { level, setpoint } = besideSetpoint(machine);
        const [own, others] = [quantityOf(linearTypeOf(level)), quantityOf(linearTypeOf(setpoint))];
        if (own === others) return undefined;
        return {
          what: `the baseline of ${format(level)} is of ${own}, the setpoints are of ${others}`,
        };
      },
    },
    "baseline in another unit": {
      severity: "note",
      says: "a baseline in another unit or detector than the setpoints",
      why: "between detectors a conversion assumes a sine, and whoever compares the numbers by eye is misled",
      source: COMMON_PRACTICE,
      mend: "write the baseline in the unit and detector of the setpoints",
      check: (machine) => {
        const { level, setpoint } = besideSetpoint(machine);
        const [one, other] = [linearTypeOf(level), linearTypeOf(setpoint)];
        if (quantityOf(one) !== quantityOf(other) || one === other) return undefined;
        return { what: `the baseline is in ${writtenIn(level)}, the setpoints are in ${writtenIn(setpoint)}` };
      },
    },
    "baseline of zero": {
      severity: "warning",
      says: "a baseline of zero",
      why: "a dead sensor or a stopped machine reads zero",
      source: COMMON_PRACTICE,
      mend: "take the baseline anew on the running machine",
      check: ({ machine }) =>
        known(machine.baseline, "a baseline").level.value === 0 ? { what: "the baseline is zero" } : undefined,
    },
    "baseline of few readings": {
      severity: "note",
      says: `a baseline of fewer than ${ENOUGH} readings`,
      why: "few readings do not show how far the level scatters over load and temperature",
      source: COMMON_PRACTICE,
      mend: `take at least ${ENOUGH} steady readings over the usual range of load and temperature`,
      check: ({ machine }) => {
        const count = known(known(machine.baseline, "a baseline").count, "the count of readings in the baseline");
        return count < ENOUGH
          ? { what: `the baseline is of ${count} ${count === 1 ? "reading" : "readings"}` }
          : undefined;
      },
    },
  } as const satisfies AuditRules;
}
