/** Two ratings of one thing in two units, each rounded on its own, differ by no more (common practice, no source). */
const ROUNDING = 0.02;

/** True where two numbers could be one rating, rounded in two units: 100 hp and 75 kW. */
export function isDualRating(a: number, b: number): boolean {
  return Math.abs(a - b) <= ROUNDING * Math.min(a, b);
}
