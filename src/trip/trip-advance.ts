import { TIME_TOLERANCE, type TripRules } from "../device/index";
import { type Channel, recordEvent } from "./channel";
import {
  causeOf,
  factorNow,
  isBlockedByFault,
  isInhibited,
  levelNow,
  remaining,
  type TripState,
  tick,
  timeOf,
} from "./trip-state";

/** Changes the phase and starts its timer. */
function enter(state: TripState, phase: TripState["phase"]): void {
  state.phase = phase;
  state.timer = 0;
}

/** Sets or clears the output once its delay has run. */
function expire(channel: Channel, time: number): void {
  const { rules, state } = channel;
  if (state.phase === "timing" && remaining(rules.onDelay, state.timer) === 0) {
    enter(state, "set");
    recordEvent(channel, time, "trip", causeOf(state));
  } else if (state.phase === "clearing" && remaining(rules.offDelay, state.timer) === 0) {
    enter(state, "normal");
    recordEvent(channel, time, "clear");
  }
}

/** Lets run out what has run its time; while a sensor fault holds the channel, nothing does. */
export function runOut(channel: Channel, time: number): void {
  if (!isBlockedByFault(channel.rules, channel.state)) expire(channel, time);
}

/** Makes all changes that take no time. */
export function transition(channel: Channel, time: number): void {
  const { rules, state } = channel;
  if (!state.powered) return;
  if (isBlockedByFault(rules, state)) {
    if (state.phase === "timing" && rules.sensorFault === "bad") {
      enter(state, "normal");
      recordEvent(channel, time, "rode out");
    }
    return;
  }
  const factor = factorNow(rules, state);
  const level = levelNow(state);
  const blocked = state.bypassed || isInhibited(rules, state);
  const { phase } = state;
  if (phase === "normal" && !blocked && level >= rules.setAt * factor) {
    enter(state, "timing");
    recordEvent(channel, time, "timing");
  } else if (phase === "timing" && (blocked || level < rules.startOverAt * factor)) {
    enter(state, "normal");
    recordEvent(channel, time, "rode out");
  } else if (phase === "set" && !rules.latching && level < rules.resetAt * factor) {
    enter(state, "clearing");
  } else if (phase === "clearing" && level >= rules.resetAt * factor) {
    enter(state, "set");
  }
  expire(channel, time);
}

/** Seconds until something can change while the level stays, at most `most`. */
export function untilChange({ rules, state }: Channel, most: number): number {
  let next = most;
  if (state.sinceStart < rules.windows) {
    for (const window of [rules.inhibit, rules.multiplied]) {
      const left = remaining(window, state.sinceStart);
      if (left > 0) next = Math.min(next, left);
    }
  }
  if (isBlockedByFault(rules, state)) return next;
  if (state.phase === "timing") return Math.min(next, remaining(rules.onDelay, state.timer));
  if (state.phase === "clearing") return Math.min(next, remaining(rules.offDelay, state.timer));
  return next;
}

/** Lets windows and delays run on by a span in which nothing changes. */
export function runOn({ rules, state }: Channel, span: number): void {
  // a device without power has lost its timers, and its windows begin anew with the power
  if (state.sinceStart < rules.windows) state.sinceStart = Math.min(state.sinceStart + span, rules.windows);
  if (!isBlockedByFault(rules, state) && (state.phase === "timing" || state.phase === "clearing")) state.timer += span;
}

/** What float noise leaves over of a time when a window or a delay ends with it. */
export function spanNoise({ windows }: TripRules, seconds: number): number {
  return TIME_TOLERANCE * Math.max(seconds, windows);
}

/**
 * Lets the present signal last for some seconds.
 *
 * Within the step the state moves from one expiry to the next, so that a step may be split anywhere without
 * changing the outcome. A delay that ends with the step has run; a start-up window that ends with the step leaves
 * the moment behind it to the next one.
 */
export function advance(channel: Channel, seconds: number): void {
  const { rules, state } = channel;
  let time = timeOf(state);
  let left = seconds;
  const noise = spanNoise(rules, seconds);
  transition(channel, time);
  while (left > 0) {
    const span = untilChange(channel, left);
    runOn(channel, span);
    time += span;
    left = left - span > noise ? left - span : 0;
    // A delay that has run counts before whatever else changes at the same moment.
    runOut(channel, time);
    if (left > 0) transition(channel, time);
  }
  tick(state, seconds);
}
