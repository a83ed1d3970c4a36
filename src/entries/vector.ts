/**
 * Amplitudes with a phase at an order of a shaft speed: sums and differences, slow roll, shaft absolute.
 *
 * @module veladis/vector
 */
export { VeladisError } from "../core/index";
export * from "../vector/index";
