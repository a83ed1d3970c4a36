export { assumedShape, historyShape, readingShape } from "./answer-shape";
export { askedWarnings } from "./asked-warnings";
export { type Baseline, type BaselineOptions, baseline, type Outlier } from "./baseline";
export { baselineShape } from "./baseline-shape";
export { ENOUGH } from "./baseline-warnings";
export { type DelayAdvice, delayAdvice } from "./delay-advice";
export { lowestAtSpeeds } from "./lowest-at-speeds";
export type { BaselineMode, ModesOptions } from "./modes";
export { type BaselineMultiples, saysMultiples } from "./multiples";
export { AS_STATED, type OwnLimits } from "./own-limits";
export type { Proposal, ProposalScheme, ProposedSetpoint } from "./proposal";
export type { ProposalRequest } from "./proposal-request";
export { proposeSetpoints } from "./propose-setpoints";
export { type RaisedRange, saysRaised } from "./raised";
export type { RaisedSetpoints } from "./raised-setpoints";
export { raisedText } from "./raised-text";
export { askedHeading, rangeText } from "./range-text";
export { COMMON_PRACTICE, type Reason, setpointRules } from "./reason";
export { fixedHertz, speedEnds } from "./running-speed";
export { type ScaleRow, scaleOfProposal } from "./scale-rows";
export type { SetpointLimits } from "./setpoint-limits";
export { highestOf } from "./setpoint-targets";
export {
  type SensorLimits,
  type SetpointWarning,
  type SetpointWarningCode,
  setpointWarnings,
} from "./setpoint-warnings";
export type { SteadyOptions } from "./steady";
export { withSpread } from "./with-spread";
