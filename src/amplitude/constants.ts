/**
 * Powers of pi from -3 to 3, and the same times the square root of two, each rounded once.
 *
 * Multiplying rounded constants together would cost an extra rounding a step; a test holds every digit against
 * 64-digit arithmetic.
 */
const PI_POWERS = [
  0.03225153443319949,
  0.10132118364233778,
  0.3183098861837907,
  1,
  Math.PI,
  9.869604401089358,
  31.00627668029982,
] as const;

const ROOT_TWO_PI_POWERS = [
  0.04561055740277359,
  0.14328979206268908,
  0.45015815807855303,
  Math.SQRT2,
  4.442882938158366,
  13.957728399277759,
  43.84949699997263,
] as const;

/** `pi^power * sqrt(2)^rootTwo`, for powers from -3 to 3 and roots from -1 to 1. */
export function irrational(power: number, rootTwo: number): number {
  if (rootTwo === 0) return PI_POWERS[power + 3] as number;
  const root = ROOT_TWO_PI_POWERS[power + 3] as number;
  return rootTwo > 0 ? root : root / 2;
}
