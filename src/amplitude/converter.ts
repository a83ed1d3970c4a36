import { shown, VeladisError } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Assumption, type LevelType, type ReadingType, scaledWithCare } from "../reading/index";
import { type ArrayConversion, type Batch, type BatchOptions, batch } from "./batch";
import type { CheckedTarget, CheckedType } from "./checked-types";
import { converted } from "./convert";
import { assumedBetween } from "./convert-amplitude";
import type { ConvertArguments, ConvertOptions } from "./convert-options";
import { factorOf } from "./factor";
import { pairOf } from "./pair";
import { plainOptions } from "./plain-options";
import { scaleArray } from "./scale-array";

/** A compiled conversion that involves a decibel level. */
export interface LevelConverter {
  /** The value converted; the same as {@link convert} gives. */
  (value: number): number;
  readonly from: ReadingType;
  readonly to: ReadingType;
  /** What every answer assumes, as for {@link convertAmplitude}. */
  readonly assumed: readonly Assumption[];
  /** The conversion the other way, by the same options. */
  readonly inverse: LevelConverter;
  /**
   * Every element converted, into a new array of the same kind or into `target`, which may be the source itself: a
   * Float64Array, a Float32Array or a list.
   *
   * @throws {@link VeladisError} `length-mismatch`, `wrong-type`, `out-of-range` for a target that overlaps the source in
   *   part, or as for one value with the index named
   */
  readonly array: ArrayConversion;
}

/** A compiled linear conversion. */
export interface Converter extends LevelConverter {
  /** What every value is multiplied with. */
  readonly factor: number;
  readonly inverse: Converter;
}

/** What {@link converter} returns: with a `factor` unless a level is involved. */
export type ConverterOf<From extends string, To extends string> = [Extract<From | To, LevelType>] extends [never]
  ? Converter
  : LevelConverter;

/** Fills the target with every value as `one` gives it, once all are known; a refusal names the index. */
function elementwise(one: (value: number) => number, source: Batch, nan: BatchOptions["nan"], most: number) {
  return Float64Array.from(source, (value, index) => {
    if (nan === "keep" && Number.isNaN(value)) return value;
    const place = { parameter: "source", index };
    let answer: number;
    try {
      answer = one(value);
    } catch (error) {
      const { code, expected, received } = error as VeladisError;
      throw new VeladisError(code, { expected: `${expected} at index ${index}`, received, ...place });
    }
    if (answer <= most) return answer;
    const expected = `a result that a Float32Array can hold at index ${index}`;
    throw new VeladisError("not-finite", { expected, received: shown(answer), ...place });
  });
}

/**
 * A conversion compiled once, for many values.
 *
 * Called with a number it gives the same answer as {@link convert}, bit for bit. `.array` multiplies every element
 * by `.factor`, which may differ in the last bit from dividing by an exact ratio. NaN is refused, or kept with
 * `{ nan: "keep" }`. When a value is refused, an array that was to be converted in place is as it was; with
 * `{ whole: false }`, which is faster, and in another target of the same kind, the elements before it are converted.
 *
 * @param from - what the values are written in
 * @param to - what they shall be written in
 * @param options - as for {@link convert}
 * @returns a frozen function with `from`, `to`, `array`, `assumed`, `inverse` and, unless a level is involved, `factor`
 * @throws {@link VeladisError} as {@link convert}
 * @example
 * ```ts
 * import { converter } from "veladis";
 *
 * const toMetric = converter("in/s pk", "mm/s rms");
 * toMetric(0.25).toFixed(3); // => "4.490"
 * toMetric.factor.toFixed(4); // => "17.9605"
 * toMetric.assumed; // => ["sine"]
 * toMetric.inverse(4.49).toFixed(3); // => "0.250"
 * const { array } = converter("in/s pk", "mm/s pk");
 * array([1, 10]); // => [25.4, 254]
 * [...array(Float64Array.of(1, Number.NaN), undefined, { nan: "keep" })]; // => [25.4, NaN]
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
  return compiled(from, to, options);
}

/** @param back - the converter that this one is the inverse of */
function compiled(from: string, to: string, options?: ConvertOptions, back?: Converter): Converter | LevelConverter {
  const { at, crestFactor } = plainOptions(options);
  const pair = pairOf(from, to);
  const { from: before, to: after } = pair;
  const factor = factorOf(pair, at, crestFactor);
  const assumed = assumedBetween(pair, crestFactor);
  const ends = { from: before.type, to: after.type, assumed };
  // as they were told, whatever becomes of the options
  const told = { ...options, ...(at !== undefined && { at: { hertz: hertz(at) } }) } as { at: Frequency };
  const withInverse = <Made extends object>(made: Made): Made & { readonly inverse: Converter } => {
    let inverse = back;
    const get = (): Converter => {
      inverse ??= compiled(after.type, before.type, told, made as unknown as Converter) as Converter;
      return inverse;
    };
    return Object.freeze(Object.defineProperty(made, "inverse", { get, enumerable: true })) as never;
  };
  if (before.reference !== 0 || after.reference !== 0) {
    const byLevel = (value: number): number => converted(value, pair, factor);
    const array = ((source: ArrayLike<number>, target?: Batch | number[], choice?: BatchOptions) =>
      batch(source, target, choice, (values, into, { nan }, most) => {
        into.set(elementwise(byLevel, values, nan, most));
      })) as ArrayConversion;
    return withInverse(Object.assign(byLevel, { ...ends, array }));
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
  const array = ((source: ArrayLike<number>, target?: Batch | number[], choice?: BatchOptions) =>
    scaleArray(k, source, target, choice)) as ArrayConversion;
  return withInverse(Object.assign(one, { ...ends, factor: k, array }));
}
