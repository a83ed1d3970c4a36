import { requireGiven, requireKnownKeys, requireList, shown, VeladisError } from "../core/index";
import { union } from "../reading/index";
import { keepFirstOut } from "./channel";
import { channelsOutcome, inhibitedOf, voteOf } from "./channel-votes";
import { requireNames } from "./require-names";
import { requireState } from "./stored-state";
import { isSet, type TripState } from "./trip-state";
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
  channels: true,
});

function refuse(expected: string, received: unknown, code: "wrong-type" | "out-of-range" = "out-of-range"): never {
  throw new VeladisError(code, { expected: `a snapshot of a voted trip, with ${expected}`, received: shown(received) });
}

/** The states of the channels, each one that its settings allow, all on one clock and with power or without. */
function requireChannels(from: VotedState, channels: readonly VotedChannel[]): TripState[] {
  const names = channels.map(({ name }) => name);
  const given = requireGiven(from.channels, "a snapshot of a voted trip, with channels");
  if (typeof given !== "object") refuse("channels", given, "wrong-type");
  requireNames(names, given, false);
  const states = channels.map(({ name, rules }) =>
    requireState(Object.hasOwn(given, name) ? (given[name] as TripState) : (undefined as never), rules),
  );
  const [any] = states as [TripState];
  for (const field of ["base", "count", "dt", "powered"] as const) {
    const other = states.find((state) => state[field] !== any[field]);
    if (other !== undefined) refuse(`one ${field} for all channels`, other[field]);
  }
  const hasLevel = ({ signal }: TripState): boolean => signal !== "none";
  if (states.some(hasLevel) && !states.every(hasLevel)) refuse("a level on every channel or on none", "some");
  return states;
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
  const { set, unable, first, calls } = from;
  if (typeof set !== "boolean") refuse("set", set, "wrong-type");
  if (typeof unable !== "boolean") refuse("unable", unable, "wrong-type");
  if (first !== null && typeof first !== "string") refuse("first", first, "wrong-type");
  const listed = [...requireList(calls, "a snapshot of a voted trip, with calls")];
  const states = requireChannels(from, channels);
  const resumed = channels.map((channel, i) => ({ ...channel, state: states[i] as TripState }));
  const isOn = resumed.filter(({ state }) => isSet(state)).map(({ name }) => name);
  if (listed.length !== isOn.length || !isOn.every((name) => listed.includes(name))) {
    refuse("calls that are the channels whose output is set", listed.join(", "));
  }
  if (first !== null && !channels.some(({ name }) => name === first)) refuse("the name of a channel for first", first);
  const calling = listed.find((name) => resumed.some((one) => one.name === name && voteOf(one) === "trip")) ?? null;
  if (!set && first !== calling) refuse("first that is the channel that has called longest", first);
  // an inhibit that ends with the last step counts or does not: the vote behind it is still to come
  const outcomes = [inhibitedOf(resumed), new Set(resumed.filter(({ rules }) => rules.inhibit > 0))].map((inhibited) =>
    channelsOutcome(vote, badChannel, resumed, inhibited),
  );
  const isPowered = (states[0] as TripState).powered;
  if (isPowered && !outcomes.some((one) => one.unable === unable)) refuse("unable as the channels say", unable);
  const mayBeSet = latching || (isPowered && outcomes.some(({ trip }) => trip));
  const mayBeClear = !isPowered || outcomes.some(({ trip }) => !trip);
  if (!(set ? mayBeSet : mayBeClear)) refuse("set as the channels say", set);
  return { output: { set, unable, first, calls: listed }, states };
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
