export { bracketedCoverage, coverageEnd, hasCoverage, withoutCoverage } from "./coverage";
export { endsOf } from "./ends-of";
export { formatUncertain, plusMinusText, uncertainText } from "./format-uncertain";
export { halves, isStated, parseUncertain, sharedUnit, uncertainHertz, withStated } from "./parse-uncertain";
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
export {
  methodFor,
  requireUncertaintyOptions,
  type Uncertain,
  type UncertaintyMethod,
  type UncertaintyOptions,
  uncertainOf,
} from "./uncertain";
export { uncertainAmplitude } from "./uncertain-amplitude";
export { type UncertaintyOf, type UncertaintyPart, uncertaintyBy, uncertaintyOf } from "./uncertainty-of";
export { type UncertaintyOfPhase, uncertaintyOfPhase } from "./uncertainty-of-phase";
export { withUncertainty } from "./with-uncertainty";
