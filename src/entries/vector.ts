/**
 * Amplitudes with a phase at an order of a shaft speed: sums and differences, slow roll, shaft absolute; worked examples
 * stand in the guide "Vectors, slow roll and shaft absolute".
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
