import type { Channel } from "./channel";

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
  const { phase, powered, bypassed, signal, sinceStart } = state;
  if (!powered || bypassed || signal !== "good" || sinceStart < rules.windows) return from;
  if (phase !== "normal" && phase !== "set") return from;
  // an output that latches stays set at any level
  const below = phase === "normal" ? rules.setAt : Number.POSITIVE_INFINITY;
  const least = phase === "set" && !rules.latching ? rules.resetAt : 0;
  const last = levels.length - 1;
  let { base, count, dt } = state;
  let i = from;
  for (; i < last; i++) {
    const level = levels[i] as number;
    const end = times[i + 1] as number;
    // a fault is NaN and fails both
    if (!(level >= least && level < below) || end > until) break;
    const now = base + count * dt;
    const seconds = end - now;
    if (seconds !== dt) {
      base = now;
      count = 0;
      dt = seconds;
    }
    count++;
  }
  if (i === from) return from;
  state.base = base;
  state.count = count;
  state.dt = dt;
  state.level = levels[i - 1] as number;
  return i;
}
