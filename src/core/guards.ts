import { type ErrorPlace, shown, VeladisError } from "./error";
import type { VeladisErrorCode } from "./error-codes";

function refuse(code: VeladisErrorCode, expected: string, received: unknown, place?: ErrorPlace): never {
  throw new VeladisError(code, { expected, received: shown(received), ...place });
}

/**
 * The number itself if it is finite.
 *
 * @param what - what it should be, for the message, e.g. `"a level in dB"`
 * @param place - the parameter, option or element in which it stands
 * @throws {@link VeladisError} `wrong-type`, `not-a-number` or `not-finite`
 */
export function requireFinite(value: number, what: string, place?: ErrorPlace): number {
  if (Number.isFinite(value)) return value;
  return refuse(
    // of numbers that are not finite, NaN alone counts as false
    typeof value !== "number" ? "wrong-type" : value ? "not-finite" : "not-a-number",
    what,
    value,
    place,
  );
}

/** The number itself if it is finite and not below zero. */
export function requireNonNegative(value: number, what: string, place?: ErrorPlace): number {
  return requireFinite(value, what, place) >= 0 ? value : refuse("negative", what, value, place);
}

/** The number itself if it is finite and above zero. */
export function requirePositive(value: number, what: string, place?: ErrorPlace): number {
  return requireFinite(value, what, place) > 0 ? value : refuse("not-positive", what, value, place);
}

/**
 * The text itself if it is a text with something in it.
 *
 * @throws {@link VeladisError} `wrong-type` or `syntax`
 */
export function requireText(value: string, what: string, place?: ErrorPlace): string {
  if (typeof value === "string" && value.trim()) return value;
  return refuse(typeof value === "string" ? "syntax" : "wrong-type", what, value, place);
}
