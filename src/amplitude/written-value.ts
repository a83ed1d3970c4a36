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
export function writtenValue({ level, value }: Pick<Amplitude, "level" | "value">): number {
  return level?.decibels ?? value;
}
