import { held } from "../core/index";
import type { Baseline } from "./baseline";
import { COMMON_PRACTICE, type Reason, setpointRules } from "./reason";
import type { SetpointLimits } from "./setpoint-limits";

/** Least hysteresis in percent of the threshold; common practice, no source. */
const LEAST_HYSTERESIS = 5;

/** The hysteresis for an alarm, in percent of it, with its reason. */
export function hysteresisFor(
  baseline: Baseline | null,
  alarm: number | undefined,
): { readonly percent: number; readonly reasons: readonly Reason[] } {
  const scatter = baseline === null || alarm === undefined ? 0 : (200 * baseline.spread) / alarm;
  const percent = Math.min(20, Math.max(LEAST_HYSTERESIS, Math.ceil(scatter)));
  const text =
    percent > LEAST_HYSTERESIS
      ? `${percent} %: two spreads of the baseline, so that its own scatter does not make the contact chatter`
      : `${percent} %, more than two spreads of the baseline where it is known; the published tables of dead bands are for process signals and have no entry for vibration`;
  return { percent, reasons: [{ text, source: COMMON_PRACTICE }] };
}

/** What the rules ask for, before the device. */
export interface Target {
  readonly value: number;
  readonly range: readonly [number, number];
  readonly reasons: readonly Reason[];
}

/** The alarm by the rules. */
export function alarmTarget(base: number | null, { lower, ceilings, kind }: SetpointLimits): Target {
  const limit = { text: lower.text, source: lower.source };
  if (kind === "operation") {
    return { value: lower.value, range: [base ?? 0, lower.value], reasons: [setpointRules["fan limits"], limit] };
  }
  const cap = Math.min(held(1.25 * lower.value), ceilings?.alarm ?? Number.POSITIVE_INFINITY);
  const capReason: Reason =
    cap === ceilings?.alarm
      ? { ...setpointRules["printed ceiling"], source: ceilings.source }
      : setpointRules["alarm cap"];
  if (base === null) {
    const value = Math.min(lower.value, cap);
    return { value, range: [0, cap], reasons: [setpointRules["no baseline"], limit, capReason] };
  }
  const wanted = base + 0.25 * lower.value;
  const reasons = [setpointRules["alarm from baseline"], limit, capReason];
  if (wanted < lower.value) reasons.push(setpointRules["alarm below zone C"]);
  return { value: Math.min(wanted, cap), range: [base, cap], reasons };
}

/** The trip by the rules; null where the standard prints none. */
export function tripTarget({ lower, upper, ceilings, kind }: SetpointLimits): Target | null {
  if (upper === null) return null;
  const limit = { text: upper.text, source: upper.source };
  if (kind === "operation") {
    return { value: upper.value, range: [lower.value, upper.value], reasons: [setpointRules["fan limits"], limit] };
  }
  const cap = Math.min(held(1.25 * upper.value), ceilings?.trip ?? Number.POSITIVE_INFINITY);
  const reasons: Reason[] = [
    setpointRules["trip nature"],
    limit,
    setpointRules["trip proposed"],
    setpointRules["trip cap"],
    ...(ceilings !== null && ceilings.trip <= 1.25 * upper.value
      ? [{ ...setpointRules["printed ceiling"], source: ceilings.source }]
      : []),
  ];
  return { value: Math.min(upper.value, cap), range: [lower.value, cap], reasons };
}
