import { requireText, shown, VeladisError } from "../core/index";

/** The longest name or page: it stands in every answer. */
const LONGEST = 80;

/** Words that stand where nobody is named. */
const nobody = /* @__PURE__ */ Object.freeze([
  ...["none", "na", "nil", "no", "yes", "nobody", "noone", "unknown", "notknown", "same", "ditto", "asabove", "tbd"],
  ...["self", "myself", "himself", "herself", "idem", "open", "someone", "somebody", "someoneelse", "somebodyelse"],
  ...[
    "yourname",
    "name",
    "firstlast",
    "firstnamelastname",
    "namesurname",
    "surname",
    "abc",
    "qwerty",
    "xyz",
    "him",
    "her",
    "them",
    "dr",
    "mr",
    "mrs",
    "ms",
    "ai",
    "theplant",
  ],
  ...["signature", "signed", "tobedone", "todo", "tobedetermined", "tobenamed", "tobeconfirmed", "nobodyelse", "me"],
]);

/** Words that are no surname. */
const noSurname = /* @__PURE__ */ Object.freeze([
  ...["nobody", "noone", "anonymous", "anon", "unknown", "niemand", "anyone", "somebody", "someone"],
]);

/** Words that no name begins with: `same person`, `see page 3`, `not yet`, `still open`. */
const beginnings = /* @__PURE__ */ Object.freeze([
  ...[
    "same",
    "see",
    "not",
    "still",
    "pending",
    "missing",
    "unread",
    "unsigned",
    "awaiting",
    "maybe",
    "perhaps",
    "probably",
  ],
]);

/** Words for whoever it is, with an article or a number perhaps: `a colleague`, `engineer 2`, `second reader`. */
const roles = /* @__PURE__ */ Object.freeze([
  ...[
    "colleague",
    "witness",
    "reader",
    "engineer",
    "inspector",
    "technician",
    "operator",
    "reviewer",
    "checker",
    "person",
    "boss",
    "manager",
    "foreman",
  ],
]);
const before = /* @__PURE__ */ Object.freeze([
  ...["a", "an", "the", "my", "our", "another", "other", "same", "first", "second", "third", "1st", "2nd", "3rd"],
]);

/** True for words that stand where nobody is named. */
function areNobody(words: readonly string[]): boolean {
  const own = words.filter((word) => !before.includes(word) && !/^\p{N}+$/u.test(word));
  const [first = "", ...more] = own;
  if (nobody.includes(words.join("")) || noSurname.includes(own.at(-1) ?? "") || own.length === 0) return true;
  const [start = ""] = words[0] === "the" ? words.slice(1) : words;
  return beginnings.includes(start) || (roles.includes(first) && more.every((word) => word.length === 1));
}

/** What leaves open whose name it is: `K. Other?`, `K. Other (not yet)`. */
const OPEN = /\?|(?<![A-Za-z])not(?![A-Za-z])/i;

/** True for letters of two alphabets in one name, of which some look the same. */
function isMixed(name: string): boolean {
  return /\p{Script=Latin}/u.test(name) && /\p{Script=Cyrillic}|\p{Script=Greek}/u.test(name);
}

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
  const words = wordsOf(name);
  const whole = words.join("");
  const isOne = /^(.)\1*$/u.test(whole);
  if (whole.replace(/\P{L}/gu, "").length >= 2 && !isOne && !areNobody(words) && !isMixed(name) && !OPEN.test(name)) {
    return name;
  }
  throw new VeladisError("syntax", {
    expected: `${what}, with its letters, all of one alphabet, such as "J. Example"`,
    received: shown(given),
  });
}

/** Words beside a name that tell nobody apart. */
const titles = /* @__PURE__ */ Object.freeze([
  ...["dr", "prof", "mr", "mrs", "ms", "miss", "sir", "ing", "dipl", "eng", "ir", "phd", "msc", "bsc", "jr", "sr"],
]);

/** The words of a name without what stands in brackets and without titles; all of them where nothing else is left. */
function properWords(name: string): string[] {
  // Müller and Mueller
  const foldedWords = (text: string): string[] => wordsOf(text).map((word) => word.replace(/([aou])e/g, "$1"));
  const all = foldedWords(name);
  const proper = foldedWords(name.replace(/\([^()]*\)|\[[^[\]]*\]/g, " ")).filter((word) => !titles.includes(word));
  return proper.length > 0 ? proper : all;
}

