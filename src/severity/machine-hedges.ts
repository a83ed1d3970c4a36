import { shown, VeladisError } from "../core/index";

/** Words that make a fact beside them less than plain: negations, bounds, guesses, what was or is yet to be. */
// biome-ignore format: a row of a table is a line
export const hedges = /* @__PURE__ */ Object.freeze([
  "not", "no", "non", "nor", "never", "without", "neither", "none", "cannot", "hardly", "barely", "except", "unless", "if", "but", "instead",
  "up", "upto", "upwards", "most", "least", "max", "maximum", "maximal", "min", "minimum", "minimal", "less", "more", "than", "fewer", "limit", "limited",
  "below", "under", "over", "above", "beyond", "exceeding", "between", "within",
  "about", "approx", "approximately", "approximate", "circa", "ca", "around", "roughly", "nearly", "almost", "estimated", "say", "plus", "minus",
  "either", "or", "maybe", "perhaps", "probably", "probable", "possibly", "possible", "likely", "unlikely", "presumably", "supposedly", "apparently", "assumed", "expected", "unknown", "unclear", "unsure", "uncertain",
  "semi", "quasi", "partly", "partially", "mostly", "rather", "fairly", "somewhat", "sometimes",
  "be", "tbc", "tbd", "unconfirmed", "pending", "provisional", "provisionally", "tentative", "tentatively", "presumed",
  "formerly", "former", "previously", "previous", "earlier", "was", "were", "ex", "future", "planned",
]);

/** Marks that do the same. */
const MARK = /[?!~<>≤≥±≈≠∼≲≳¬]|\+\/?-/;

/** Words that leave a number open to one side; beside other words they say nothing. */
const OPEN = /^(?:to|from|till|until)$/i;

/** Labels of schemes that hold such a word. */
const KNOWN = /\bbetween[\s-]bearings\b/i;

/** The first word of a text that is no plain one. */
function hedgeIn(text: string): string | undefined {
  const words = text.split(/\s+/).flatMap((word) => {
    // of a tag or a number with its unit, only what leads
    const parts = /\d/.test(word) ? [/^\p{L}+/u.exec(word)?.[0] ?? ""] : word.split(/[^\p{L}'’]+/u);
    return parts.filter((part) => part !== "");
  });
  return words.find((word) => hedges.includes(word.toLowerCase()) || /n['’]t$/i.test(word));
}

/**
 * Refuses words of a machine that leave open what the fact beside them is: set aside alone, they would make a plain fact
 * of it.
 *
 * @param written - what was read as one
 * @param behind - what follows
 * @param isRead - true for words that are known, in which marks alone are looked for
 * @throws {@link VeladisError} `syntax`
 */
export function requirePlain(written: string, behind: string, isRead: boolean): void {
  const plain = written
    .normalize("NFKC")
    .replace(/"[^"]*"/g, "")
    // three phases
    .replace(/^[13]\s?~$/, "");
  const open = OPEN.test(plain) && /^\s*\d/.test(behind) ? plain : undefined;
  const word = MARK.exec(plain)?.[0] ?? (isRead ? undefined : (open ?? hedgeIn(plain.replace(KNOWN, ""))));
  if (word === undefined) return;
  throw new VeladisError("syntax", {
    expected: 'facts of a machine said plainly, a range as "900 to 1800 r/min" or "50 to 400 kW"',
    received: `${shown(word)} in ${shown(`${written}${behind}`)}`,
  });
}
