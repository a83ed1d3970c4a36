import { inPlace, requireChoice, requireKnownKeys, requireList, requireNonNegative } from "../core/index";
import type { TripRules } from "../device/index";
import { type Channel, recordEvent } from "./channel";
import { factorNow, isSet, type TripState, timeOf } from "./trip-state";

/** What a person or the plant can tell a trip channel. */
export const tripCommands = /* @__PURE__ */ Object.freeze([
  "reset",
  "start",
  "bypass on",
  "bypass off",
  "power lost",
  "power back",
] as const);

/** The name of a command. */
export type TripCommandName = (typeof tripCommands)[number];

/** A command in a history: what is done, and when on the clock of the logic. */
export interface TripCommand {
  /** Seconds. */
  readonly time: number;
  readonly do: TripCommandName;
}

const keys: Readonly<Record<keyof TripCommand, true>> = /* @__PURE__ */ Object.freeze({ time: true, do: true });

/** The command itself, if it is one. */
export function requireCommand(command: TripCommand): TripCommand {
  requireKnownKeys(command, keys, "a part of a command");
  requireNonNegative(command.time, "a time of zero or more for a command, in s", { option: "time" });
  requireChoice(command.do, tripCommands, "a command", { option: "do" });
  return command;
}

/** Commands in order of time, those of one time in the order in which they stand, each of them checked. */
export function orderedCommands<Command extends TripCommand>(
  commands: readonly Command[] | undefined,
  checked: (command: Command) => Command,
): Command[] {
  const place = { parameter: "options", option: "commands" };
  return requireList(commands === undefined ? [] : commands, "a list of commands", place)
    .map((command, index) => inPlace({ ...place, index }, () => checked(command)))
    .sort((a, b) => a.time - b.time);
}

/** The commands of one channel in order of time. */
export function requireCommands(commands?: readonly TripCommand[]): TripCommand[] {
  return orderedCommands(commands, requireCommand);
}

/** What became of a reset by hand. */
export interface ResetOutcome {
  readonly accepted: boolean;
  /** Why not, when it was refused. */
  readonly reason?: string;
}

/** Why a reset by hand is refused at present, or undefined when it is not. */
function refusalReason(rules: TripRules, state: TripState): string | undefined {
  if (!isSet(state)) return "there is nothing to reset";
  if (!rules.latching) return "the output does not latch; it clears by itself";
  if (!state.powered) return "the device has no power";
  if (state.signal === "above range") return "the level is above the range of its loop";
  if (state.signal !== "good") return "there is no good signal to show that the level is below the reset level";
  if (state.level >= rules.resetAt * factorNow(rules, state)) return "the level is not below the reset level";
  return undefined;
}

/** Clears a latched output, unless the level or the state of the device speaks against it. */
export function resetByHand(channel: Channel): ResetOutcome {
  const { rules, state } = channel;
  const reason = refusalReason(rules, state);
  if (reason !== undefined) {
    recordEvent(channel, timeOf(state), "reset refused", reason);
    return Object.freeze({ accepted: false, reason });
  }
  state.phase = "normal";
  state.timer = 0;
  recordEvent(channel, timeOf(state), "reset");
  return Object.freeze({ accepted: true });
}

function loseTimers(state: TripState, latching: boolean): void {
  state.timer = 0;
  if (latching && isSet(state)) state.phase = "set";
  else {
    state.phase = "normal";
    state.firstOut = null;
  }
}

/** Carries a command out; a command that changes nothing leaves no event. */
export function applyCommand(channel: Channel, name: TripCommandName): void {
  const { rules, state } = channel;
  if (name === "reset") {
    resetByHand(channel);
    return;
  }
  if (name === "start") state.sinceStart = 0;
  else if (name === "bypass on" || name === "bypass off") {
    if (state.bypassed === (name === "bypass on")) return;
    state.bypassed = name === "bypass on";
  } else {
    if (state.powered === (name === "power back")) return;
    state.powered = name === "power back";
    state.sinceStart = 0;
    if (!state.powered) loseTimers(state, rules.latching);
  }
  recordEvent(channel, timeOf(state), name);
}
