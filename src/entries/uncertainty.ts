/**
 * Readings with their uncertainty, carried through every conversion and sum, and the zones they may be in; worked examples
 * stand in the guide "Uncertainty, and when a check has passed".
 *
 * @example
 * ```ts
 * import { formatUncertain } from "veladis/uncertainty";
 *
 * formatUncertain("0.25 in/s pk ± 5 % (k=2)"); // => "0.250 ± 0.013 in/s pk (k=2)"
 * ```
 *
 * @module veladis/uncertainty
 */

export {
  type CriterionWithin,
  type IntervalWithin,
  type ZoneProbabilities,
  type ZoneRule,
  type ZonesWithin,
  type ZonesWithinOptions,
  zoneRules,
  zonesWithin,
} from "../conformity/index";
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
