import { amountAmplitude, convertedAt, linearTypeOf } from "../../amplitude/index";
import { format } from "../../reading/index";
import { COMMON_PRACTICE, delayAdvice } from "../../setpoints/index";
import { highestIn, isAbove, known } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** Seconds that an alarm may wait; common practice, no source. */
const MOST_ALARM_DELAY = 60;

/** Seconds that an output may stay set after the level; common practice, no source. */
const MOST_OFF_DELAY = 300;

/** What delays and hysteresis are held against. */
export function delayRules() {
  return {
    "trip delay above coast-down": {
      severity: "warning",
      says: "a trip delay as long as the machine coasts down, or longer",
      why: "a trip that waits so long stops nothing sooner than the machine would stop without drive",
      source: COMMON_PRACTICE,
      mend: "shorten the delay; where disturbances make it long, voting is better than delay",
      check: ({ machine }) => {
        const delay = known(machine.tripDelay, "the trip delay");
        const coast = known(machine.coastDown, "the coast-down");
        return delay < coast ? undefined : { what: `the trip waits ${delay} s, the machine coasts down in ${coast} s` };
      },
    },
    "long trip delay": {
      severity: "warning",
      says: "a trip delay longer than suits the kind of machine and its speed",
      why: "damage may be done by then",
      source: COMMON_PRACTICE,
      mend: "shorten the delay; where disturbances make it long, voting is better than delay",
      check: ({ machine, speeds }) => {
        const delay = known(machine.tripDelay, "the trip delay");
        const { type } = machine.machine;
        const all = (speeds.length === 0 ? [undefined] : speeds).map((hertz) => delayAdvice(type, hertz));
        const [advice] = [...all].sort((one, other) => one.longest - other.longest);
        if (advice === undefined || delay <= advice.longest) return undefined;
        const [reason] = [...advice.reasons].reverse().filter(({ source }) => source.provenance !== "reported");
        return {
          what: `the trip waits ${delay} s, at most ${advice.longest} s suit a ${type ?? "machine"}`,
          ...(reason !== undefined && { source: reason.source }),
        };
      },
    },
    "long alarm delay": {
      severity: "warning",
      says: `an alarm delay above ${MOST_ALARM_DELAY} s`,
      why: "the machine may be damaged, or trip, before anybody is warned",
      source: COMMON_PRACTICE,
      mend: "shorten the delay; it has to ride out disturbances only",
      check: ({ machine }) => {
        if (machine.alarm === undefined) return undefined;
        const delay = known(machine.alarmDelay, "the alarm delay");
        return delay > MOST_ALARM_DELAY ? { what: `the alarm waits ${delay} s` } : undefined;
      },
    },
    "long off-delay": {
      severity: "warning",
      says: `an off-delay above ${MOST_OFF_DELAY} s`,
      why: "an output that stays set long after the level has fallen is taken for stuck, and hides what comes next",
      source: COMMON_PRACTICE,
      mend: "shorten the off-delay, or let the output latch",
      check: ({ machine: { settings } }) => {
        const { offDelay = 0 } = settings;
        return offDelay > MOST_OFF_DELAY ? { what: `an output clears ${offDelay} s after the level` } : undefined;
      },
    },
    "never clears at the baseline": {
      severity: "warning",
      says: "a hysteresis so large that a setpoint does not clear at the baseline",
      why: "once set the output stays, though the machine runs as well as before, and nobody heeds it any more",
      source: COMMON_PRACTICE,
      mend: "make the hysteresis smaller, so that the reset level lies above the baseline",
      check: (machine) => {
        const hysteresis = known(machine.machine.settings.hysteresis, "the hysteresis");
        const { level } = known(machine.machine.baseline, "a baseline");
        const { alarm, trip } = machine.machine;
        known(alarm ?? trip, "an alarm or a trip");
        const texts = (
          [
            ["alarm", alarm],
            ["trip", trip],
          ] as const
        ).flatMap(([name, setpoint]) => {
          if (setpoint === undefined) return [];
          const { value } = convertedAt(setpoint, linearTypeOf(setpoint), undefined);
          const baseline = highestIn(level, setpoint, machine);
          const reset = value - amountAmplitude(hysteresis, setpoint).value;
          // a setpoint at the baseline has a finding of its own
          if (isAbove(reset, baseline.value) || !isAbove(value, baseline.value)) return [];
          return [
            `the ${name} of ${format(setpoint)} clears at ${format({ ...baseline, value: Math.max(reset, 0) })}, the baseline is ${format(baseline)}`,
          ];
        });
        return texts.length === 0 ? undefined : { what: `with a hysteresis of ${hysteresis} ${texts.join("; ")}` };
      },
    },
    "hysteresis within the spread": {
      severity: "warning",
      says: "a hysteresis smaller than two standard deviations of the baseline",
      why: "near the setpoint the scatter of the level itself makes the contact chatter",
      source: COMMON_PRACTICE,
      mend: "make it at least two standard deviations, or give the output an off-delay",
      check: ({ machine }) => {
        const hysteresis = known(machine.settings.hysteresis, "the hysteresis");
        const setpoint = known(machine.alarm ?? machine.trip, "an alarm or a trip");
        const deviation = known(known(machine.baseline, "a baseline").deviation, "the deviation of the baseline");
        const amount = amountAmplitude(hysteresis, setpoint);
        const spread = convertedAt(deviation, linearTypeOf(setpoint), undefined);
        if (amount.value >= 2 * spread.value) return undefined;
        return {
          what: `the hysteresis of ${hysteresis} is ${format(amount)}, two standard deviations are ${format({ ...spread, value: 2 * spread.value })}`,
        };
      },
    },
  } as const satisfies AuditRules;
}
