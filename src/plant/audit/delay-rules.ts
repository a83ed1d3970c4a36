import { amountAmplitude, convertedAt, linearTypeOf } from "../../amplitude/index";
import { frozen } from "../../core/index";
import { format } from "../../reading/index";
import { COMMON_PRACTICE, delayAdvice } from "../../setpoints/index";
import { known } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** What delays and hysteresis are held against. */
export const delayRules = /* @__PURE__ */ frozen({
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
  "start-up not ridden out": {
    severity: "warning",
    says: "a trip delay, start inhibit and multiplier that are all shorter than the start-up",
    why: "vibration while the machine runs up may trip it at each start, and whoever is tired of that takes the trip out",
    source: COMMON_PRACTICE,
    mend: "raise the setpoint or inhibit the trip for the time of the start-up, on the maker's advice and with a record",
    check: ({ machine }) => {
      const startUp = known(machine.startUp, "the time of the start-up");
      const delay = known(machine.tripDelay, "the trip delay");
      const { startInhibit = 0, multiplier } = machine.settings;
      const longest = Math.max(delay, startInhibit, multiplier?.seconds ?? 0);
      if (longest >= startUp) return undefined;
      return { what: `the start-up takes ${startUp} s, and nothing holds the trip back for longer than ${longest} s` };
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
} as const satisfies AuditRules);
