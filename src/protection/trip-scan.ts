import { advance, type Emit } from "./trip-advance";
import { TOLERANCE, type TripRules } from "./trip-rules";
import { type TripState, timeOf } from "./trip-state";

/** Index of the first level at or above a limit, or `to`. */
function firstAtOrAbove(levels: Float64Array, from: number, to: number, limit: number): number {
  let i = from;
  for (; i + 8 <= to; i += 8) {
    if (
      !(
        (levels[i] as number) < limit &&
        (levels[i + 1] as number) < limit &&
        (levels[i + 2] as number) < limit &&
        (levels[i + 3] as number) < limit &&
        (levels[i + 4] as number) < limit &&
        (levels[i + 5] as number) < limit &&
        (levels[i + 6] as number) < limit &&
        (levels[i + 7] as number) < limit
      )
    )
      break;
  }
  while (i < to && (levels[i] as number) < limit) i++;
  return i;
}

/**
 * Index at which the first unbroken run of `length` levels at or above a limit begins, or a shorter one that reaches
 * `to`; `to` when there is none.
 *
 * Looks from the far end of each candidate, so that most levels need no look.
 */
function firstRun(levels: Float64Array, from: number, to: number, limit: number, length: number): number {
  let start = from;
  while (start < to) {
    let i = Math.min(start + length, to) - 1;
    while (i >= start && (levels[i] as number) >= limit) i--;
    if (i < start) return start;
    start = i + 1;
  }
  return to;
}

/** Index of the first level below a limit or without a value, or `to`. */
function firstBelow(levels: Float64Array, from: number, to: number, limit: number): number {
  let i = from;
  while (i < to && (levels[i] as number) >= limit) i++;
  return i;
}

/** Index of the first level without a value, or `to`. */
function firstFault(levels: Float64Array, from: number, to: number): number {
  let i = from;
  while (i < to && !Number.isNaN(levels[i] as number)) i++;
  return i;
}

/** Gives the state the signal of one level; NaN is a sensor fault. */
export function takeSignal(state: TripState, level: number, emit: Emit): void {
  const before = state.signal;
  state.signal = Number.isNaN(level) ? "fault" : "good";
  if (state.signal === "good") state.level = level;
  if (state.signal === before) return;
  if (state.signal === "fault") emit({ time: timeOf(state), event: "fault", level: null });
  else if (before === "fault") emit({ time: timeOf(state), event: "fault over", level });
}

/**
 * Lets each of evenly spaced levels stand for `dt` seconds, with the outcome of {@link advance} for each.
 *
 * Stretches in which nothing can change are scanned; every change is left to `advance`.
 *
 * @param excursions - whether the start and the end of every on-delay is reported
 * @param faults - whether there may be NaN among the levels
 */
export function scan(
  rules: TripRules,
  state: TripState,
  levels: Float64Array,
  from: number,
  to: number,
  dt: number,
  emit: Emit,
  excursions: boolean,
  faults: boolean,
): void {
  const { setAt, resetAt, startOverAt, onDelay } = rules;
  const enough = onDelay - onDelay * TOLERANCE;
  // No trip without so many levels in a row; a few less than the delay holds, for float noise.
  const needed = excursions || faults ? 0 : Math.floor((onDelay / dt) * (1 - 1e-6)) - 2;
  let i = from;
  while (i < to) {
    const start = i;
    const plain =
      state.powered &&
      !state.bypassed &&
      state.signal === "good" &&
      state.dt === dt &&
      !(state.sinceStart < rules.windows);
    if (plain && state.phase === "normal") {
      if (needed >= 8) i = firstRun(levels, i, to, startOverAt, needed);
      i = firstAtOrAbove(levels, i, to, setAt);
      if (!excursions && onDelay > 0) {
        // Excursions that ride the delay out leave no trace, so they are counted here.
        while (i < to && (levels[i] as number) >= setAt) {
          const began = i;
          let timer = 0;
          while (i < to && (levels[i] as number) >= startOverAt && timer + dt < enough) {
            timer += dt;
            i++;
          }
          if (i === to || (levels[i] as number) >= startOverAt || Number.isNaN(levels[i] as number)) {
            i = began;
            break;
          }
          if (needed >= 8) i = firstRun(levels, i, to, startOverAt, needed);
          i = firstAtOrAbove(levels, i, to, setAt);
        }
      }
    } else if (plain && state.phase === "timing") {
      let timer = state.timer;
      while (i < to && (levels[i] as number) >= startOverAt && timer + dt < enough) {
        timer += dt;
        i++;
      }
      state.timer = timer;
    } else if (plain && state.phase === "set") {
      if (!rules.latching) i = firstBelow(levels, i, to, resetAt);
      else i = faults ? firstFault(levels, i, to) : to;
    }
    if (i > start) {
      state.count += i - start;
      state.level = levels[i - 1] as number;
      if (i === to) return;
    }
    takeSignal(state, levels[i] as number, emit);
    advance(rules, state, dt, emit);
    i++;
  }
}
