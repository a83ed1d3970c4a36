export {
  balanceGrade,
  balanceGrades,
  centrifugalForce,
  gradeOfUnbalance,
  type PermissibleUnbalance,
  permissibleEccentricity,
  permissibleUnbalance,
  type Rotor,
  unbalanceOf,
} from "./balance";
export { type Baseline, type BaselineOptions, baseline, type Outlier } from "./baseline";
export { baselineShape } from "./baseline-shape";
export { type DelayAdvice, delayAdvice } from "./delay-advice";
export { type Device, roundings, type StoredSetpoint, storedSetpoint } from "./device";
export { type DetectedLevelsOptions, detectedLevels, type LevelDetector } from "./front-end";
export { mechanicalSwitch, type SwitchOptions, type SwitchReach, type SwitchRow } from "./mechanical-switch";
export { type Proposal, type ProposalRequest, type ProposedSetpoint, proposeSetpoints } from "./propose-setpoints";
export { type Reason, setpointRules } from "./reason";
export { coils, contacts, type RelaySettings, type RelayStatus, relayStatus } from "./relay";
export type { RunOptions } from "./run-options";
export type { OwnLimits } from "./setpoint-limits";
export {
  type SensorLimits,
  type SetpointWarning,
  type SetpointWarningCode,
  setpointWarnings,
} from "./setpoint-warnings";
export { type HalfSine, type ShockOnRunningOptions, shockOnRunning, velocityOf } from "./shock";
export {
  type BurstLimit,
  type Immunity,
  type ImmunityOptions,
  type ImmunitySettings,
  type ShockLimit,
  shockImmunity,
} from "./shock-immunity";
export type { SteadyOptions } from "./steady";
export { type ResetOutcome, type TripCommand, type TripCommandName, tripCommands } from "./trip-commands";
export { type TripEvent, type TripEventName, tripEvents } from "./trip-events";
export { type Level, TripLogic } from "./trip-logic";
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
export { VotedTrip } from "./voted-trip";
export type { VotedEvent, VotedStatus, VotedTripSettings } from "./voted-types";
