import type { Channel } from "./channel";
import { tick, timeOf } from "./trip-state";

/**
 * Passes over rows of a history with times that change nothing but the clock: a good level that leaves phase and timers as
 * they are, with power, no bypass and no start-up window. The clock is moved row by row as `tick` moves it, so that the
 * outcome is the same to the last bit.
 *
 * @param from - index of the first row
 * @param until - the time of the next command: a row that reaches beyond it is not taken
 * @returns index of the first row not taken; the last row, which has no end, never is
 */
export function quietRows(
  { rules, state }: Channel,
  levels: Float64Array,
  times: ArrayLike<number>,
  { from, until }: { readonly from: number; readonly until: number },
): number {
  const { phase } = state;
  const isSet = phase === "set";
  if (!state.powered || state.bypassed || state.signal !== "good" || state.sinceStart < rules.windows) return from;
  if (!isSet && phase !== "normal") return from;
  // an output that latches stays set at any level
  const below = isSet ? Number.POSITIVE_INFINITY : rules.setAt;
  const least = isSet && !rules.latching ? rules.resetAt : 0;
  let i = from;
  for (; i < levels.length - 1; i++) {
    const level = levels[i] as number;
    const end = times[i + 1] as number;
    // a fault is NaN and fails both
    if (!(level >= least && level < below) || end > until) break;
    tick(state, end - timeOf(state));
    state.level = level;
  }
  return i;
}
