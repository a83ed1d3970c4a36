import { inPlace, requireGiven, shown, VeladisError } from "../core/index";
import type { Channel } from "./channel";
import type { TripEvent } from "./trip-events";
import { TripLogic } from "./trip-logic";
import { parseVote, type VoteText } from "./vote";
import type { VotedTripSettings } from "./voted-types";

/** A channel of a voted trip. */
export interface VotedChannel extends Channel {
  readonly name: string;
}

/** The relay stands behind the vote: a channel only says whether it calls for a trip. */
const noRelay = { latching: false, contact: "normally open", coil: "normally energised" } as const;

/**
 * The channels in the order of the settings, as many as the vote counts, at power-up.
 *
 * @param emit - takes what happens to a channel
 * @throws {@link VeladisError} `missing-fact`, `length-mismatch`, and as {@link TripLogic}
 */
export function votedChannels(
  vote: VoteText,
  channels: VotedTripSettings["channels"],
  emit: (name: string, event: TripEvent) => void,
): readonly VotedChannel[] {
  const { of } = inPlace({ option: "vote" }, () => parseVote(vote));
  const entries = Object.entries(requireGiven(channels, "settings of the channels by name", { option: "channels" }));
  if (entries.length !== of) {
    throw new VeladisError("length-mismatch", {
      expected: `${of} channels for ${vote}`,
      received: `${entries.length}`,
      option: "channels",
    });
  }
  return entries.map(([name, channel]) => {
    const logic = inPlace(
      { option: name },
      () => new TripLogic({ ...requireGiven(channel, `settings of channel ${shown(name)}`), ...noRelay }),
    );
    return { name, rules: logic.rules, state: logic.snapshot(), emit: (event) => emit(name, event) };
  });
}
