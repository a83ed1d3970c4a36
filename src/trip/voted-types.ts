import type { ChannelSettings, RelaySettings } from "../device/index";
import type { BypassCost } from "./bypass-cost";
import type { TripEvent } from "./trip-events";
import type { TripStatus } from "./trip-status";
import type { BadChannel, ChannelVote, VoteText } from "./vote";

/** Settings of a voted trip; the relay is behind the vote. */
export interface VotedTripSettings extends RelaySettings {
  /** How many channels must call for a trip, e.g. `"2oo3"`. */
  readonly vote: VoteText;
  /** What a bad channel counts for. */
  readonly badChannel: BadChannel;
  /** The channels by name, in order. */
  readonly channels: { readonly [name: string]: ChannelSettings };
  /**
   * The alert of each channel, for a mixed vote: below the channel's threshold, in its unit and detector, with its
   * `sensorFault`. Its events are those of a channel named e.g. `"front alert"`.
   */
  readonly alerts?: { readonly [name: string]: ChannelSettings };
}

/** The settings of a voted trip by name; those of the channels have their place in each. */
export const votedKeys: Readonly<Record<keyof VotedTripSettings, true>> = /* @__PURE__ */ Object.freeze({
  vote: true,
  badChannel: true,
  channels: true,
  alerts: true,
  latching: true,
  contact: true,
  coil: true,
});

/** Something that happened to a channel, or to the vote. */
export interface VotedEvent extends Omit<TripEvent, "event"> {
  readonly event: TripEvent["event"] | "protection lost" | "protection back";
  /** The channel, or `"vote"`. */
  readonly channel: string;
  /** Marks the channel that was first to call for a trip. */
  readonly firstOut?: true;
  /** Of a trip of the vote: the channel that says trip and has done so longest; null where bad channels alone have tripped. */
  readonly first?: string | null;
  /** What a bypass costs, in words, while any channel is bypassed. */
  readonly cost?: string;
}

/** State and contact of a voted trip. */
export interface VotedStatus extends Pick<TripStatus, "time" | "output" | "coil" | "contact" | "assumed"> {
  /** Whether the vote calls for a trip now, latch aside. */
  readonly voting: boolean;
  /** Whether the output stays set by its latch alone. */
  readonly latched: boolean;
  /** Whether too few good channels are left for a trip to be possible. */
  readonly unable: boolean;
  /** The vote among the channels that are left. */
  readonly effective: string;
  /** The channel that was first to call for a trip, while one calls or the output is set. */
  readonly firstOut: string | null;
  readonly channels: { readonly [name: string]: ChannelVote };
  /** What the bypass of channels costs, or null while none is bypassed. */
  readonly bypass: BypassCost | null;
  readonly events: readonly VotedEvent[];
}
