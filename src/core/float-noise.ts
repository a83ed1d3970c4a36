/**
 * Relative tolerance for float noise: one step of a 32-bit float, 2^-23. A value this near a limit counts as at the
 * limit, so that numbers stored in single precision are judged as they were measured.
 */
export const FLOAT_NOISE = 1.1920928955078125e-7;

/** The largest value that still counts as at the limit. */
export function raised(limit: number): number {
  return limit * (1 + FLOAT_NOISE);
}

/** True when two numbers differ by float noise only. */
export function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= FLOAT_NOISE * Math.abs(a);
}
