import { type ErrorPlace, shown, VeladisError } from "./error";
import type { VeladisErrorCode } from "./error-codes";
import { nearest } from "./nearest";

/**
 * The error for a name that a catalogue does not hold, with the nearest symbols.
 *
 * @param symbols - symbol of each name that the catalogue does hold
 * @param allowed - the catalogue, whose keys are the symbols
 */
export function unknownName(
  code: VeladisErrorCode,
  expected: string,
  received: string,
  symbols: ReadonlyMap<string, string>,
  allowed: object,
  place?: ErrorPlace,
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
