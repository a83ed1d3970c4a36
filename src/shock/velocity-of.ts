import {
  finiteResult,
  finiteSamples,
  requireGiven,
  requirePositive,
  VeladisError,
  withParameters,
} from "../core/index";

/**
 * Velocity in m/s of acceleration in m/s2, as a velocity device with a second-order high-pass forms it.
 *
 * `H(s) = s / (s² + √2 ω s + ω²)`: an integrator and a Butterworth high-pass in one, by the bilinear transform. At its
 * corner a sine reads 0.707 of its velocity.
 *
 * @param acceleration - samples in m/s2
 * @param rate - samples a second
 * @param highPass - corner in hertz, below half the rate
 * @throws {@link VeladisError} `not-positive`, `out-of-range` for a corner at half the rate or above
 * @example
 * ```ts
 * import { velocityOf } from "veladis/protection";
 *
 * const omega = 2 * Math.PI * 100;
 * const wave = Float64Array.from({ length: 20000 }, (_, i) => omega * Math.sin((omega * i) / 10000));
 * const last = velocityOf(wave, 10000, 10).slice(-1000);
 * Math.max(...last).toFixed(2); // => "1.00"
 * ```
 */
export function velocityOf(acceleration: ArrayLike<number>, rate: number, highPass: number): Float64Array {
  return withParameters({ rate, highPass, acceleration }, () => {
    const samples = finiteSamples(requireGiven(acceleration, "a list of samples", { parameter: "acceleration" }));
    const k = 2 * requirePositive(rate, "a sampling rate above zero, in Hz", { parameter: "rate" });
    const place = { parameter: "highPass" };
    requirePositive(highPass, "a high-pass corner above zero, in Hz", place);
    // at half the rate the bilinear transform leads to infinity, and beyond it to a filter that runs away
    if (!(highPass < rate / 2)) {
      throw new VeladisError("out-of-range", {
        expected: `a high-pass corner below ${rate / 2} Hz, half the sampling rate`,
        received: `${highPass} Hz`,
        ...place,
      });
    }
    const omega = k * Math.tan((2 * Math.PI * highPass) / k);
    const a0 = k * k + Math.SQRT2 * omega * k + omega * omega;
    const a1 = (2 * (omega * omega - k * k)) / a0;
    const a2 = (k * k - Math.SQRT2 * omega * k + omega * omega) / a0;
    const b = k / a0;
    const velocity = new Float64Array(samples.length);
    let [x1, x2, y1, y2] = [0, 0, 0, 0];
    for (let i = 0; i < velocity.length; i++) {
      const x = samples[i] as number;
      const y = b * (x - x2) - a1 * y1 - a2 * y2;
      [x2, x1, y2, y1] = [x1, x, y1, y];
      velocity[i] = y;
    }
    // what has once left the range of numbers never comes back
    if (velocity.length > 0) finiteResult(velocity[velocity.length - 1] as number);
    return velocity;
  });
}
