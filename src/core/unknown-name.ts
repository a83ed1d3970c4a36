import { shown, VeladisError } from "./error";
import type { VeladisErrorCode } from "./error-codes";
import { nearest } from "./nearest";

/** The symbol of each name that a catalogue does hold, and the catalogue, whose keys are the symbols. */
type NamesAllowed = readonly [symbols: ReadonlyMap<string, string>, allowed: object];

/**
 * The error for a name that a catalogue does not hold, with the nearest symbols.
 */
export function unknownName(
  code: VeladisErrorCode,
  expected: string,
  received: string,
  [symbols, allowed]: NamesAllowed,
): VeladisError {
  const didYouMean = [...new Set(nearest(received, symbols.keys()).map((name) => symbols.get(name) as string))];
  return new VeladisError(code, {
    expected,
    received: shown(received),
    didYouMean,
    allowed: Object.keys(allowed),
    parameter: "spelling",
  });
}
