import { TOLERANCE, type TripRules } from "../device/index";
import { advance, type Emit, note } from "./trip-advance";
import type { TripEventName } from "./trip-events";
import { remaining, type TripState, timeOf } from "./trip-state";

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

/** Notes an event at a level that a scan has come to. */
function noteAt(state: TripState, level: number, time: number, event: TripEventName, emit: Emit): void {
  state.level = level;
  note(state, time, event, emit, event === "trip" ? "level" : undefined);
}

/** Length of a run from which looking for whole runs is faster than looking at every level. */
const WORTHWHILE = 4;

/** A stretch of evenly spaced levels, and how they are to be read. */
export interface Stretch {
  readonly levels: Float64Array;
  readonly from: number;
  readonly to: number;
  /** Seconds that each level stands. */
  readonly dt: number;
  /** Whether the start and the end of every on-delay is reported. */
  readonly excursions: boolean;
  /** Whether there may be NaN among the levels. */
  readonly faults: boolean;
}

/**
 * {@link advance} for good levels outside the start-up windows, over as many as there are; stops before a fault.
 *
 * Each phase is a loop over the levels that leave it as it is. Times and timers are summed as `advance` sums them, so
 * that the outcome is the same to the last bit.
 *
 * @returns index of the first level not taken
 */
function scanPlain(rules: TripRules, state: TripState, stretch: Stretch, from: number, emit: Emit): number {
  const { levels, to, dt, excursions, faults } = stretch;
  const { setAt, resetAt, startOverAt, onDelay, offDelay, latching } = rules;
  const longEnough = onDelay - onDelay * TOLERANCE;
  const longEnoughOff = offDelay - offDelay * TOLERANCE;
  // No trip without so many levels in a row, float noise allowed for.
  const needed = excursions || faults ? 0 : Math.ceil((onDelay / dt) * (1 - 1e-6));
  const { base } = state;
  const before = state.count - from;
  let { phase, timer } = state;
  let i = from;
  while (i < to) {
    if (phase === "normal") {
      if (needed >= WORTHWHILE) i = firstRun(levels, i, to, startOverAt, needed);
      i = firstAtOrAbove(levels, i, to, setAt);
      if (i === to || Number.isNaN(levels[i] as number)) break;
      if (excursions) noteAt(state, levels[i] as number, base + (before + i) * dt, "timing", emit);
      phase = "timing";
      timer = 0;
    }
    if (phase === "timing") {
      while (i < to && (levels[i] as number) >= startOverAt && timer + dt < longEnough) {
        timer += dt;
        i++;
      }
      if (i === to || Number.isNaN(levels[i] as number)) break;
      if ((levels[i] as number) >= startOverAt) {
        const late = Math.min(dt, remaining(onDelay, timer));
        noteAt(state, levels[i] as number, base + (before + i) * dt + late, "trip", emit);
        phase = "set";
        i++;
      } else {
        if (excursions) noteAt(state, levels[i] as number, base + (before + i) * dt, "rode out", emit);
        phase = "normal";
      }
    } else if (phase === "set") {
      if (latching) i = faults ? firstFault(levels, i, to) : to;
      else i = firstBelow(levels, i, to, resetAt);
      if (i === to || Number.isNaN(levels[i] as number)) break;
      phase = "clearing";
    } else {
      while (i < to && (levels[i] as number) < resetAt && timer + dt < longEnoughOff) {
        timer += dt;
        i++;
      }
      if (i === to || Number.isNaN(levels[i] as number)) break;
      if ((levels[i] as number) < resetAt) {
        const late = Math.min(dt, remaining(offDelay, timer));
        noteAt(state, levels[i] as number, base + (before + i) * dt + late, "clear", emit);
        phase = "normal";
        i++;
      } else phase = "set";
    }
    timer = 0;
  }
  state.phase = phase;
  state.timer = timer;
  state.count = before + i;
  if (i > from) state.level = levels[i - 1] as number;
  return i;
}

/** Lets each of evenly spaced levels stand for its time, with the outcome of {@link advance} for each. */
export function scan(rules: TripRules, state: TripState, stretch: Stretch, emit: Emit): void {
  const { levels, from, to, dt } = stretch;
  let i = from;
  while (i < to) {
    const plain = state.powered && !state.bypassed && state.signal === "good" && state.dt === dt;
    if (plain && !(state.sinceStart < rules.windows)) {
      i = scanPlain(rules, state, stretch, i, emit);
      if (i === to) return;
    }
    takeSignal(state, levels[i] as number, emit);
    advance(rules, state, dt, emit);
    i++;
  }
}
