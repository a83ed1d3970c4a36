export { type Baseline, type BaselineOptions, baseline, type Outlier } from "./baseline";
export { baselineShape } from "./baseline-shape";
export { type DelayAdvice, delayAdvice } from "./delay-advice";
export { type Proposal, type ProposalRequest, type ProposedSetpoint, proposeSetpoints } from "./propose-setpoints";
export { type Reason, setpointRules } from "./reason";
export type { OwnLimits } from "./setpoint-limits";
export {
  type SensorLimits,
  type SetpointWarning,
  type SetpointWarningCode,
  setpointWarnings,
} from "./setpoint-warnings";
export type { SteadyOptions } from "./steady";
