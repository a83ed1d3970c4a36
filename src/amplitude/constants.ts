/**
 * Powers of pi from -3 to 3, and the same times the square root of two: each the nearest double, and what is left
 * of the true value beyond it.
 *
 * A test holds every digit against 64-digit arithmetic.
 */
// biome-ignore format: a row of a table is a line
const PI_POWERS = [
  [0.03225153443319949, 6.459091858354385e-19],
  [0.10132118364233778, -3.9662898794394414e-18],
  [0.3183098861837907, -1.9678676675182486e-17],
  [1, 0],
  [Math.PI, 1.2246467991473532e-16],
  [9.869604401089358, 6.265295508739711e-16],
  [31.00627668029982, 4.1641946985288347e-16],
] as const;

// biome-ignore format: a row of a table is a line
const ROOT_TWO_PI_POWERS = [
  [0.04561055740277359, 1.9353091206165471e-19],
  [0.14328979206268908, -9.59726814741058e-18],
  [0.45015815807855303, 6.8966137581754715e-18],
  [Math.SQRT2, -9.667293313452913e-17],
  [4.442882938158366, 1.452273931226085e-16],
  [13.957728399277759, 2.998665011869626e-16],
  [43.84949699997263, 2.8331900299637146e-15],
] as const;

/** A constant as the sum of two doubles. */
export type Doubled = readonly [nearest: number, rest: number];

/** `pi^power * sqrt(2)^rootTwo`, for powers from -3 to 3 and roots from -1 to 1. */
export function irrational(power: number, rootTwo: number): Doubled {
  const [nearest, rest] = (rootTwo === 0 ? PI_POWERS : ROOT_TWO_PI_POWERS)[power + 3] as Doubled;
  return rootTwo < 0 ? [nearest / 2, rest / 2] : [nearest, rest];
}
