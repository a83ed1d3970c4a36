import type { ConvertOptions } from "../amplitude/index";
import type { Detector } from "../detectors/index";
import type { Frequency } from "../frequency/index";
import type { QuantityOf, ReadingType } from "../reading/index";
import type { Quantity, UnitQuantities, UnitSpelling } from "../units/index";
import type { OwnDetector } from "./own-detector";
import type { OwnUnit } from "./own-unit";

/** The quantity of every spelling of own units. */
export type OwnQuantities<Unit extends OwnUnit> = {
  // of a unit without other symbols nothing is inferred: any text would be one
  [One in Unit as One extends OwnUnit<infer Symbol, Quantity, infer Also>
    ? Symbol | (string extends Also ? never : Also)
    : never]: One["quantity"];
};

/** Every reading type of a toolkit: those that are built in, and own units and detectors with all others. */
export type OwnType<Unit extends OwnUnit, Reads extends OwnDetector> =
  | ReadingType
  | `${keyof OwnQuantities<Unit> & string} ${Detector | Reads["symbol"]}`
  | `${UnitSpelling} ${Reads["symbol"]}`;

/** The quantity that a type of a toolkit measures. */
type QuantityIn<Unit extends OwnUnit, Reads extends OwnDetector, Type extends string> = Type extends ReadingType
  ? QuantityOf<Type>
  : Type extends `${infer Own extends keyof OwnQuantities<Unit> & string} ${string}`
    ? OwnQuantities<Unit>[Own]
    : Type extends `${infer Known extends UnitSpelling} ${Reads["symbol"]}`
      ? UnitQuantities[Known]
      : Quantity;

/** The options argument of a conversion: with `at`, unless both types measure one quantity. */
export type OwnArguments<Unit extends OwnUnit, Reads extends OwnDetector, From extends string, To extends string> = [
  QuantityIn<Unit, Reads, From>,
] extends [QuantityIn<Unit, Reads, To>]
  ? [QuantityIn<Unit, Reads, To>] extends [QuantityIn<Unit, Reads, From>]
    ? [options?: ConvertOptions]
    : [options: ConvertOptions & { readonly at: Frequency }]
  : [options: ConvertOptions & { readonly at: Frequency }];

/** Every unit of a toolkit by a plain spelling. */
type UnitIn<Unit extends OwnUnit> = UnitSpelling | (keyof OwnQuantities<Unit> & string);

/** What the compiler says of a text that is no reading type of a toolkit, as of one of `convert`. */
type OwnMistake<Unit extends OwnUnit, Reads extends OwnDetector, Text extends string> = string extends Text
  ? `a text that only run time knows: name a reading type of the toolkit, not any ${string}`
  : Text extends UnitIn<Unit>
    ? `${Text} needs a detector, as in '${Text} rms'`
    : Text extends `dB${string}`
      ? `${Text} needs a reference that is known, as in 'dB re 1e-9 m/s'`
      : Text extends `${UnitIn<Unit>} ${infer Rest}`
        ? `${Rest} is no plain detector of the toolkit, such as rms`
        : Text extends `${infer Other} ${Detector | Reads["symbol"]}`
          ? `${Other} is no plain unit of the toolkit, such as mm/s`
          : `${Text} is no plain reading type of the toolkit, such as 'mm/s rms'`;

/** The text itself where it names a reading type of a toolkit; else what is wrong with it, for the compiler to say. */
export type OwnChecked<Unit extends OwnUnit, Reads extends OwnDetector, Text extends string> =
  Text extends OwnType<Unit, Reads> ? Text : OwnMistake<Unit, Reads, Text>;

/** The target itself where nothing is missing for the way to it; else what is missing, for the compiler to say. */
export type OwnTarget<Unit extends OwnUnit, Reads extends OwnDetector, From extends string, To extends string> = [
  To,
] extends [OwnType<Unit, Reads>]
  ? [From] extends [OwnType<Unit, Reads>]
    ? [options?: ConvertOptions] extends OwnArguments<Unit, Reads, From, To>
      ? To
      : `${QuantityIn<Unit, Reads, From> & string} becomes ${QuantityIn<Unit, Reads, To> & string}: needs { at }, as in { at: '1500 r/min' }`
    : To
  : OwnMistake<Unit, Reads, To>;
