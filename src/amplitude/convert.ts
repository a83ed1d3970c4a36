import { requireFinite } from "../core/index";
import { decibelsOf, type Factor, linearOf, type ReadingType, scaled } from "../reading/index";
import { checkedOptions } from "./checked-options";
import type { CheckedTarget, CheckedType } from "./checked-types";
import type { ConvertArguments, ConvertOptions } from "./convert-options";
import { factorOf } from "./factor";
import { type Pair, pairOf } from "./pair";

/**
 * A reading in another type: other unit, other detector, other quantity, or a decibel level.
 *
 * Within one quantity nothing else is needed. Across quantities (acceleration, velocity, displacement) the
 * vibration is taken to be one sine wave at the frequency `at`; peak, RMS and average are related as for a sine,
 * unless a crest factor is given. Units are exact integer ratios, multiplied first and divided once. Use
 * {@link convertAmplitude} to have the assumptions with the answer.
 *
 * @param value - the reading: zero or more, or any level in dB
 * @param from - what it is written in, e.g. `"in/s pk"`
 * @param to - what it shall be written in, e.g. `"mm/s rms"`
 * @param options - `at` (a frequency; required when the quantity changes) and `crestFactor`; others are refused
 * @returns the value in `to`
 * @throws {@link VeladisError} `negative`, `not-a-number`, `not-finite`, `missing-frequency`, `not-a-sine`,
 *   `out-of-range`, `unknown-option`, and for texts the types cannot check, all of {@link readingType}
 * @example
 * ```ts
 * import { convert } from "veladis";
 *
 * convert(25.4, "mm/s pk", "in/s pk"); // => 1
 * convert(0.25, "in/s pk", "mm/s rms").toFixed(3); // => "4.490"
 * convert(0.25, "in/s pk", "mil pp", { at: "1500 r/min" }).toFixed(3); // => "3.183"
 * convert(95, "dB re 1e-9 m/s", "mm/s rms").toFixed(4); // => "0.0562"
 * convert(2, "g rms", "g pk", { crestFactor: 4 }); // => 8
 * ```
 */
export function convert<const From extends ReadingType, const To extends ReadingType>(
  value: number,
  from: From,
  to: To,
  ...options: ConvertArguments<From, To>
): number;
// what the first has refused comes here, where the type of the parameter says what is wrong with the argument
export function convert<const From extends string, const To extends string>(
  value: number,
  from: CheckedType<From>,
  to: CheckedTarget<From, To>,
): number;
export function convert(value: number, from: string, to: string, options?: ConvertOptions): number {
  const { at, crestFactor } = checkedOptions(options);
  const pair = pairOf(from, to);
  return converted(value, pair, factorOf(pair, at, crestFactor));
}

/** The value by a factor of the pair, from and to levels where the pair has them. */
export function converted(
  value: number,
  { from: { reference: before }, to: { reference: after } }: Pair,
  factor: Factor,
): number {
  if (before === 0 && after === 0) return scaled(value, factor);
  if (before === 0) return decibelsOf(scaled(value, factor), after);
  if (after === 0) return scaled(linearOf(value, before), factor);
  return requireFinite(value, "a level in dB") + decibelsOf(scaled(before, factor), after);
}
