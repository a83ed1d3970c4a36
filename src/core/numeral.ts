import { shown, VeladisError } from "./error";

const leading = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;

/**
 * A text split behind the number it begins with: the number's digits and the rest without its white space, or
 * undefined when it begins with no number.
 *
 * Digits with a comma are taken whole, for {@link numeral} to refuse.
 */
export function splitNumeral(text: string): [digits: string, rest: string] | undefined {
  const digits = leading.exec(text)?.[0];
  if (digits === undefined) return undefined;
  const whole = digits + (/^,\d[\d.,]*/.exec(text.slice(digits.length))?.[0] ?? "");
  return [whole, text.slice(whole.length).trimStart()];
}

/**
 * The number a text says: digits, one decimal point, an optional exponent.
 *
 * A comma is refused, since 1,500 is fifteen hundred to one reader and one and a half to the next.
 *
 * @throws {@link VeladisError} `not-a-number` or `not-finite`
 */
export function numeral(text: string, what = "a number"): number {
  const trimmed = text.trim();
  const whole = leading.exec(trimmed)?.[0] === trimmed;
  const number = whole ? Number(trimmed) : Number.NaN;
  if (Number.isFinite(number)) return number;
  throw new VeladisError(whole ? "not-finite" : "not-a-number", {
    expected: whole
      ? `${what} below 1.8e308`
      : /^[+-]?\d[\d.,]*,\d/.test(trimmed)
        ? `${what} without a comma, with a point for decimals`
        : what,
    received: shown(text),
  });
}
