export { formatUncertain, plusMinusText, uncertainText } from "./format-uncertain";
export { parseUncertain, uncertainHertz } from "./parse-uncertain";
export { phasesOf, requirePhaseKnown } from "./phases";
export { type RatioOf, ratioOf } from "./ratio-of";
export { hasCoverage, statedBehind, uncertaintyFrom, uncertaintyNote, withoutCoverage, withoutSign } from "./stated";
export { uncertainAmplitude } from "./uncertain-amplitude";
export {
  methodFor,
  sortedDraws,
  type UncertaintyMethod,
  type UncertaintyOf,
  type UncertaintyOptions,
  type UncertaintyPart,
  uncertainOf,
  uncertaintyOf,
} from "./uncertainty-of";
export { type UncertaintyOfPhase, uncertaintyOfPhase } from "./uncertainty-of-phase";
export { withUncertainty } from "./with-uncertainty";
