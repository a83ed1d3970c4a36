import { type ErrorPlace, shown, VeladisError } from "./error";
import type { VeladisErrorCode } from "./error-codes";
import { nearest } from "./nearest";

/** The names of a catalogue. */
interface NamesAllowed {
  /** The symbol of each name that the catalogue does hold. */
  readonly symbols: ReadonlyMap<string, string>;
  /** The catalogue, whose keys are the symbols. */
  readonly allowed: object;
  /** Where the name was given. */
  readonly place?: ErrorPlace;
}

/**
 * The error for a name that a catalogue does not hold, with the nearest symbols.
 */
export function unknownName(
  code: VeladisErrorCode,
  expected: string,
  received: string,
  { symbols, allowed, place }: NamesAllowed,
): VeladisError {
  const didYouMean = [...new Set(nearest(received, symbols.keys()).map((name) => symbols.get(name) as string))];
  return new VeladisError(code, {
    expected,
    received: shown(received),
    didYouMean,
    allowed: Object.keys(allowed),
    ...place,
  });
}
