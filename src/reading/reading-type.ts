import { parsedType } from "./parsed-type";
import type { ReadingType } from "./types";

/**
 * The reading type that a text of unknown content names, in its plain spelling, checked at run time.
 *
 * The way through for a `string` that the types cannot know: what comes out may go into {@link convert}, which
 * then asks for a frequency, since the types cannot prove that the quantity stays.
 *
 * @throws {@link VeladisError} `syntax`, `unknown-unit`, `unknown-detector`, `missing-detector`,
 *   `missing-reference`, `unknown-reference`
 * @example
 * ```ts
 * import { convert, readingType } from "veladis";
 *
 * const typed: string = "IPS peak"; // from a form, a file
 * readingType(typed); // => "in/s pk"
 * convert(1, readingType(typed), "mm/s rms", { at: "25 Hz" }).toFixed(2); // => "17.96"
 * ```
 */
export function readingType(written: string): ReadingType {
  return parsedType(written).type;
}
