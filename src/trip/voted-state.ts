import { inPlace, requireGiven, requireKnownKeys, requireList, shown, VeladisError } from "../core/index";
import { TIME_TOLERANCE } from "../device/index";
import { union } from "../reading/index";
import { keepFirstOut } from "./channel";
import { channelsOutcome, inhibitedOf, voteOf, votingChannels } from "./channel-votes";
import { requireNames } from "./require-names";
import { clockNoise, requireState } from "./stored-state";
import { isInhibited, isSet, type TripState } from "./trip-state";
import type { BadChannel, Vote } from "./vote";
import type { VotedChannel } from "./voted-channels";
import type { OutputState } from "./voted-output";

/** All that a voted trip remembers; plain data, so that it can be stored and resumed. */
export interface VotedState extends OutputState {
  /** What each channel remembers, by its name. */
  channels: { [name: string]: TripState };
}

/** What says when the output sets and clears. */
interface OutputSettings {
  readonly vote: Vote;
  readonly badChannel: BadChannel;
  readonly latching: boolean;
}

const keys: Readonly<Record<keyof VotedState, true>> = /* @__PURE__ */ Object.freeze({
  set: true,
  unable: true,
  first: true,
  calls: true,
  inhibited: true,
  channels: true,
});

function refuse(expected: string, received: unknown, code: "wrong-type" | "out-of-range" = "out-of-range"): never {
  throw new VeladisError(code, {
    expected: `a snapshot of a voted trip, with ${expected}`,
    received: shown(received),
    option: (Object.keys(keys).find((key) => expected.split(" ").includes(key)) ?? "channels") as string,
  });
}

/** A list of names as an error message shows it; whatever else stands in it, too. */
function namesShown(given: readonly unknown[]): string {
  return given.map((name) => (typeof name === "string" ? name : shown(name))).join(", ");
}

/** The states of the channels, each one that its settings allow, all on one clock and with power or without. */
function requireChannels(from: VotedState, channels: readonly VotedChannel[]): TripState[] {
  const names = channels.map(({ name }) => name);
  const given = requireGiven(from.channels, "a snapshot of a voted trip, with channels", { option: "channels" });
  if (typeof given !== "object") refuse("channels", given, "wrong-type");
  requireNames(names, given, false);
  const states = channels.map(({ name, rules }) =>
    inPlace({ option: name }, () =>
      requireState(Object.hasOwn(given, name) ? (given[name] as TripState) : (undefined as never), rules),
    ),
  );
  const [any] = states as [TripState];
  for (const field of ["base", "count", "dt", "powered"] as const) {
    const other = states.find((state) => state[field] !== any[field]);
    if (other !== undefined) refuse(`one ${field} for all channels`, other[field]);
  }
  const hasLevel = ({ signal }: TripState): boolean => signal !== "none";
  if (states.some(hasLevel) && !states.every(hasLevel)) refuse("a level on every channel or on none", "some");
  for (const [i, { alertOf }] of channels.entries()) {
    const own = states[channels.findIndex(({ name }) => name === alertOf)];
    const other = (["bypassed", "signal"] as const).find((field) => own && own[field] !== states[i]?.[field]);
    if (other !== undefined) refuse(`one ${other} for channels and their alerts`, states[i]?.[other]);
  }
  return states;
}

/** The calls, refused unless they are the channels whose output is set, in the order in which they tripped. */
function requireCalls(given: readonly string[], channels: readonly VotedChannel[]): readonly string[] {
  const calls = [...requireList(given, "a snapshot of a voted trip, with calls", { option: "calls" })];
  const isOn = votingChannels(channels)
    .filter(({ state }) => isSet(state))
    .map(({ name }) => name);
  if (calls.length !== isOn.length || !isOn.every((name) => calls.includes(name))) {
    refuse("calls that are the channels whose output is set", namesShown(calls));
  }
  const tripOf = (call: string): number => channels.find(({ name }) => name === call)?.state.firstOut?.time as number;
  const noise = Math.max(...channels.map(({ state, rules }) => clockNoise(state, rules)));
  const late = calls.find((call, i) => i > 0 && tripOf(call) < tripOf(calls[i - 1] as string) - noise);
  if (late !== undefined) refuse("calls in the order in which the channels tripped", namesShown(calls));
  return calls;
}

