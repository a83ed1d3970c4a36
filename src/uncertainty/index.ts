export { bracketedCoverage, coverageEnd, hasCoverage, withoutCoverage } from "./coverage";
export { formatUncertain, plusMinusText, uncertainText } from "./format-uncertain";
export { isStated, parseUncertain, sharedUnit, uncertainHertz, withStated } from "./parse-uncertain";
export { phasesOf, requirePhaseKnown } from "./phases";
export { type RatioOf, ratioOf } from "./ratio-of";
export {
  divisorOf,
  requireOneSided,
  type Stated,
  statedAlone,
  statedBehind,
  statedText,
  uncertaintyFrom,
  uncertaintyNote,
  withoutSign,
} from "./stated";
export { intervalEnd } from "./stated-interval";
export { uncertainAmplitude } from "./uncertain-amplitude";
export {
  drawnOf,
  methodFor,
  type UncertaintyMethod,
  type UncertaintyOf,
  type UncertaintyOptions,
  type UncertaintyPart,
  uncertainOf,
  uncertaintyOf,
} from "./uncertainty-of";
export { type UncertaintyOfPhase, uncertaintyOfPhase } from "./uncertainty-of-phase";
export { withUncertainty } from "./with-uncertainty";
