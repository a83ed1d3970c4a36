import { requireFinite, requireGiven, requireNonNegative } from "../core/index";
import type { Amplitude } from "./amplitude";

/**
 * The number of a reading as it is written: decibels for a level, else the value in its unit.
 *
 * @example
 * ```ts
 * import { convertAmplitude, writtenValue } from "veladis";
 *
 * writtenValue(convertAmplitude("1 m/s rms", "dB re 1e-9 m/s")); // => 180
 * writtenValue(convertAmplitude("1 in/s rms", "mm/s rms")); // => 25.4
 * ```
 */
export function writtenValue(reading: Pick<Amplitude, "level" | "value">): number {
  const parameter = "reading";
  const { level, value } = requireGiven(reading, 'a reading such as "0.25 in/s pk at 1500 r/min"', { parameter });
  return level === undefined
    ? requireNonNegative(value, "an amplitude of zero or more", { parameter, option: "value" })
    : requireFinite(level?.decibels, "a level in dB", { parameter, option: "level" });
}
