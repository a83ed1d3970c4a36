/**
 * Readings with their uncertainty, carried through every conversion and sum.
 *
 * @module veladis/uncertainty
 */

export { VeladisError } from "../core/index";
export {
  formatUncertain,
  parseUncertain,
  type RatioOf,
  ratioOf,
  type UncertaintyMethod,
  type UncertaintyOf,
  type UncertaintyOptions,
  type UncertaintyPart,
  uncertaintyOf,
  withUncertainty,
} from "../uncertainty/index";
