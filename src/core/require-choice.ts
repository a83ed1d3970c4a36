import { type ErrorPlace, shown, VeladisError } from "./error";
import { nearest } from "./nearest";

/** The error for a word that is none of a closed list, with the nearest that are. */
export function unknownOption(
  given: unknown,
  allowed: readonly string[],
  what: string,
  place?: ErrorPlace,
): VeladisError {
  const isText = typeof given === "string";
  return new VeladisError(isText ? "unknown-option" : "wrong-type", {
    expected: what,
    received: shown(given),
    // a single letter or digit is near to every other
    didYouMean: isText && given.length > 1 ? nearest(given, allowed) : [],
    allowed,
    ...place,
  });
}

/**
 * The word itself if it is one of the allowed ones.
 *
 * @throws {@link VeladisError} `missing-option` when nothing was given, `unknown-option`, or `wrong-type` for no text
 */
export function requireChoice<const Word extends string>(
  given: unknown,
  allowed: readonly Word[],
  what: string,
  place?: ErrorPlace,
): Word {
  if (allowed.includes(given as Word)) return given as Word;
  throw unknownOption(given, allowed, what, place);
}
