import { requireText, shown, VeladisError } from "../core/index";

/** The longest name or page: it stands in every answer. */
const LONGEST = 80;

/** Words that stand where nobody is named. */
const nobody = /* @__PURE__ */ Object.freeze([
  ...["none", "na", "nil", "no", "yes", "nobody", "noone", "unknown", "notknown", "same", "ditto", "asabove", "tbd"],
]);

/** A text of one line that is not too long for small print. */
function lineOf(given: unknown, what: string): string {
  const text = requireText(given as string, what).trim();
  if (text.length <= LONGEST && !/\p{Cc}|\p{Zl}|\p{Zp}/u.test(text)) return text;
  throw new VeladisError("syntax", {
    expected: `${what}, of one line and ${LONGEST} characters at most`,
    received: shown(given),
  });
}

/** The words of a name in one form each: capital and small letters, accents, dots and characters without width aside. */
function wordsOf(name: string): string[] {
  const plain = name
    .normalize("NFKD")
    .replace(/[\p{M}\p{Cf}]/gu, "")
    .toUpperCase()
    .toLowerCase();
  return plain.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}

/**
 * The name of a person: of two letters or more, and no word for nobody.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`
 */
export function requireName(given: unknown, what: string): string {
  const name = lineOf(given, what);
  const whole = wordsOf(name).join("");
  const isOne = /^(.)\1*$/u.test(whole);
  if (whole.replace(/\P{L}/gu, "").length >= 2 && !isOne && !nobody.includes(whole)) return name;
  throw new VeladisError("syntax", {
    expected: `${what}, with its letters, such as "J. Example"`,
    received: shown(given),
  });
}

/** True for two names of one person, turned round too: `J. Example` and `EXAMPLE, J`. */
function isSamePerson(one: string, other: string): boolean {
  const [words, others] = [wordsOf(one), wordsOf(other)];
  return words.join("") === others.join("") || words.sort().join(" ") === others.sort().join(" ");
}

/**
 * The name of another person than the first.
 *
 * @param what - as far as `the name of`
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `out-of-range`
 */
export function requireOther(given: unknown, first: string, what: string): string {
  const second = requireName(given, `${what} who else read it`);
  if (!isSamePerson(first, second)) return second;
  throw new VeladisError("out-of-range", {
    expected: `${what} another person than the first`,
    received: shown(second),
  });
}

const ROMAN = /^(?=.)m{0,3}(?:cm|cd|d?c{0,3})(?:xc|xl|l?x{0,3})(?:ix|iv|v?i{0,3})$/i;

/** True for words with a numeral; a lone x is a tick. */
function isPage(text: string): boolean {
  if (/[^\P{N}0]/u.test(text)) return true;
  const words = text.split(/[^\p{L}]+/u).filter((word) => word !== "");
  return words.some((word) => ROMAN.test(word)) && words.join("").toLowerCase() !== "x";
}

/**
 * The page of a copy: with a digit or a roman numeral.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`
 */
export function requirePage(given: unknown, what: string): string {
  const page = lineOf(given, what);
  if (isPage(page)) return /^\d/.test(page) ? `p. ${page}` : page;
  throw new VeladisError("syntax", {
    expected: `${what}, by its number such as 12 or "p. iv"`,
    received: shown(given),
  });
}
