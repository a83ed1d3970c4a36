import { shown, VeladisError } from "../core/index";
import { TOLERANCE, type TripRules } from "../device/index";
import type { RunOptions } from "./run-options";
import { advance, type Emit } from "./trip-advance";
import { command, type TripCommand } from "./trip-commands";
import type { TripEvent } from "./trip-events";
import { scan, takeSignal } from "./trip-scan";
import { type TripState, timeOf } from "./trip-state";

type Commands = readonly TripCommand[];

/** Refuses a command that lies before the history or behind it. */
function checkCommands(commands: Commands, from: number, to: number): void {
  for (const { at } of commands) {
    if (at >= from && at <= to) continue;
    throw new VeladisError("out-of-range", {
      expected: `commands between ${from} s and ${to} s, the times of the history`,
      received: `one at ${at} s`,
    });
  }
}

/**
 * Lets one level stand for some seconds, with the commands that fall within them carried out at their time; one at
 * the very beginning comes before the level.
 */
function stand(
  rules: TripRules,
  state: TripState,
  level: number,
  seconds: number,
  commands: Commands,
  emit: Emit,
): void {
  const end = timeOf(state) + seconds;
  let left = seconds;
  for (const { at, do: name } of commands) {
    const part = Math.min(Math.max(at - (end - left), 0), left);
    if (part > seconds * TOLERANCE) {
      takeSignal(state, level, emit);
      advance(rules, state, part, emit);
      left -= part;
    }
    command(rules, state, name, emit);
  }
  takeSignal(state, level, emit);
  advance(rules, state, left, emit);
}

/** Carries out commands at the present moment: all there is to a history without levels. */
function obey(rules: TripRules, state: TripState, commands: Commands, emit: Emit): void {
  checkCommands(commands, timeOf(state), timeOf(state));
  for (const { do: name } of commands) command(rules, state, name, emit);
}

/** Levels that stand `dt` seconds each. */
function playEven(
  rules: TripRules,
  state: TripState,
  levels: Float64Array,
  dt: number,
  commands: Commands,
  emit: Emit,
  { excursions = false, nan }: RunOptions,
): void {
  if (levels.length === 0) {
    obey(rules, state, commands, emit);
    return;
  }
  const start = timeOf(state);
  checkCommands(commands, start, start + levels.length * dt);
  const stretch = { levels, from: 0, to: levels.length, dt, excursions, faults: nan !== undefined };
  const last = levels.length - 1;
  /** The level that stands at a command's time; the new one at a boundary, within float noise. */
  const indexOf = ({ at }: TripCommand): number => Math.min(Math.floor((at - start) / dt + TOLERANCE), last);
  let i = 0;
  let next = 0;
  while (next < commands.length) {
    const index = indexOf(commands[next] as TripCommand);
    const first = next;
    while (next < commands.length && indexOf(commands[next] as TripCommand) <= index) next++;
    scan(rules, state, { ...stretch, from: i, to: index }, emit);
    stand(rules, state, levels[index] as number, dt, commands.slice(first, next), emit);
    i = index + 1;
  }
  scan(rules, state, { ...stretch, from: i }, emit);
}

/** The times, checked: as many as levels, finite, never falling, not before the clock. */
function checkTimes(levels: Float64Array, times: ArrayLike<number>, clock: number): void {
  if (times.length !== levels.length) {
    throw new VeladisError("length-mismatch", {
      expected: `${levels.length} times, one a level`,
      received: shown(times.length),
    });
  }
  let last = clock;
  for (let i = 0; i < times.length; i++) {
    const time = times[i] as number;
    if (typeof time === "number" && time >= last && time < Number.POSITIVE_INFINITY) last = time;
    else {
      throw new VeladisError("out-of-range", {
        expected: `a time of ${last} s or more at index ${i}, since times never fall`,
        received: shown(time),
      });
    }
  }
}

/** Levels that stand until the time of the next. */
function playTimed(
  rules: TripRules,
  state: TripState,
  levels: Float64Array,
  times: ArrayLike<number>,
  commands: Commands,
  emit: Emit,
): void {
  const fresh = state.signal === "none" && timeOf(state) === 0;
  checkTimes(levels, times, fresh ? Number.NEGATIVE_INFINITY : timeOf(state));
  if (levels.length === 0) {
    obey(rules, state, commands, emit);
    return;
  }
  if (fresh) state.base = times[0] as number;
  checkCommands(commands, timeOf(state), times[times.length - 1] as number);
  let next = 0;
  const due = (until: number): Commands => {
    const first = next;
    while (next < commands.length && (commands[next] as TripCommand).at < until) next++;
    return commands.slice(first, next);
  };
  const gap = (times[0] as number) - timeOf(state);
  if (gap > 0) {
    const last = state.signal === "fault" ? Number.NaN : state.level;
    stand(rules, state, last, gap, due(times[0] as number), emit);
  }
  for (let i = 0; i < levels.length; i++) {
    const end = times[i + 1] ?? Number.POSITIVE_INFINITY;
    const seconds = end === Number.POSITIVE_INFINITY ? 0 : end - timeOf(state);
    stand(rules, state, levels[i] as number, seconds, due(end), emit);
  }
}

/** Carries a history through the state, which it changes, and returns what happened. */
export function play(
  rules: TripRules,
  state: TripState,
  levels: Float64Array,
  dt: number | ArrayLike<number>,
  commands: Commands,
  options: RunOptions,
): TripEvent[] {
  const events: TripEvent[] = [];
  const emit: Emit = options.excursions
    ? (event) => events.push(event)
    : (event) => event.event !== "timing" && event.event !== "rode out" && events.push(event);
  if (typeof dt === "number") playEven(rules, state, levels, dt, commands, emit, options);
  else playTimed(rules, state, levels, dt, commands, emit);
  return events;
}
