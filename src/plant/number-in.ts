import { plainNumeral } from "../core/index";

/** The number that a text is, and nothing else; undefined where it is none. */
export function numberIn(text: string): number | undefined {
  const digits = text.trim();
  return plainNumeral.test(digits) ? Number(digits) : undefined;
}
