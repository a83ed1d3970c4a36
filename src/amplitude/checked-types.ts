import type { Detector } from "../detectors/index";
import type { QuantityOf, ReadingType } from "../reading/index";
import type { Quantity, UnitSpelling } from "../units/index";
import type { NeedsCrestFactor, QuantityChange } from "./convert-options";

/**
 * What the compiler says of a text that is no plain spelling of a reading type. Run time reads more spellings: nothing is
 * called unknown that it may know. The first is a pattern: an editor that completes a text
 * would offer plain words.
 */
type Mistake<Text extends string> = string extends Text
  ? `a text that only run time knows: ask isReadingType(text) first, or give readingType(text), not any ${string}`
  : Text extends UnitSpelling
    ? `${Text} needs a detector, as in '${Text} rms'`
    : Text extends `dB${string}`
      ? `${Text} needs a reference that is known, as in 'dB re 1e-9 m/s'`
      : Text extends `${UnitSpelling} ${infer Rest}`
        ? Lowercase<Rest> extends Detector
          ? `${Rest} is no plain spelling: write ${Lowercase<Rest>}`
          : `${Rest} is no plain detector, such as rms; for other spellings give readingType(text)`
        : Text extends `${infer Unit} ${Detector}`
          ? `${Unit} is no plain unit, such as mm/s; for other spellings give readingType(text)`
          : `${Text} is no plain reading type, such as 'mm/s rms'; for other spellings give readingType(text)`;

/** The text itself where it names a reading type; else what is wrong with it, for the compiler to say. */
export type CheckedType<Text extends string> = Text extends ReadingType ? Text : Mistake<Text>;

/** The quantities of the one that the other has not. */
type Apart<One extends Quantity, Other extends Quantity> = Exclude<One, Other> | Exclude<Other, One>;

/** A target of several texts, of which one is of another quantity; of one that only run time knows nothing is proved. */
type OpenTarget<From extends ReadingType, To extends ReadingType> = [Quantity] extends [QuantityOf<From>]
  ? To
  : [Quantity] extends [QuantityOf<To>]
    ? To
    : `not all of one quantity (${Apart<QuantityOf<From>, QuantityOf<To>>}): needs { at }, as in { at: '1500 r/min' }`;

/** The target itself where nothing is missing for the way to it; else what is missing, for the compiler to say. */
export type CheckedTarget<From extends string, To extends string> = [To] extends [ReadingType]
  ? [From] extends [ReadingType]
    ? NeedsCrestFactor<From, To> extends true
      ? QuantityChange<From, To> extends "changes"
        ? `from or to a true peak: ${QuantityOf<From>} cannot become ${QuantityOf<To>}, as such a waveform is no single sine`
        : "from or to a true peak: needs { crestFactor }"
      : QuantityChange<From, To> extends "changes"
        ? `${QuantityOf<From>} becomes ${QuantityOf<To>}: needs { at }, as in { at: '1500 r/min' }`
        : QuantityChange<From, To> extends "open"
          ? OpenTarget<From, To>
          : To
    : To
  : Mistake<To>;
