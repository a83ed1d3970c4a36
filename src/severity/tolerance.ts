/** Relative tolerance for float noise: a value this little above a limit still counts as at the limit. */
const TOLERANCE = 1e-9;

/** The largest value that still counts as at the limit. */
export function raised(limit: number): number {
  return limit * (1 + TOLERANCE);
}

/** True when two numbers differ by float noise only. */
export function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= TOLERANCE * Math.abs(a);
}
