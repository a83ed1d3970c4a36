import type { Frequency } from "../frequency/index";
import type { QuantityOf, ReadingType } from "../reading/index";

/** What a conversion may be told besides the two types. */
export interface ConvertOptions {
  /** The frequency of the vibration; needed when the quantity changes. One that the reading itself says must be the same. */
  readonly at?: Frequency;
  /**
   * Peak over RMS of this waveform, 1 or more, in place of the sine's 1.414. Only between peak or
   * peak-to-peak and RMS of one quantity.
   */
  readonly crestFactor?: number;
}

type IsUnion<T, Whole = T> = T extends unknown ? ([Whole] extends [T] ? false : true) : never;

/** What the types prove of the quantity; of texts that only run time knows they prove nothing. */
export type QuantityChange<From extends ReadingType, To extends ReadingType> = [
  Extract<QuantityOf<From>, QuantityOf<To>>,
] extends [never]
  ? "changes"
  : true extends IsUnion<QuantityOf<From>> | IsUnion<QuantityOf<To>>
    ? "open"
    : "stays";

/** True where the type proves a true peak, false where it proves another detector. */
type IsTruePeak<Type extends ReadingType> = Type extends `${string} true pk` ? true : false;

/** True only where the types prove a true peak on one side alone. */
export type NeedsCrestFactor<From extends ReadingType, To extends ReadingType> = [
  IsTruePeak<From>,
  IsTruePeak<To>,
] extends [true, false] | [false, true]
  ? true
  : false;

/**
 * The options argument: with `crestFactor`, where one of the types alone is a true peak; with `at`, where they prove that
 * the quantity changes. It may be left out where they prove that the quantity stays; types that only run time knows are
 * taken without it by the second signature, and what is missing is refused when it is run.
 */
export type ConvertArguments<From extends ReadingType, To extends ReadingType> =
  NeedsCrestFactor<From, To> extends true
    ? [options: ConvertOptions & { readonly crestFactor: number }]
    : {
        readonly stays: [options?: ConvertOptions];
        readonly open: [options: ConvertOptions];
        readonly changes: [options: ConvertOptions & { readonly at: Frequency }];
      }[QuantityChange<From, To>];
