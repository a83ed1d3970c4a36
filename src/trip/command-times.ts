import { VeladisError } from "../core/index";
import { TIME_TOLERANCE } from "../device/index";
import type { TripCommand } from "./trip-commands";

/** Refuses a command that lies before the history or behind it. */
export function requireWithin(commands: readonly TripCommand[], from: number, to: number): void {
  for (const { time: at } of commands) {
    if (at >= from && at <= to) continue;
    throw new VeladisError("out-of-range", {
      parameter: "options",
      option: "commands",
      expected: `commands between ${from} s and ${to} s, the times of the history`,
      received: `one at ${at} s`,
    });
  }
}

/** The index of the even level that lasts at a command's time; the new one at a boundary, within float noise. */
export function evenIndex(start: number, dt: number, last: number): (command: TripCommand) => number {
  return ({ time: at }) => Math.min(Math.floor((at - start) / dt + TIME_TOLERANCE), last);
}

/** Gives, asked for one time after the other, the commands in front of it that were not given before. */
export function commandsBefore<Command extends TripCommand>(
  commands: readonly Command[],
): (until: number) => readonly Command[] {
  let next = 0;
  return (until) => {
    const first = next;
    while (next < commands.length && (commands[next] as Command).time < until) next++;
    return commands.slice(first, next);
  };
}

/** A time on the clock, and seconds from there on. */
interface Span {
  readonly from: number;
  readonly seconds: number;
}

/**
 * Lets what stands last for some seconds, with the commands that fall within them carried out at their time; one at the
 * very beginning comes before what stands.
 *
 * @param last - lets it last for a part of the seconds, which may be 0 at the end
 */
export function lastWith<Command extends TripCommand>(
  { from, seconds }: Span,
  commands: readonly Command[],
  last: (part: number) => void,
  apply: (command: Command) => void,
): void {
  const end = from + seconds;
  let left = seconds;
  for (const command of commands) {
    const part = Math.min(Math.max(command.time - (end - left), 0), left);
    if (part > seconds * TIME_TOLERANCE) {
      last(part);
      left -= part;
    }
    apply(command);
  }
  last(left);
}
