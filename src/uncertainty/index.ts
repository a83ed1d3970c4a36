export { coverageEnd } from "./coverage";
export { formatUncertain } from "./format-uncertain";
export { isStated, parseUncertain, sharedUnit, withStated } from "./parse-uncertain";
export { type RatioOf, ratioOf } from "./ratio-of";
export { divisorOf, type Stated, statedAlone, statedText } from "./stated";
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
export { withUncertainty } from "./with-uncertainty";
