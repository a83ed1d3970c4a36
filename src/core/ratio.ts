/**
 * An exact ratio of two integers, each below 2^53, so that a conversion multiplies once and divides once
 * and rounds nowhere else.
 */
export interface Ratio {
  readonly num: number;
  readonly den: number;
}
