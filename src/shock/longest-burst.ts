import { largestFailing } from "./largest-failing";
import type { ShockedDevice } from "./shocked-device";

/**
 * The longest steady burst, in seconds, that does not outlast an on-delay.
 *
 * @param high - level of the burst, above the threshold
 */
export function longestBurst(device: ShockedDevice, high: number, delay: number): number {
  const { rms, tau, level, set, hold } = device;
  const excess = (x: number) => (rms ? x ** 2 - level ** 2 : x);
  // time to reach the threshold, and time from the end of the burst until the level is below it again
  const rise = rms ? tau * Math.log(excess(high) / (high ** 2 - set ** 2)) : 0;
  const fall = (length: number): number => {
    const top = rms ? excess(high) * -Math.expm1(-length / tau) : high;
    return tau * Math.log(top / excess(hold));
  };
  if (delay === 0) return rise;
  return largestFailing((length) => length > rise && length - rise + fall(length) >= delay, rise + delay);
}
