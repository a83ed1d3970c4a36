import { type Amplitude, format } from "../reading/index";
import { decibelsText, isAmplitude, isLevelDifference, type LevelDifference, type Value } from "./value";

/** How mathjs is told to write a number, besides digits alone. */
interface MathFormatOptions {
  readonly precision?: unknown;
  readonly notation?: unknown;
}

type MathFormat = number | MathFormatOptions | undefined;

type Readable = Amplitude | LevelDifference;

function written(value: Readable, options: MathFormat): string {
  const isNumber = typeof options === "number" || (options as { isBigNumber?: boolean } | undefined)?.isBigNumber;
  const { precision, notation } = isNumber ? { precision: options } : ((options ?? {}) as MathFormatOptions);
  // an instance may write its digits as big numbers
  const digits = precision === undefined ? undefined : Number(precision);
  const kind = notation === "fixed" ? "fixed" : "digits";
  if (isAmplitude(value)) return format(value, digits === undefined ? {} : { [kind]: digits });
  return decibelsText(value.decibels, digits);
}

/** What mathjs asks of a value when it writes it, and `String`; both stand behind the value, no part of its data. */
const readable = /* @__PURE__ */ Object.freeze({
  toString(this: Readable): string {
    return written(this, undefined);
  },
  format(this: Readable, options: MathFormat): string {
    return written(this, options);
  },
});

/** An answer that says itself as a text: an amplitude or a number of decibels; all else as it is. */
export function readableAnswer(value: Value): Value {
  if (!isAmplitude(value) && !isLevelDifference(value)) return value;
  return Object.freeze(Object.assign(Object.create(readable), value)) as Readable;
}
