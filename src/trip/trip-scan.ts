import { TIME_TOLERANCE } from "../device/index";
import { type Channel, recordEvent } from "./channel";
import { firstAtOrAbove, firstBelow, firstFault, firstRun, type Stretch } from "./level-search";
import { advance } from "./trip-advance";
import type { TripEventName } from "./trip-events";
import { remaining, timeOf } from "./trip-state";

/**
 * Gives the channel the signal of one level; NaN is a sensor fault.
 *
 * @param above - whether the signal is above the range of its loop
 * @param reason - why it is a fault, where that is known
 */
export function takeSignal(channel: Channel, level: number, above = false, reason?: string): void {
  const { state } = channel;
  const before = state.signal;
  state.signal = Number.isNaN(level) ? "fault" : above ? "above range" : "good";
  if (state.signal !== "fault") state.level = level;
  if (state.signal === before) return;
  const time = timeOf(state);
  if (state.signal === "fault") {
    recordEvent(channel, time, "fault", reason);
    return;
  }
  if (before === "fault") recordEvent(channel, time, "fault over");
  if (state.signal === "above range") recordEvent(channel, time, "above range");
  else if (before === "above range") recordEvent(channel, time, "in range");
}

/** Records an event at a level that a scan has come to. */
function recordAt(channel: Channel, level: number, time: number, event: TripEventName): void {
  channel.state.level = level;
  recordEvent(channel, time, event, event === "trip" ? "level" : undefined);
}

/** Length of a run from which looking for whole runs is faster than looking at every level. */
const WORTHWHILE = 4;

/**
 * {@link advance} for good levels outside the start-up windows, over as many as there are; stops before a fault.
 *
 * Each phase is a loop over the levels that leave it as it is. Times and timers are summed as `advance` sums them, so
 * that the outcome is the same to the last bit.
 *
 * @returns index of the first level not taken
 */
function scanPlain(channel: Channel, stretch: Stretch, from: number): number {
  const { rules, state } = channel;
  const { levels, to, dt, excursions, faults } = stretch;
  const { setAt, resetAt, startOverAt, onDelay, offDelay, latching } = rules;
  const longEnough = onDelay - onDelay * TIME_TOLERANCE;
  const longEnoughOff = offDelay - offDelay * TIME_TOLERANCE;
  // No trip without so many levels in a row, float noise allowed for.
  const needed = excursions || faults ? 0 : Math.ceil((onDelay / dt) * (1 - 1e-6));
  const { base } = state;
  const before = state.count - from;
  let { phase, timer } = state;
  let i = from;
  while (i < to) {
    if (phase === "normal") {
      if (needed >= WORTHWHILE) i = firstRun(stretch, i, startOverAt, needed);
      i = firstAtOrAbove(stretch, i, setAt);
      if (i === to || Number.isNaN(levels[i] as number)) break;
      if (excursions) recordAt(channel, levels[i] as number, base + (before + i) * dt, "timing");
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
        recordAt(channel, levels[i] as number, base + (before + i) * dt + late, "trip");
        phase = "set";
        i++;
      } else {
        if (excursions) recordAt(channel, levels[i] as number, base + (before + i) * dt, "rode out");
        phase = "normal";
      }
    } else if (phase === "set") {
      if (latching) i = faults ? firstFault(stretch, i) : to;
      else i = firstBelow(stretch, i, resetAt);
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
        recordAt(channel, levels[i] as number, base + (before + i) * dt + late, "clear");
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

/** Lets each of evenly spaced levels last for its time, with the outcome of {@link advance} for each. */
export function scan(channel: Channel, stretch: Stretch): void {
  const { rules, state } = channel;
  const { levels, from, to, dt } = stretch;
  let i = from;
  while (i < to) {
    const plain = state.powered && !state.bypassed && state.signal === "good" && state.dt === dt;
    if (plain && !(state.sinceStart < rules.windows)) {
      i = scanPlain(channel, stretch, i);
      if (i === to) return;
    }
    takeSignal(channel, levels[i] as number);
    advance(channel, dt);
    i++;
  }
}
