/**
 * Amplitudes with a phase at an order of a shaft speed: sums and differences, slow roll, shaft absolute; worked examples
 * stand in the guide "Vectors, slow roll and shaft absolute".
 *
 * @example
 * ```ts
 * import { differenceOfVectors, formatVector } from "veladis/vector";
 *
 * const answer = differenceOfVectors("40 um pp ∠ 60° at 1x of 5400 r/min", "30 um pp ∠ 330° at 1x of 5400 r/min");
 * formatVector(answer); // => "50.0 um pp ∠ 96.9° at 1x of 5400 r/min"
 * ```
 *
 * @module veladis/vector
 */
export { VeladisError } from "../core/index";
export type {
  UncertaintyMethod,
  UncertaintyOf,
  UncertaintyOfPhase,
  UncertaintyOptions,
  UncertaintyPart,
} from "../uncertainty/index";
export * from "../vector/index";
