/**
 * A slow model of a trip channel, written apart from the library: time is a row of whole ticks, and for every tick it
 * looks back over all the ticks before it. No timers, no state machine.
 */
export interface ModelSettings {
  threshold: number;
  /** Percent of the threshold. */
  hysteresis: number;
  /** All times in ticks. */
  onDelay: number;
  offDelay: number;
  inhibit: number;
  factor: number;
  multiplied: number;
  resetsBelow: "threshold" | "reset level";
  fault: "alarm" | "hold" | "bad";
  latching: boolean;
}

export type ModelCommand = "reset" | "start" | "bypass on" | "bypass off" | "power lost" | "power back";

/** A number, a failed sensor, or a loop outside its range. */
export type ModelLevel = number | "fault" | "above range" | "below range";

export interface Stretch {
  /** Carried out at the beginning of the stretch. */
  commands: ModelCommand[];
  level: ModelLevel;
  ticks: number;
}

interface Tick {
  level: ModelLevel;
  powered: boolean;
  bypassed: boolean;
  /** Ticks since power-up or start. */
  age: number;
}

export interface ModelOutcome {
  events: { time: number; event: string }[];
  /** Whether the output was set at the end of each stretch. */
  set: boolean[];
}

export function modelOutcome(settings: ModelSettings, history: readonly Stretch[]): ModelOutcome {
  const resetLevel = settings.threshold - (settings.threshold * settings.hysteresis) / 100;
  const startOver = settings.resetsBelow === "threshold" ? settings.threshold : resetLevel;
  const ticks: Tick[] = [];
  const events: ModelOutcome["events"] = [];
  const set: boolean[] = [];
  let powered = true;
  let bypassed = false;
  let age = 0;
  let on = false;
  /** Ticks before this index no longer matter: the output changed, or a command wiped the timers. */
  let since = 0;

  const failed = ({ level }: Tick) => level === "fault" || level === "below range";
  const skipped = (tick: Tick) => tick.powered && failed(tick) && settings.fault !== "alarm";
  const times = (tick: Tick) => (tick.age < settings.multiplied ? settings.factor : 1);
  const size = ({ level }: Tick) => (typeof level === "number" ? level : Number.POSITIVE_INFINITY);
  const blocked = (tick: Tick) => tick.bypassed || tick.age < settings.inhibit;

  /** How many ticks, looking back from the last, the on-delay has run. */
  function upFor(): number {
    let count = 0;
    let reached = 0;
    for (let k = ticks.length - 1; k >= since; k--) {
      const tick = ticks[k] as Tick;
      if (skipped(tick)) {
        if (settings.fault === "bad") break;
        continue;
      }
      if (!tick.powered || blocked(tick) || size(tick) < startOver * times(tick)) break;
      count++;
      if (size(tick) >= settings.threshold * times(tick)) reached = count;
    }
    return reached;
  }

  /** How many ticks, looking back from the last, the level has been below the reset level. */
  function downFor(): number {
    let count = 0;
    for (let k = ticks.length - 1; k >= since; k--) {
      const tick = ticks[k] as Tick;
      if (skipped(tick)) continue;
      if (!tick.powered || size(tick) >= resetLevel * times(tick)) break;
      count++;
    }
    return count;
  }

  function turn(to: boolean, time: number): void {
    on = to;
    since = ticks.length;
    events.push({ time, event: to ? "trip" : "clear" });
  }

  function obey(name: ModelCommand): void {
    const time = ticks.length;
    const last = ticks[time - 1];
    if (name === "start") age = 0;
    if (name === "bypass on") bypassed = true;
    if (name === "bypass off") bypassed = false;
    if (name === "power lost" && powered) {
      powered = false;
      if (!settings.latching) on = false;
      since = time;
    }
    if (name === "power back" && !powered) {
      powered = true;
      age = 0;
      since = time;
    }
    if (name === "reset") {
      const now = age < settings.multiplied ? settings.factor : 1;
      const below = last !== undefined && size(last) < resetLevel * now;
      const accepted = on && settings.latching && powered && below;
      events.push({ time, event: accepted ? "reset" : "reset refused" });
      if (accepted) {
        on = false;
        since = time;
      }
    }
  }

  for (const { commands, level, ticks: length } of history) {
    for (const name of commands) obey(name);
    for (let k = 0; k < length; k++) {
      const time = ticks.length;
      const tick = { level, powered, bypassed, age };
      ticks.push(tick);
      if (!powered) continue;
      age++;
      if (skipped(tick)) continue;
      if (!on) {
        const run = upFor();
        if (settings.onDelay === 0 && run > 0) turn(true, time);
        else if (settings.onDelay > 0 && run >= settings.onDelay) turn(true, time + 1);
      } else if (!settings.latching) {
        const run = downFor();
        if (settings.offDelay === 0 && run > 0) turn(false, time);
        else if (settings.offDelay > 0 && run >= settings.offDelay) turn(false, time + 1);
      }
    }
    set.push(on);
  }
  return { events, set };
}