/** True for a word of initials, which are those of some words: RH and Rolf Holm. */
function isInitials(word: string, words: readonly string[]): boolean {
  const sorted = (letters: readonly string[]): string => [...letters].sort().join("");
  return words.length > 1 && sorted([...word]) === sorted(words.map(([first = ""]) => first));
}

/** True for texts that one letter more, less or other, or two neighbours swapped, makes the same. */
function isOneLetterOff(one: string, other: string): boolean {
  const [short, long] = one.length < other.length ? [one, other] : [other, one];
  if (long.length - short.length > 1) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at++;
  const [first, next] = short.slice(at, at + 2);
  if (long.slice(at) === `${next}${first}${short.slice(at + 2)}`) return true;
  return short.slice(short.length === long.length ? at + 1 : at) === long.slice(at + 1);
}

/** True for words spelled nearly alike; initials that differ tell apart. */
function areNear(words: readonly string[], others: readonly string[]): boolean {
  const whole = (all: readonly string[]) => all.filter((word) => word.length > 1).join(" ");
  return whole(words) !== whole(others) && isOneLetterOff(words.join(""), others.join(""));
}

/**
 * True for two names that may be of one person: `J. Example`, `EXAMPLE, J`, `Jo Example`, `JE` and `Dr J Example (retired)`.
 * First names that are both written out, and differ, tell two of one family apart.
 */
function maySamePerson(one: string, other: string): boolean {
  const [words, others] = [properWords(one), properWords(other)];
  if (words.join("") === others.join("") || areNear(words, others)) return true;
  if (isInitials(words.join(""), others) || isInitials(others.join(""), words)) return true;
  const shared = words.filter((word) => word.length > 1 && others.includes(word));
  const [less = [], more = []] = [words, others]
    .map((all) => all.filter((word) => !shared.includes(word)))
    .sort((a, b) => a.length - b.length);
  // all words alike, single letters too
  if (shared.length === 0) return [...words].sort().join(" ") === [...others].sort().join(" ");
  return less.every((word) =>
    more.some((long) => word === long || (Math.min(word.length, long.length) === 1 && word[0] === long[0])),
  );
}

/**
 * The name of another person than the first.
 *
 * @param what - as far as `the name of`
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `out-of-range`
 */
export function requireOther(given: unknown, first: string, what: string): string {
  const second = requireName(given, `${what} who else read it`);
  if (!maySamePerson(first, second)) return second;
  throw new VeladisError("out-of-range", {
    expected: `${what} another person than the first, ${shown(first)}: both written out where initials are the same, and more than a letter apart`,
    received: shown(second),
  });
}

const ROMAN = /^(?=.)m{0,3}(?:cm|cd|d?c{0,3})(?:xc|xl|l?x{0,3})(?:ix|iv|v?i{0,3})$/i;

/** What is in a standard and on no page of its own: tables, clauses, and numbers such as A.1 or 5.2.3. Made when asked
 * for: a bundle cannot drop a pattern that its engine may not know. */
const places = () =>
  /(?<!\p{L})(?:table|figure|fig|annex|appendix|clause|section|subclause|formula|equation|row|line|column|note)s?(?!\p{L})[\s.:]*[\p{L}\p{N}]*(?:[.-]\p{N}+)*|(?<![\p{L}\p{N}])(?!(?:pp?|s)\.)[\p{L}\p{N}]+(?:\.\p{N}+)+/giu;

/** True for words with a numeral that is that of a page; a lone x is a tick. */
function isPage(text: string): boolean {
  // open, or a word that takes it back: "?12", "not page 12", "page unknown 1"
  if (
    /[?~*]|(?<!\p{L})(?:not|no|none|unknown|unread|missing|some|any|or|maybe|perhaps|about|memory|web|draft)(?!\p{L})/iu.test(
      text,
    )
  )
    return false;
  const left = text.replace(places(), " ");
  if (/[^\P{N}0]/u.test(left)) return true;
  const words = left.split(/[^\p{L}]+/u).filter((word) => word !== "");
  return words.some((word) => ROMAN.test(word)) && words.join("").toLowerCase() !== "x";
}

/**
 * The page of a copy: with a digit or a roman numeral, which a table or a clause beside it does not stand for.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`
 */
export function requirePage(given: unknown, what: string): string {
  const page = lineOf(given, what);
  if (isPage(page)) return /^\d/.test(page) ? `p. ${page}` : page;
  throw new VeladisError("syntax", {
    expected: `${what}, by its number such as 12 or "p. iv"; a table or a clause is no page`,
    received: shown(given),
  });
}
