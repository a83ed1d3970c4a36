import { shown, VeladisError } from "../core/index";

/** Signs for plus and minus, as they are typed. */
export const PLUS_MINUS = /±|\+\/?[-\u2212]/;

/** True for a text that says a number plus and minus another. */
export function hasPlusMinus(text: string): boolean {
  return text.search(PLUS_MINUS) > 0;
}

/**
 * Refuses a reading with its uncertainty where that would be lost.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireNoPlusMinus(text: string): void {
  if (hasPlusMinus(text)) throw lostPlusMinus(text);
}

/** The refusal of a reading whose uncertainty would be lost. */
export function lostPlusMinus(text: string): VeladisError {
  return new VeladisError("syntax", {
    expected:
      "a reading without ±, which parseUncertain of veladis/uncertainty reads, as do veladis convert, judge, check and setpoints; else judge the value plus its uncertainty",
    received: shown(text),
  });
}
