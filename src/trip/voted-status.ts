import { type RelaySettings, relayNow } from "../device/index";
import { bypassCost } from "./bypass-cost";
import { voteOf, votingChannels } from "./channel-votes";
import type { VoteText } from "./vote";
import type { VotedChannel } from "./voted-channels";
import type { VotedOutput } from "./voted-output";
import type { VotedEvent, VotedStatus } from "./voted-types";

/** What a voted trip is made of. */
interface VotedParts {
  readonly output: VotedOutput;
  readonly vote: VoteText;
  readonly relay: RelaySettings;
  readonly channels: readonly VotedChannel[];
}

/** State and contact of a voted trip, with what has happened. */
export function votedStatus({ output, vote, relay, channels }: VotedParts, events: readonly VotedEvent[]): VotedStatus {
  const { set, first } = output.state;
  const { trip, unable, effective } = output.outcome;
  const { bypassed, isPowered } = output;
  const voting = trip && isPowered;
  return Object.freeze({
    time: output.time,
    ...relayNow(relay, set, isPowered),
    voting,
    latched: set && !voting,
    unable,
    effective,
    firstOut: first,
    channels: Object.freeze(
      Object.fromEntries(votingChannels(channels).map((one) => [one.name, voteOf(one, channels)])),
    ),
    bypass: bypassed.length === 0 ? null : bypassCost(vote, bypassed),
    events: Object.freeze(events),
    assumed: output.assumed,
  });
}
