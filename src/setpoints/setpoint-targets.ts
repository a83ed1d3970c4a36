import { derivedAmplitude, leastAmplitude, multipliedAmplitude } from "../amplitude/index";
import type { Amplitude } from "../reading/index";
import { COMMON_PRACTICE, type Reason, setpointRules } from "./reason";
import type { SetpointLimit, SetpointLimits } from "./setpoint-limits";

/** Least and most hysteresis in percent of the threshold; common practice, no source. */
const LEAST_HYSTERESIS = 5;
const MOST_HYSTERESIS = 20;

/** The hysteresis for an alarm, in percent of it, with its reason; two spreads of the baseline where they are known. */
export function hysteresisFor(
  spread: number | undefined,
  alarm: number | undefined,
): { readonly percent: number; readonly reasons: readonly Reason[] } {
  const scatter = spread === undefined || alarm === undefined ? 0 : (200 * spread) / alarm;
  const percent = Math.min(MOST_HYSTERESIS, Math.max(LEAST_HYSTERESIS, Math.ceil(scatter - 1e-9)));
  const text =
    scatter > MOST_HYSTERESIS
      ? `${percent} %, the most that is proposed: two spreads of the baseline are ${Math.ceil(scatter)} %, so that an off-delay is needed beside it, or the level has to be steadied`
      : percent > LEAST_HYSTERESIS
        ? `${percent} %: two spreads of the baseline, so that its own scatter does not make the contact chatter`
        : `${percent} %, more than two spreads of the baseline where it is known; the published tables of dead bands are for process signals and have no entry for vibration`;
  return { percent, reasons: [{ text, source: COMMON_PRACTICE }] };
}

/** What the rules ask for, before the device. */
export interface Target {
  readonly amplitude: Amplitude;
  readonly range: readonly [number, number];
  readonly reasons: readonly Reason[];
}

/** What the rules allow at most: 1.25 times a limit, and no more than the highest setting of the table; null without. */
function highestFor(
  limit: SetpointLimit,
  ceiling: SetpointLimit | undefined,
): { readonly highest: Amplitude; readonly ofTable: Reason | null } {
  const cap = multipliedAmplitude(limit.amplitude, 1.25, "the most that the rule allows");
  if (ceiling === undefined || ceiling.amplitude.value > cap.value) return { highest: cap, ofTable: null };
  return { highest: ceiling.amplitude, ofTable: { ...setpointRules["printed ceiling"], source: ceiling.source } };
}

/** The most that the rules allow for an alarm or a trip; null where there is no limit for it. */
export function highestOf({ kind, lower, upper, ceilings }: SetpointLimits, name: "alarm" | "trip"): Amplitude | null {
  const limit = name === "alarm" ? lower : upper;
  if (limit === null) return null;
  return kind === "operation" ? limit.amplitude : highestFor(limit, ceilings?.[name]).highest;
}

/** What is wanted, or what is allowed where that is less. */
function withinRules(wanted: Amplitude, highest: Amplitude): Amplitude {
  return wanted.value <= highest.value ? wanted : leastAmplitude([wanted, highest], "no more than the rule allows");
}

/** What the rules allow: from the lowest, or from the highest itself where that is lower. */
function rangeUpTo(highest: Amplitude, lowest: Amplitude | null): readonly [number, number] {
  return [Math.min(lowest?.value ?? 0, highest.value), highest.value];
}

function highestAmplitude(all: readonly (Amplitude | null | undefined)[]): Amplitude | null {
  return all.reduce<Amplitude | null>((most, one) => (one && !(most && most.value >= one.value) ? one : most), null);
}

/** The alarm by the rules. */
export function alarmTarget(
  base: Amplitude | null,
  { lower, ceilings, kind, rule = setpointRules["fan limits"] }: SetpointLimits,
): Target {
  const reason = { text: lower.text, source: lower.source };
  const limit = lower.amplitude;
  if (kind === "operation") {
    const range = rangeUpTo(limit, base);
    return { amplitude: limit, range, reasons: [rule, reason] };
  }
  const { highest, ofTable } = highestFor(lower, ceilings?.alarm);
  const capReason: Reason = ofTable ?? setpointRules["alarm cap"];
  if (base === null) {
    const reasons = [setpointRules["no baseline"], reason, capReason];
    return { amplitude: withinRules(limit, highest), range: [0, highest.value], reasons };
  }
  const quarter = multipliedAmplitude(limit, 0.25, "a quarter of the limit");
  const wanted = derivedAmplitude([base, quarter], base.value + quarter.value, { does: "sum", note: "alarm" });
  const reasons = [setpointRules["alarm from baseline"], reason, capReason];
  if (wanted.value < limit.value) reasons.push(setpointRules["alarm below zone C"]);
  return { amplitude: withinRules(wanted, highest), range: rangeUpTo(highest, base), reasons };
}

/**
 * The trip by the rules; null where the scheme has none.
 *
 * @param below - what a trip has to lie above, for it to come neither at once nor before its alarm
 */
export function tripTarget(
  { lower, upper, ceilings, kind, rule = setpointRules["fan limits"] }: SetpointLimits,
  below: readonly (Amplitude | null | undefined)[],
): Target | null {
  const lowest = highestAmplitude([lower.amplitude, ...below]);
  if (upper === null) return null;
  const reason = { text: upper.text, source: upper.source };
  const limit = upper.amplitude;
  if (kind === "operation") {
    const range = rangeUpTo(limit, lowest);
    return { amplitude: limit, range, reasons: [rule, reason] };
  }
  const { highest, ofTable } = highestFor(upper, ceilings?.trip);
  const reasons: Reason[] = [
    setpointRules["trip nature"],
    reason,
    setpointRules["trip proposed"],
    setpointRules["trip cap"],
    ...(ofTable === null ? [] : [ofTable]),
  ];
  return { amplitude: withinRules(limit, highest), range: rangeUpTo(highest, lowest), reasons };
}
