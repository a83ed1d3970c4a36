import { VeladisError } from "../core/index";
import { type LevelType, type ReadingType, scaledWithCare } from "../reading/index";
import { checkedOptions } from "./checked-options";
import type { CheckedTarget, CheckedType } from "./checked-types";
import { converted } from "./convert";
import type { ConvertArguments, ConvertOptions } from "./convert-options";
import { factorOf } from "./factor";
import { pairOf } from "./pair";
import { scaleArray, targetFor } from "./scale-array";

/** A compiled conversion that involves a decibel level. */
export interface LevelConverter {
  /** The value converted; the same as {@link convert} gives. */
  (value: number): number;
  readonly from: ReadingType;
  readonly to: ReadingType;
  /**
   * Every element converted, into a new array or into `target`, which may be the source itself.
   *
   * @throws {@link VeladisError} `length-mismatch`, `wrong-type`, or as for one value with the index named
   */
  array(source: Float64Array, target?: Float64Array): Float64Array;
}

/** A compiled linear conversion. */
export interface Converter extends LevelConverter {
  /** What every value is multiplied with. */
  readonly factor: number;
}

/** What {@link converter} returns: with a `factor` unless a level is involved. */
export type ConverterOf<From extends string, To extends string> = [Extract<From | To, LevelType>] extends [never]
  ? Converter
  : LevelConverter;

/** The target, or a new one, filled with every value as `one` gives it; a refusal names the index. */
function elementwise(one: (value: number) => number, source: Float64Array, given?: Float64Array): Float64Array {
  const target = targetFor(source, given);
  for (let i = 0; i < source.length; i++) {
    try {
      target[i] = one(source[i] as number);
    } catch (error) {
      const { code, expected, received } = error as VeladisError;
      throw new VeladisError(code, { expected: `${expected} at index ${i}`, received });
    }
  }
  return target;
}

/**
 * A conversion compiled once, for many values.
 *
 * Called with a number it gives the same answer as {@link convert}, bit for bit. `.array` multiplies every element
 * of a Float64Array by `.factor`, which may differ in the last bit from dividing by an exact ratio. When a value is
 * refused, the elements before it are converted, it and those behind it are as they were.
 *
 * @param from - what the values are written in
 * @param to - what they shall be written in
 * @param options - as for {@link convert}
 * @returns a frozen function with `from`, `to`, `array` and, unless a level is involved, `factor`
 * @throws {@link VeladisError} as {@link convert}
 * @example
 * ```ts
 * import { converter } from "veladis";
 *
 * const toMetric = converter("in/s pk", "mm/s rms");
 * toMetric(0.25).toFixed(3); // => "4.490"
 * toMetric.factor.toFixed(4); // => "17.9605"
 * [...converter("in/s pk", "mm/s pk").array(Float64Array.of(1, 10))]; // => [25.4, 254]
 * ```
 */
export function converter<const From extends ReadingType, const To extends ReadingType>(
  from: From,
  to: To,
  ...options: ConvertArguments<From, To>
): ConverterOf<From, To>;
// what the first has refused: as for convert
export function converter<const From extends string, const To extends string>(
  from: CheckedType<From>,
  to: CheckedTarget<From, To>,
): ConverterOf<From, To>;
export function converter(from: string, to: string, options?: ConvertOptions): Converter | LevelConverter {
  const { at, crestFactor } = checkedOptions(options);
  const pair = pairOf(from, to);
  const { from: before, to: after } = pair;
  const ends = { from: before.type, to: after.type };
  const factor = factorOf(pair, at, crestFactor);
  if (before.reference !== 0 || after.reference !== 0) {
    const byLevel = (value: number): number => converted(value, pair, factor);
    return Object.freeze(
      Object.assign(byLevel, {
        ...ends,
        array: (source: Float64Array, target?: Float64Array) => elementwise(byLevel, source, target),
      }),
    );
  }
  const { num, den } = factor;
  const k = num / den;
  // A division takes several times as long as a product, so it is done only where it keeps an exact ratio exact.
  // An infinity times zero is NaN: one comparison refuses all that is no amplitude.
  const one =
    den === 1
      ? (value: number): number => {
          if (typeof value === "number") {
            const result = value * k;
            if (result * 0 < result) return result;
          }
          return scaledWithCare(value, factor);
        }
      : (value: number): number => {
          if (typeof value === "number") {
            const result = (value * num) / den;
            if (result * 0 < result) return result;
          }
          return scaledWithCare(value, factor);
        };
  return Object.freeze(
    Object.assign(one, {
      ...ends,
      factor: k,
      array: (source: Float64Array, target?: Float64Array) => scaleArray(k, source, target),
    }),
  );
}
