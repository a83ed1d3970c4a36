import { isInhibited, isSet } from "./trip-state";
import type { BadChannel } from "./vote";
import { type ChannelCounts, type ChannelVote, outcomeOf, type Vote, type VoteOutcome } from "./vote";
import type { VotedChannel } from "./voted-channels";

/** Whether the signal of a channel has failed and the vote is told so. */
function isBad({ rules, state }: VotedChannel): boolean {
  return state.signal === "fault" && rules.sensorFault === "bad";
}

/** The channels that vote: an alert does so with the channel that it is of. */
export function votingChannels(channels: readonly VotedChannel[]): readonly VotedChannel[] {
  return channels.filter(({ alertOf }) => alertOf === undefined);
}

/**
 * What a channel says: a bypassed one is healthy, whatever else it is.
 *
 * @param channels - all of them, its alert among them where it has one
 */
export function voteOf(channel: VotedChannel, channels: readonly VotedChannel[]): ChannelVote {
  if (channel.state.bypassed) return "healthy";
  if (isBad(channel)) return "bad";
  if (isSet(channel.state)) return "trip";
  const alert = channels.find(({ alertOf }) => alertOf === channel.name);
  return alert !== undefined && isSet(alert.state) ? "alert" : "healthy";
}

/** The channels that a start inhibits at present. */
export function inhibitedOf(channels: readonly VotedChannel[]): readonly string[] {
  return channels.filter(({ rules, state }) => isInhibited(rules, state)).map(({ name }) => name);
}

/**
 * The outcome of the vote among channels as they are.
 *
 * A bad channel that counts for a trip does so as a tripped one would: not while it is inhibited after a start, unless
 * its output was set before.
 *
 * @param inhibited - the names of those that a start inhibits
 */
export function channelsOutcome(
  vote: Vote,
  badChannel: BadChannel,
  channels: readonly VotedChannel[],
  inhibited: readonly string[],
): VoteOutcome {
  const counts: Record<keyof ChannelCounts, number> = { trip: 0, alert: 0, badForTrip: 0, silent: 0 };
  for (const channel of votingChannels(channels)) {
    const said = voteOf(channel, channels);
    const isForTrip = badChannel === "votes to trip" && (isSet(channel.state) || !inhibited.includes(channel.name));
    if (said === "trip" || said === "alert") counts[said]++;
    else if (said === "bad" && isForTrip) counts.badForTrip++;
    else if (said === "bad" || channel.state.bypassed) counts.silent++;
  }
  return outcomeOf(vote, counts);
}
