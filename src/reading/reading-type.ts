import { inPlace, isAnswered } from "../core/index";
import type { Quantity } from "../units/index";
import { parsedType } from "./parsed-type";
import type { ReadingType, ReadingTypeText } from "./types";

/**
 * The reading type that a text of unknown content names, in its plain spelling, checked at run time.
 *
 * The way through for a `string` that the types cannot know: what comes out may go into {@link convert}. Which quantity
 * it has is known at run time alone, so a frequency that is needed and not given is refused then, as `missing-frequency`.
 *
 * @throws {@link VeladisError} `syntax`, `unknown-unit`, `unknown-detector`, `missing-detector`,
 *   `missing-reference`, `unknown-reference`
 * @example
 * ```ts
 * import { convert, readingType } from "veladis";
 *
 * const typed: string = "IPS peak"; // from a form, a file
 * readingType(typed); // => "in/s pk"
 * convert(1, readingType(typed), "mm/s rms").toFixed(2); // => "17.96"
 * convert(1, readingType(typed), "um pp"); // throws missing-frequency
 * ```
 */
export function readingType(written: string): ReadingType {
  return inPlace({ parameter: "written" }, () => parsedType(written)).type;
}

/**
 * Whether a text names a reading type, in any of its spellings. Where it does, the compiler takes it for one.
 *
 * @param text - anything: what is no text is no reading type
 * @example
 * ```ts
 * import { convert, isReadingType } from "veladis";
 *
 * const typed: string = "IPS peak"; // from a form, a file
 * isReadingType(typed) ? convert(1, typed, "mm/s rms").toFixed(2) : "no reading type"; // => "17.96"
 * isReadingType("mm/s"); // => false
 * ```
 */
export function isReadingType(text: unknown): text is ReadingType {
  return isAnswered(() => parsedType(text as string));
}

/**
 * The quantity that a reading type measures: whether a conversion to another type needs a frequency.
 *
 * @throws {@link VeladisError} as {@link readingType}
 * @example
 * ```ts
 * import { quantityOf } from "veladis";
 *
 * quantityOf("in/s pk"); // => "velocity"
 * quantityOf("dB re ISO 1683 acceleration"); // => "acceleration"
 * ```
 */
export function quantityOf(type: ReadingTypeText): Quantity {
  return inPlace({ parameter: "type" }, () => parsedType(type)).quantity;
}
