import { requireGiven, shown, VeladisError } from "../core/index";
import { TripLogic } from "./trip-logic";
import { parseVote, type VoteText } from "./vote";
import type { VotedTripSettings } from "./voted-types";

/** The relay stands behind the vote: a channel only says whether it calls for a trip. */
const noRelay = { latching: false, contact: "normally open", coil: "normally energised" } as const;

/**
 * The trip logic of every channel by name, as many as the vote counts.
 *
 * @throws {@link VeladisError} `missing-fact`, `length-mismatch`, and as {@link TripLogic}
 */
export function votedChannels(vote: VoteText, channels: VotedTripSettings["channels"]): ReadonlyMap<string, TripLogic> {
  const { of } = parseVote(vote);
  const entries = Object.entries(requireGiven(channels, "settings of the channels by name"));
  if (entries.length !== of) {
    throw new VeladisError("length-mismatch", {
      expected: `${of} channels for ${vote}`,
      received: `${entries.length}`,
    });
  }
  return new Map(
    entries.map(([name, channel]) => [
      name,
      new TripLogic({ ...requireGiven(channel, `settings of channel ${shown(name)}`), ...noRelay }),
    ]),
  );
}
