import { type ErrorPlace, shown, VeladisError } from "./error";
import type { VeladisErrorCode } from "./error-codes";
import { splitNumeral } from "./numeral";

function codeFor(written: unknown, digits: string): VeladisErrorCode {
  if (written === undefined || written === null) return "missing-option";
  if (typeof written === "number" || digits !== "") return "missing-unit";
  return typeof written === "string" ? "syntax" : "wrong-type";
}

/**
 * The digits and the unit of a text such as `"5 %"`; the digits are for {@link parseNumeral} to read.
 *
 * @param what - what it should be, for the message, e.g. `'a tolerance such as "5 %"'`
 * @throws {@link VeladisError} `missing-option`, `missing-unit`, `syntax` or `wrong-type`
 */
export function numeralAndUnit(written: string, what: string, place?: ErrorPlace): [digits: string, unit: string] {
  const [digits, unit] = typeof written === "string" ? splitNumeral(written.trim()) : ["", ""];
  if (digits !== "" && unit !== "") return [digits, unit];
  throw new VeladisError(codeFor(written, digits), { expected: what, received: shown(written), ...place });
}
