import { shown, VeladisError } from "./error";

/** Digits with a comma are taken whole. */
const leading = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?(?:,\d[\d.,]*)?/;

/** A text that is a number as {@link parseNumeral} takes it and nothing else, without white space about it. */
export const plainNumeral = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;

/**
 * A text split behind the number it begins with: the number's digits, none if it begins with no number, and the rest
 * without its leading white space.
 *
 * Digits with a comma are taken whole, for {@link parseNumeral} to refuse.
 */
export function splitNumeral(text: string): [digits: string, rest: string] {
  const digits = leading.exec(text)?.[0] ?? "";
  return [digits, text.slice(digits.length).trimStart()];
}

/**
 * The number a text says: digits, one decimal point, an optional exponent.
 *
 * A comma is refused, since 1,500 is fifteen hundred to one reader and one and a half to the next.
 *
 * @throws {@link VeladisError} `not-a-number`, `not-finite`
 */
export function parseNumeral(text: string, what = "a number"): number {
  const trimmed = text.trim();
  // one with a comma is no number to the engine either
  const number = leading.exec(trimmed)?.[0] === trimmed ? Number(trimmed) : Number.NaN;
  if (Number.isFinite(number)) return number;
  throw new VeladisError(number ? "not-finite" : "not-a-number", {
    expected: number ? `${what} below 1.8e308` : `${what}, with a point for decimals and no comma`,
    received: shown(text),
  });
}
