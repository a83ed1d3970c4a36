import { requireFinite, requireNonNegative, requirePositive, shown, VeladisError } from "../core/index";

/** A conversion between two linear types: multiply by `num`, then divide by `den`. One of the two may be 1. */
export interface Factor {
  readonly num: number;
  readonly den: number;
}

const VALUE = { parameter: "value" };

/** The result if it is a positive number that 64 bits hold; never an infinity, never a zero by rounding. */
function representable(result: number): number {
  if (result * 0 < result) return result;
  throw new VeladisError(result > 0 ? "not-finite" : "out-of-range", {
    expected: "a result that a number can hold",
    received: shown(result),
    ...VALUE,
  });
}

/**
 * An amplitude that the fast line could not vouch for: zero, refused input, or a product that left the range
 * of numbers on its way or for good.
 */
export function scaledWithCare(value: number, { num, den }: Factor): number {
  return requireNonNegative(value, "an amplitude of zero or more", VALUE) === 0
    ? 0
    : representable(value * (num / den));
}

/** The amplitude times the factor, refused when it is no amplitude. */
export function scaled(value: number, factor: Factor): number {
  const { num, den } = factor;
  if (typeof value === "number") {
    const result = den === 1 ? value * num : (value * num) / den;
    // an infinity times zero is NaN: one comparison refuses all that is no amplitude
    if (result * 0 < result) return result;
  }
  return scaledWithCare(value, factor);
}

/** The linear value of a level: `reference * 10^(decibels / 20)`. */
export function linearOf(decibels: number, reference: number): number {
  return representable(reference * 10 ** (requireFinite(decibels, "a level in dB", VALUE) / 20));
}

/** The level of a linear value: `20 lg(value / reference)`. Zero has none. */
export function decibelsOf(value: number, reference: number): number {
  return 20 * Math.log10(representable(requirePositive(value, "an amplitude above zero", VALUE) / reference));
}
