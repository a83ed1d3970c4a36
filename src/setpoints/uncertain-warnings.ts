import { type Amplitude, format, historyOf, isUncertain, significant } from "../reading/index";
import { uncertaintyOf } from "../uncertainty/index";
import { reaches } from "./first-warnings";
import type { ProposedSetpoint } from "./proposal";
import type { SetpointWarning } from "./setpoint-warnings";

const NAMES = ["trip", "alarm"] as const;

/** How well a level is known; undefined where nothing that led to it has an uncertainty. */
function knownOf(level: Amplitude) {
  return isUncertain(historyOf(level)) ? uncertaintyOf(level) : undefined;
}

/** What is said of setpoints whose baseline or limits have an uncertainty of their own. */
export function uncertainWarnings(
  setpoints: Readonly<Record<(typeof NAMES)[number], ProposedSetpoint | null>>,
  base: Amplitude | null,
): SetpointWarning[] {
  const known = base === null ? undefined : knownOf(base);
  return NAMES.flatMap((name) => {
    const setpoint = setpoints[name];
    if (setpoint === null) return [];
    const { asked, stored, atOnce } = setpoint;
    const own = knownOf(asked);
    const warnings: SetpointWarning[] = [];
    const highest = known?.interval[1] ?? 0;
    if (base !== null && !atOnce && reaches({ ...base, value: highest }, stored)) {
      const does = name === "alarm" ? "the alarm may stand at once" : "the machine may trip at once";
      warnings.push({
        code: `${name} perhaps at once`,
        text: `${does}: the baseline of ${format(base)} may be as high as ${significant(highest)} (95 %), and the ${name} is ${format(stored)}`,
      });
    }
    if (own !== undefined && own.expanded > 0) {
      warnings.push({
        code: "uncertain setpoint",
        text: `the ${name} by the rules is ${significant(own.value, 4)} ± ${significant(own.expanded, 2)} ${own.type} (k = 2, independent inputs, ${own.method}), since baseline or limits have an uncertainty of their own`,
      });
    }
    return warnings;
  });
}
