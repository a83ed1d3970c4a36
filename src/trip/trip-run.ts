import type { Channel } from "./channel";
import { commandsBefore, evenIndex, lastWith, requireWithin } from "./command-times";
import { quietRows } from "./quiet-rows";
import { requireTimes } from "./require-times";
import type { RunOptions } from "./run-options";
import { advance } from "./trip-advance";
import { applyCommand, type TripCommand } from "./trip-commands";
import type { TripEvent } from "./trip-events";
import { scan, takeSignal } from "./trip-scan";
import { timeOf } from "./trip-state";

type Commands = readonly TripCommand[];

/** A history of levels in the unit of the threshold, every one checked, and what is done while it runs. */
export interface History {
  readonly levels: Float64Array;
  /** Seconds that each level lasts, or the times at which they begin. */
  readonly dt: number | ArrayLike<number>;
  /** In order of time. */
  readonly commands: Commands;
  readonly options: RunOptions;
}

/** A level of a run: NaN for a sensor fault, and whether it is above the range of its loop. */
interface RunLevel {
  readonly level: number;
  readonly above: boolean;
}

/** Lets one level last for some seconds, with the commands that fall within them carried out at their time. */
function applyLevel(channel: Channel, { level, above }: RunLevel, seconds: number, commands: Commands): void {
  const last = (part: number): void => {
    takeSignal(channel, level, above);
    advance(channel, part);
  };
  lastWith({ from: timeOf(channel.state), seconds }, commands, last, ({ do: name }) => applyCommand(channel, name));
}

/** Carries out commands at the present moment: all there is to a history without levels. */
function applyCommands(channel: Channel, commands: Commands): void {
  requireWithin(commands, timeOf(channel.state), timeOf(channel.state));
  for (const { do: name } of commands) applyCommand(channel, name);
}

/** Runs levels that last `dt` seconds each. */
function runEven(channel: Channel, { levels, commands, options }: History, dt: number): void {
  const { excursions = false, nan } = options;
  const start = timeOf(channel.state);
  requireWithin(commands, start, start + levels.length * dt);
  const stretch = { levels, from: 0, to: levels.length, dt, excursions, faults: nan !== undefined };
  const indexOf = evenIndex(start, dt, levels.length - 1);
  let i = 0;
  let next = 0;
  while (next < commands.length) {
    const index = indexOf(commands[next] as TripCommand);
    const first = next;
    while (next < commands.length && indexOf(commands[next] as TripCommand) <= index) next++;
    scan(channel, { ...stretch, from: i, to: index });
    applyLevel(channel, { level: levels[index] as number, above: false }, dt, commands.slice(first, next));
    i = index + 1;
  }
  scan(channel, { ...stretch, from: i });
}

/** Runs levels that last until the time of the next. */
function runTimed(channel: Channel, { levels, commands }: History, times: ArrayLike<number>): void {
  const { state } = channel;
  if (state.signal === "none" && timeOf(state) === 0) state.base = times[0] as number;
  requireWithin(commands, timeOf(state), times[times.length - 1] as number);
  const due = commandsBefore(commands);
  const gap = (times[0] as number) - timeOf(state);
  if (gap > 0) {
    const level = state.signal === "fault" ? Number.NaN : state.level;
    applyLevel(channel, { level, above: state.signal === "above range" }, gap, due(times[0] as number));
  }
  let next = 0;
  for (let i = 0; i < levels.length; i++) {
    const until = commands[next]?.time ?? Number.POSITIVE_INFINITY;
    i = quietRows(channel, levels, times, { from: i, until });
    const end = times[i + 1] ?? Number.POSITIVE_INFINITY;
    while (next < commands.length && (commands[next] as TripCommand).time < end) next++;
    const seconds = end === Number.POSITIVE_INFINITY ? 0 : end - timeOf(state);
    applyLevel(channel, { level: levels[i] as number, above: false }, seconds, due(end));
  }
}

/** Runs a history through a channel, whose state it changes, and returns what happened. */
export function runHistory({ rules, state }: Omit<Channel, "emit">, history: History): TripEvent[] {
  const { levels, dt, commands, options } = history;
  const events: TripEvent[] = [];
  const emit = options.excursions
    ? (event: TripEvent) => events.push(event)
    : (event: TripEvent) => event.event !== "timing" && event.event !== "rode out" && events.push(event);
  const channel: Channel = { rules, state, emit };
  if (typeof dt !== "number") {
    const isFresh = state.signal === "none" && timeOf(state) === 0;
    requireTimes(levels, dt, isFresh ? Number.NEGATIVE_INFINITY : timeOf(state));
  }
  if (levels.length === 0) applyCommands(channel, commands);
  else if (typeof dt === "number") runEven(channel, history, dt);
  else runTimed(channel, history, dt);
  return events;
}
