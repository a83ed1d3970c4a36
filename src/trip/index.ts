export { type BypassCost, bypassCost } from "./bypass-cost";
export { levelConversion } from "./level-conversion";
export { type LevelGap, type LevelGaps, type LevelGapsOptions, levelGaps } from "./level-gaps";
export type { RunOptions } from "./run-options";
export type { TripLevel } from "./taken-level";
export { type ResetOutcome, type TripCommand, type TripCommandName, tripCommands } from "./trip-commands";
export { type TripEvent, type TripEventName, tripEvents } from "./trip-events";
export { TripLogic } from "./trip-logic";
export { type TripMask, tripMasks } from "./trip-masks";
export type { TripState } from "./trip-state";
export { type TripStateName, type TripStatus, tripStates } from "./trip-status";
export { type TripOutcome, type UnmaskedTrips, unmaskedTrips } from "./unmasked-trips";
export {
  type BadChannel,
  badChannels,
  type ChannelVote,
  parseVote,
  type Vote,
  type VoteOutcome,
  type VoteText,
  voted,
} from "./vote";
export { type VoteAlternative, voteAlternatives } from "./vote-alternatives";
export type { VotedCommand } from "./voted-commands";
export type { EachOr, VotedRunOptions } from "./voted-run-options";
export type { VotedState } from "./voted-state";
export { VotedTrip } from "./voted-trip";
export type { VotedEvent, VotedStatus, VotedTripSettings } from "./voted-types";
