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

/** True only where the types prove that both sides measure one quantity. */
type SameQuantity<From extends ReadingType, To extends ReadingType> = true extends
  | IsUnion<QuantityOf<From>>
  | IsUnion<QuantityOf<To>>
  ? false
  : [QuantityOf<From>] extends [QuantityOf<To>]
    ? true
    : false;

/** True where the type proves a true peak, false where it proves another detector. */
type IsTruePeak<Type extends ReadingType> = Type extends `${string} true pk` ? true : false;

/** True only where the types prove a true peak on one side alone. */
type NeedsCrestFactor<From extends ReadingType, To extends ReadingType> = [IsTruePeak<From>, IsTruePeak<To>] extends
  | [true, false]
  | [false, true]
  ? true
  : false;

/**
 * The options argument: required, with `at`, unless both types measure one quantity; with `crestFactor`, where one of them
 * alone is a true peak.
 */
export type ConvertArguments<From extends ReadingType, To extends ReadingType> =
  NeedsCrestFactor<From, To> extends true
    ? [options: ConvertOptions & { readonly crestFactor: number }]
    : SameQuantity<From, To> extends true
      ? [options?: ConvertOptions]
      : [options: ConvertOptions & { readonly at: Frequency }];
