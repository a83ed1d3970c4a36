import { TOLERANCE, type TripRules } from "../device/index";
import type { TripEvent, TripEventName } from "./trip-events";
import { factorNow, isHeld, isInhibited, isSet, remaining, type TripState, tick, timeOf } from "./trip-state";

/** Where events go. */
export type Emit = (event: TripEvent) => void;

/** Notes an event of a channel, and the first-out with it. */
export function note(
  state: TripState,
  time: number,
  event: TripEventName,
  emit: Emit,
  cause?: TripEvent["cause"],
  reason?: string,
): void {
  const level = state.signal === "good" ? state.level : null;
  const happened: TripEvent =
    cause !== undefined
      ? { time, event, level, cause }
      : reason !== undefined
        ? { time, event, level, reason }
        : { time, event, level };
  if (event === "trip") state.firstOut = happened;
  if (event === "clear" || event === "reset") state.firstOut = null;
  emit(happened);
}

/** Changes the phase and starts its timer. */
function enter(state: TripState, phase: TripState["phase"]): void {
  state.phase = phase;
  state.timer = 0;
}

/** Sets or clears the output once its delay has run. */
function expire(rules: TripRules, state: TripState, time: number, emit: Emit): void {
  if (state.phase === "timing" && remaining(rules.onDelay, state.timer) === 0) {
    enter(state, "set");
    note(state, time, "trip", emit, state.signal === "fault" ? "sensor fault" : "level");
  } else if (state.phase === "clearing" && remaining(rules.offDelay, state.timer) === 0) {
    enter(state, "normal");
    note(state, time, "clear", emit);
  }
}

/** Makes all changes that take no time. */
function settle(rules: TripRules, state: TripState, time: number, emit: Emit): void {
  if (!state.powered) return;
  if (isHeld(rules, state)) {
    if (state.phase === "timing" && rules.sensorFault === "bad") {
      enter(state, "normal");
      note(state, time, "rode out", emit);
    }
    return;
  }
  const factor = factorNow(rules, state);
  const level = state.signal === "fault" ? Number.POSITIVE_INFINITY : state.level;
  const blocked = state.bypassed || isInhibited(rules, state);
  const { phase } = state;
  if (phase === "normal" && !blocked && level >= rules.setAt * factor) {
    enter(state, "timing");
    note(state, time, "timing", emit);
  } else if (phase === "timing" && (blocked || level < rules.startOverAt * factor)) {
    enter(state, "normal");
    note(state, time, "rode out", emit);
  } else if (phase === "set" && !rules.latching && level < rules.resetAt * factor) {
    enter(state, "clearing");
  } else if (phase === "clearing" && level >= rules.resetAt * factor) {
    enter(state, "set");
  }
  expire(rules, state, time, emit);
}

/** Seconds until something can change while the level stays, at most `most`. */
function untilChange(rules: TripRules, state: TripState, most: number): number {
  let next = most;
  if (state.sinceStart < rules.windows) {
    for (const window of [rules.inhibit, rules.multiplied]) {
      const left = remaining(window, state.sinceStart);
      if (left > 0) next = Math.min(next, left);
    }
  }
  if (isHeld(rules, state)) return next;
  if (state.phase === "timing") return Math.min(next, remaining(rules.onDelay, state.timer));
  if (state.phase === "clearing") return Math.min(next, remaining(rules.offDelay, state.timer));
  return next;
}

/**
 * Lets the present signal stand for some seconds.
 *
 * Within the step the state moves from one expiry to the next, so that a step may be split anywhere without
 * changing the outcome. A delay that ends with the step has run; a start-up window that ends with the step leaves
 * the moment behind it to the next one.
 */
export function advance(rules: TripRules, state: TripState, seconds: number, emit: Emit): void {
  let time = timeOf(state);
  let left = seconds;
  // What float noise leaves over when a window or a delay ends with the step.
  const noise = TOLERANCE * Math.max(seconds, rules.windows);
  settle(rules, state, time, emit);
  while (left > 0) {
    const span = untilChange(rules, state, left);
    // a device without power has lost its timers, and its windows begin anew with the power
    if (state.sinceStart < rules.windows) state.sinceStart += span;
    if (!isHeld(rules, state) && (state.phase === "timing" || state.phase === "clearing")) state.timer += span;
    time += span;
    left = left - span > noise ? left - span : 0;
    // A delay that has run counts before whatever else changes at the same moment.
    if (!isHeld(rules, state)) expire(rules, state, time, emit);
    if (left > 0) settle(rules, state, time, emit);
  }
  tick(state, seconds);
}

/** Why a reset by hand is refused at present, or undefined when it is not. */
export function refusal(rules: TripRules, state: TripState): string | undefined {
  if (!isSet(state)) return "there is nothing to reset";
  if (!rules.latching) return "the output does not latch; it clears by itself";
  if (!state.powered) return "the device has no power";
  if (state.signal !== "good") return "there is no good signal to show that the level is below the reset level";
  if (state.level >= rules.resetAt * factorNow(rules, state)) return "the level is not below the reset level";
  return undefined;
}
