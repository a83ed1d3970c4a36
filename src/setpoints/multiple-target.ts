import { leastAmplitude, multipliedAmplitude } from "../amplitude/index";
import { VeladisError } from "../core/index";
import { type Amplitude, format } from "../reading/index";
import { STATED_MULTIPLES } from "./multiples";
import { type Reason, setpointRules } from "./reason";
import type { SetpointLimits } from "./setpoint-limits";
import { highestOf, type Target } from "./setpoint-targets";
import type { SetpointWarning } from "./setpoint-warnings";

/** A multiple of the baseline to set from, and what the rules come to without it. */
export interface MultipleCase {
  readonly name: "alarm" | "trip";
  readonly times: number;
  readonly base: Amplitude | null;
  readonly limits: SetpointLimits | null;
  readonly byRules: Target | null;
}

/** A setpoint by a multiple, and what is to be said of it. */
interface ByMultiple {
  readonly target: Target;
  readonly warnings: readonly SetpointWarning[];
}

/** Refuses a multiple of nothing, and a trip that nothing can be held against. */
function requireGround({ name, base, limits }: MultipleCase): Amplitude {
  if (base === null || base.value === 0)
    throw new VeladisError("missing-fact", {
      expected: "a baseline above zero beside multiples of it",
      received: base === null ? "no baseline" : "a baseline of zero",
      option: "multiples",
    });
  if (name === "alarm" || (limits !== null && limits.upper !== null)) return base;
  throw new VeladisError("missing-fact", {
    expected:
      "a machine, a scheme or limits with an upper limit of zone C beside a multiple for the trip, since what the machine stands does not follow its baseline",
    received: limits === null ? "no limits" : "limits without one of zone C",
    option: "multiples",
  });
}

/** What is to be said of a multiple beside the limits. */
function multipleWarnings(
  { name, times, limits, byRules }: MultipleCase,
  wanted: Amplitude,
  used: Amplitude,
): SetpointWarning[] {
  const what = `the ${name} by ${times} times the baseline, ${format(wanted)},`;
  const warnings: SetpointWarning[] = [];
  if (used.value < wanted.value)
    warnings.push({
      code: "multiple limited",
      text: `${what} is above all that the rules allow: lowered to ${format(used)}`,
    });
  if (byRules !== null && used.value > byRules.amplitude.value) {
    const other = format(byRules.amplitude);
    warnings.push({
      code: "multiple above the rule",
      text: `the ${name} is set at ${format(used)} by the multiple, above the ${other} of the rule without it: it acts later`,
    });
  }
  if (name === "alarm" || limits === null) return warnings;
  if (wanted.value <= limits.lower.amplitude.value)
    warnings.push({
      code: "multiple below zone C",
      text: `${what} is not above ${limits.lower.text} (${format(limits.lower.amplitude)}): it would stop a machine that the limits let run on`,
    });
  warnings.push({
    code: "trip by multiple",
    text: "the trip follows the baseline, by your choice of a multiple; the rule has it follow the integrity of the machine: the higher the machine runs in its good state, the later it trips",
  });
  return warnings;
}

/** The limit that a multiple is held against, and the rule that bounds it. */
function boundReasons({ kind, lower, upper, rule }: SetpointLimits, name: "alarm" | "trip"): Reason[] {
  const { text, source } = name === "alarm" || upper === null ? lower : upper;
  const bound = kind === "operation" ? (rule ?? setpointRules["fan limits"]) : setpointRules[`${name} cap`];
  return [{ text: `held against ${text}`, source }, bound];
}

/**
 * Alarm or trip at a multiple of the baseline, no higher than the rules allow.
 *
 * @throws {@link VeladisError} `missing-fact` without a baseline, and for a trip without a limit C/D
 */
export function multipleTarget(given: MultipleCase): ByMultiple {
  const { name, times, limits, byRules } = given;
  const base = requireGround(given);
  const note = `${times} times the baseline`;
  const wanted = multipliedAmplitude(base, times, note);
  const highest = limits === null ? null : highestOf(limits, name);
  const isLimited = highest !== null && wanted.value > highest.value;
  const amplitude = isLimited ? leastAmplitude([wanted, highest], "no more than the rule allows") : wanted;
  const reasons: Reason[] = [
    { text: note, source: STATED_MULTIPLES },
    setpointRules["multiple of baseline"],
    ...(limits === null ? [] : boundReasons(limits, name)),
  ];
  const range = limits !== null && byRules !== null ? byRules.range : ([base.value, amplitude.value] as const);
  return { target: { amplitude, range, reasons }, warnings: multipleWarnings(given, wanted, amplitude) };
}
