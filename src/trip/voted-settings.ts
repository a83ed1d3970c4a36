import { requireChoice, requireGiven, requireKnownKeys } from "../core/index";
import { requireRelay } from "../device/index";
import type { TripEvent } from "./trip-events";
import { badChannels } from "./vote";
import { votedChannels } from "./voted-channels";
import { type VotedTripSettings, votedKeys } from "./voted-types";

/** The settings of a voted trip, checked, and its channels made of them. */
export function checkedSettings(settings: VotedTripSettings, take: (name: string, event: TripEvent) => void) {
  requireGiven(settings, "settings with vote, badChannel, channels and output");
  const { vote, badChannel, channels, alerts } = requireKnownKeys(settings, votedKeys, "a setting of a voted trip");
  return {
    vote,
    badChannel: requireChoice(badChannel, badChannels, "badChannel: what a bad channel counts for", {
      option: "badChannel",
    }),
    relay: requireRelay(settings),
    channels: votedChannels({ vote, channels, ...(alerts !== undefined && { alerts }) }, take),
  };
}
