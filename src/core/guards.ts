import { shown, VeladisError } from "./error";
import type { VeladisErrorCode } from "./error-codes";

function refuse(code: VeladisErrorCode, expected: string, received: unknown): never {
  throw new VeladisError(code, { expected, received: shown(received) });
}

/**
 * The number itself if it is finite.
 *
 * @param what - what it should be, for the message, e.g. `"a level in dB"`
 * @throws {@link VeladisError} `wrong-type`, `not-a-number` or `not-finite`
 */
export function requireFinite(value: number, what: string): number {
  if (Number.isFinite(value)) return value;
  return refuse(
    typeof value !== "number" ? "wrong-type" : !Number.isNaN(value) ? "not-finite" : "not-a-number",
    what,
    value,
  );
}

/** The number itself if it is finite and not below zero. */
export function requireNonNegative(value: number, what: string): number {
  return requireFinite(value, what) >= 0 ? value : refuse("negative", what, value);
}

/** The number itself if it is finite and above zero. */
export function requirePositive(value: number, what: string): number {
  return requireFinite(value, what) > 0 ? value : refuse("not-positive", what, value);
}

/**
 * The text itself if it is a text with something in it.
 *
 * @throws {@link VeladisError} `wrong-type` or `syntax`
 */
export function requireText(value: string, what: string): string {
  if (typeof value === "string" && value.trim()) return value;
  return refuse(typeof value === "string" ? "syntax" : "wrong-type", what, value);
}
