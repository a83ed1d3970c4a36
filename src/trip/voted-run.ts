import { commandsBefore, evenIndex, lastWith, requireWithin } from "./command-times";
import { requireTimes } from "./require-times";
import { takeSignal } from "./trip-scan";
import { timeOf } from "./trip-state";
import { advanceTogether, type Votes } from "./voted-advance";
import type { VotedChannel } from "./voted-channels";
import type { VotedCommand } from "./voted-commands";

type Commands = readonly VotedCommand[];

/** Histories of all channels in the units of their thresholds, every level checked, and what is done while they run. */
export interface VotedHistory {
  /** A column a channel, in their order, equally long. */
  readonly columns: readonly Float64Array[];
  readonly dt: number | ArrayLike<number>;
  /** In order of time. */
  readonly commands: Commands;
}

/** The channels at work, and what is done with them. */
export interface VotedWork {
  readonly channels: readonly VotedChannel[];
  readonly votes: Votes;
  readonly apply: (command: VotedCommand) => void;
}

/** The clock of all channels. */
function clockOf({ channels }: VotedWork): number {
  return timeOf((channels[0] as VotedChannel).state);
}

/** Lets a row of levels last for some seconds, with the commands that fall within carried out at their time. */
function applyRow(work: VotedWork, take: () => void, seconds: number, commands: Commands): void {
  const last = (part: number): void => {
    take();
    advanceTogether(work.channels, part, work.votes);
  };
  lastWith({ from: clockOf(work), seconds }, commands, last, work.apply);
}

/** Gives every channel its level of a row. */
function levelSetter({ channels }: VotedWork, columns: readonly Float64Array[]): (row: number) => () => void {
  return (row) => () => {
    for (const [i, channel] of channels.entries()) takeSignal(channel, columns[i]?.[row] as number);
  };
}

function runEven(work: VotedWork, { columns, commands }: VotedHistory, dt: number, length: number): void {
  const start = clockOf(work);
  const indexOf = evenIndex(start, dt, length - 1);
  const take = levelSetter(work, columns);
  let next = 0;
  for (let row = 0; row < length; row++) {
    const first = next;
    while (next < commands.length && indexOf(commands[next] as VotedCommand) <= row) next++;
    applyRow(work, take(row), dt, commands.slice(first, next));
  }
}

/** Lets the last levels last until a time. */
function extendUntil(work: VotedWork, seconds: number, commands: Commands): void {
  const last = work.channels.map(({ state }) => ({ ...state }));
  const take = (): void => {
    for (const [i, channel] of work.channels.entries()) {
      const { signal, level } = last[i] as VotedChannel["state"];
      takeSignal(channel, signal === "fault" ? Number.NaN : level, signal === "above range");
    }
  };
  applyRow(work, take, seconds, commands);
}

function runTimed(work: VotedWork, { columns, commands }: VotedHistory, times: ArrayLike<number>): void {
  const { channels } = work;
  const length = times.length;
  const first = times[0] as number;
  if (isFresh(work)) for (const { state } of channels) state.base = first;
  const due = commandsBefore(commands);
  const gap = first - clockOf(work);
  if (gap > 0) extendUntil(work, gap, due(first));
  const take = levelSetter(work, columns);
  for (let row = 0; row < length; row++) {
    const end = times[row + 1] ?? Number.POSITIVE_INFINITY;
    applyRow(work, take(row), end === Number.POSITIVE_INFINITY ? 0 : end - clockOf(work), due(end));
  }
}

/** From when to when a history with times reaches: a fresh logic takes the first as its own. */
function spanOf(work: VotedWork, times: ArrayLike<number>): [from: number, to: number] {
  return [isFresh(work) ? (times[0] as number) : clockOf(work), times[times.length - 1] as number];
}

/** Whether no channel has had a level yet. */
function isFresh(work: VotedWork): boolean {
  return clockOf(work) === 0 && work.channels.every(({ state }) => state.signal === "none");
}

/**
 * Runs histories through the channels, whose states it changes.
 *
 * @param begin - called once nothing can be refused any more
 */
export function runVotedHistory(work: VotedWork, history: VotedHistory, begin: () => void): void {
  const { columns, dt, commands } = history;
  const length = columns[0]?.length ?? 0;
  const now = clockOf(work);
  if (typeof dt !== "number") {
    requireTimes(columns[0] as Float64Array, dt, isFresh(work) ? Number.NEGATIVE_INFINITY : now);
  }
  const [from, to] = length === 0 ? [now, now] : typeof dt === "number" ? [now, now + length * dt] : spanOf(work, dt);
  requireWithin(commands, from, to);
  begin();
  if (length === 0) {
    for (const command of commands) work.apply(command);
    work.votes.begun(now);
  } else if (typeof dt === "number") runEven(work, history, dt, length);
  else runTimed(work, history, dt);
}
