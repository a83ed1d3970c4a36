import { type ChannelSettings, type VotedEvent, VotedTrip, type VotedTripSettings } from "veladis/protection";

/** A channel at levels that a 64-bit number holds exactly, without a delay. */
export const quick = {
  threshold: "8 mm/s rms",
  hysteresis: "50 %",
  onDelay: 0,
  timerResets: "below threshold",
  sensorFault: "bad",
} as const satisfies ChannelSettings;

/** A vote of channels a, b, c ... as given, latched behind it. */
export function votedOf(
  vote: VotedTripSettings["vote"],
  channels: readonly ChannelSettings[],
  more: Partial<VotedTripSettings> = {},
): VotedTrip {
  return new VotedTrip({
    vote,
    badChannel: "votes to trip",
    channels: Object.fromEntries(channels.map((one, i) => ["abcd".charAt(i), one])),
    latching: true,
    contact: "normally open",
    coil: "normally energised",
    ...more,
  });
}

/** Events as `time channel event`. */
export const told = (events: readonly VotedEvent[]): string[] =>
  events.map(({ time, channel, event }) => `${time} ${channel} ${event}`);

/** Those of the vote alone. */
export const ofVote = (events: readonly VotedEvent[]): string[] =>
  told(events.filter(({ channel }) => channel === "vote"));