/** Whether a start inhibits a channel still, or did so to the end of the last step, which the last vote belongs to. */
function mayBeInhibited({ rules, state }: VotedChannel): boolean {
  const { inhibit } = rules;
  if (isInhibited(rules, state)) return true;
  return inhibit > 0 && state.sinceStart <= inhibit * (1 + TIME_TOLERANCE);
}

/** The channels that were inhibited at the last vote: all that are so still, and those alone of which it has just ended. */
function requireInhibited(given: readonly string[], channels: readonly VotedChannel[]): readonly string[] {
  const inhibited = [...requireList(given, "a snapshot of a voted trip, with inhibited", { option: "inhibited" })];
  const still = inhibitedOf(channels);
  const known = channels.filter(mayBeInhibited).map(({ name }) => name);
  const isOnce = new Set(inhibited).size === inhibited.length;
  if (isOnce && still.every((name) => inhibited.includes(name)) && inhibited.every((name) => known.includes(name))) {
    return inhibited;
  }
  refuse("inhibited that are the channels which a start inhibits", namesShown(inhibited));
}

/**
 * A stored state, copied, refused when no run with these settings could have left it.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `out-of-range`, with the field
 */
function requireVotedState(
  from: VotedState,
  channels: readonly VotedChannel[],
  { vote, badChannel, latching }: OutputSettings,
): { output: OutputState; states: TripState[] } {
  if (typeof from !== "object" || from === null) refuse("channels", from, "wrong-type");
  requireKnownKeys(from, keys, "a part of a snapshot of a voted trip");
  const { set, unable, first } = from;
  if (typeof set !== "boolean") refuse("set", set, "wrong-type");
  if (typeof unable !== "boolean") refuse("unable", unable, "wrong-type");
  if (first !== null && typeof first !== "string") refuse("first", first, "wrong-type");
  const states = requireChannels(from, channels);
  const resumed = channels.map((channel, i) => ({ ...channel, state: states[i] as TripState }));
  const calls = requireCalls(from.calls, resumed);
  if (first !== null && !votingChannels(channels).some(({ name }) => name === first))
    refuse("the name of a channel for first", first);
  const says = (name: string) => resumed.some((one) => one.name === name && voteOf(one, resumed) === "trip");
  const calling = calls.find(says) ?? null;
  if (!set && first !== calling) refuse("first that is the channel that has called longest", first);
  const inhibited = requireInhibited(from.inhibited, resumed);
  const outcome = channelsOutcome(vote, badChannel, resumed, inhibited);
  const isPowered = (states[0] as TripState).powered;
  if (isPowered && outcome.unable !== unable) refuse("unable as the channels say", unable);
  const mayBeSet = latching || (isPowered && outcome.trip);
  const mayBeClear = !isPowered || !outcome.trip;
  if (!(set ? mayBeSet : mayBeClear)) refuse("set as the channels say", set);
  return { output: { set, unable, first, calls, inhibited }, states };
}

/** All that output and channels remember, copied. */
export function votedState(output: OutputState, channels: readonly VotedChannel[]): VotedState {
  const states = channels.map(({ name, state }) => {
    keepFirstOut(state);
    return [name, { ...state }] as const;
  });
  return { ...output, channels: Object.fromEntries(states) };
}

/**
 * Lets channels go on from a stored state.
 *
 * @returns what the output behind them remembers
 * @throws {@link VeladisError} as for a state that no run with these settings could have left; nothing has changed then
 */
export function resumedOutput(
  from: VotedState,
  channels: readonly VotedChannel[],
  settings: OutputSettings,
): OutputState {
  const { output, states } = requireVotedState(from, channels, settings);
  for (const [i, { state, rules }] of channels.entries()) {
    const stored = states[i] as TripState;
    Object.assign(state, stored, { assumed: union(rules.assumed, stored.assumed) });
    keepFirstOut(state);
  }
  return output;
}
