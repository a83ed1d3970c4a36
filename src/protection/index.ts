export { coils, contacts, type RelaySettings, type RelayStatus, relayStatus } from "./relay";
export { type ResetOutcome, type TripCommand, type TripCommandName, tripCommands } from "./trip-commands";
export { type TripEvent, type TripEventName, tripEvents } from "./trip-events";
export { type Level, type RunOptions, TripLogic } from "./trip-logic";
export type { TripRules } from "./trip-rules";
export { type ChannelSettings, sensorFaults, type TripSettings, timerResets } from "./trip-settings";
export type { TripState } from "./trip-state";
export { type TripStateName, type TripStatus, tripStates } from "./trip-status";
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
export { type VotedEvent, type VotedStatus, VotedTrip, type VotedTripSettings } from "./voted-trip";
