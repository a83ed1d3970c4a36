import { shown, VeladisError } from "../../core/index";
import { headingSays } from "../delimited/heading-says";

/** Decibels an octave, as people write them, with the letter of a slope before it or not: `N [dB/oct]`. */
const AN_OCTAVE =
  /\b(?:n\s*[=:,]?\s*[([{<]?\s*)?db ?(?:\/|per |pro |an |a )? ?(?:octaves?|oct|okt(?:aven?)?)(?!\p{L})/giu;
/** Words that tell of another measure of a slope, or of half of one; a number may stand right before them, as in `10log`. */
const ANOTHER =
  /(?<!\p{L})(?:n|db|dec|de[ck]ad\p{L}*|okt\p{L}*|oct\p{L}*|per|pro|exponents?|powers?|log(?:s|\d+|arithm\p{L}*)?|ln|lg|ld|hz)(?!\p{L})/iu;
/** What stands in a unit and in no words. */
const SIGNS = /[/*^%+=~\u00b7\u00b0\u00d7]/;
/** Brackets with something in them. */
const INSIDE = /[([{<]\s*[^\s.)\]}>]/;

/**
 * Whether the heading of a column of slopes says that they are in dB an octave; false where it says no unit at all.
 *
 * @throws {@link VeladisError} `unknown-option` for a heading that says, or may say, another unit
 */
export function saysDbAnOctave(heading: string): boolean {
  const spelled = heading.replaceAll("_", " ");
  const rest = spelled.replace(AN_OCTAVE, " ");
  const isOther = [ANOTHER, SIGNS, INSIDE].some((one) => one.test(rest)) || headingSays(rest).length > 0;
  if (!isOther) return rest !== spelled;
  throw new VeladisError("unknown-option", {
    expected: "a column of slopes in dB an octave for --slope-column, or --file-units none where its heading is wrong",
    received: `the heading ${shown(heading.trim())}`,
  });
}
