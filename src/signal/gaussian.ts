import { requireNonNegative, withParameters } from "../core/index";

const ROOT_HALF_PI = 1.2533141373155001; // sqrt(pi / 2)

/** `exp(-k^2/2)` times a sum or a continued fraction: what lies beyond `k` standard deviations on either side. */
function beyond(k: number): number {
  if (k < 3) {
    // within, by the series of Abramowitz and Stegun 26.2.11: all terms positive, no cancellation
    let term = k;
    let sum = k;
    for (let n = 3; term > sum * 1e-17; n += 2) {
      term *= (k * k) / n;
      sum += term;
    }
    return 1 - (Math.exp((-k * k) / 2) * sum) / ROOT_HALF_PI;
  }
  // the continued fraction 26.2.14, from its far end
  let fraction = k;
  for (let n = 80; n >= 1; n--) fraction = k + n / fraction;
  return Math.exp((-k * k) / 2) / fraction / ROOT_HALF_PI;
}

/**
 * The part of time that a Gaussian vibration spends within `sigmas` times its RMS value, on both sides of zero.
 *
 * @throws {@link VeladisError} `negative`, `not-a-number`, `not-finite`
 * @example
 * ```ts
 * import { gaussianWithin } from "veladis/signal";
 *
 * gaussianWithin(3).toFixed(4); // => "0.9973"
 * ```
 */
export function gaussianWithin(sigmas: number): number {
  return withParameters({ sigmas }, () => {
    return (
      1 - beyond(requireNonNegative(sigmas, "a number of standard deviations of zero or more", { parameter: "sigmas" }))
    );
  });
}

/**
 * The part of the peaks of a narrow-band Gaussian vibration that exceed `sigmas` times its RMS value (Rayleigh):
 * `exp(-sigmas^2 / 2)`.
 *
 * @throws {@link VeladisError} `negative`, `not-a-number`, `not-finite`
 * @example
 * ```ts
 * import { rayleighBeyond } from "veladis/signal";
 *
 * rayleighBeyond(3).toFixed(4); // => "0.0111"
 * ```
 */
export function rayleighBeyond(sigmas: number): number {
  return withParameters({ sigmas }, () => {
    return Math.exp(
      -(requireNonNegative(sigmas, "a number of standard deviations of zero or more", { parameter: "sigmas" }) ** 2) /
        2,
    );
  });
}
