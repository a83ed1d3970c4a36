import { besideAt } from "./machine-beside";
import { labelAt } from "./machine-labels";
import { numberAt } from "./machine-numbers";
import { isNeutral, phraseAt } from "./machine-phrases";
import { LABEL_NAME, things } from "./machine-words";
import { standardLength } from "./other-label";

/** Which of several a machine is, or which end of it is meant: `No. 2`, `driven end`. How many characters it takes, none where a fact follows. */
export function tagLength(text: string): number {
  const [end = ""] = /^driven?[\s‐‑-]+end(?!\p{L})/iu.exec(text) ?? [];
  if (end !== "") return end.length;
  const [whole = "", before = ""] = /^(no\.?\s*#?|nos\.?\s*#?|nr\.?\s*#?)\d+[a-z]?(?=[\s,;:()]|$)/i.exec(text) ?? [];
  if (whole === "") return 0;
  const number = numberAt(text.slice(before.length), "");
  return number === undefined || number.didYouMean !== undefined ? whole.length : 0;
}

function wordAt(text: string): string {
  return /^[^\s,;:=()[\]|"]+/.exec(text)?.[0] ?? "";
}

/** True for a word that could name a thing: a tag or a mark does not. */
function isName(word: string): boolean {
  return /\p{L}/u.test(word) && !/\d/.test(word);
}

/**
 * How many characters of a text its words take up to one that is not understood, where nothing but words that say
 * nothing stands before that: `pipe`, `water hose` behind `flexible`. None where something known follows.
 */
export function strangerBehind(text: string): number {
  let at = 0;
  for (;;) {
    const space = /^\s+/.exec(text.slice(at))?.[0] ?? "";
    const next = text.slice(at + space.length);
    const word = wordAt(next);
    if (
      space === "" ||
      /driven$/i.test(word) ||
      besideAt(next) !== undefined ||
      !isName(word) ||
      LABEL_NAME.test(next) ||
      standardLength(next) > 0 ||
      labelAt(next) !== undefined ||
      tagLength(next) > 0
    )
      return 0;
    const phrase = phraseAt(next);
    const known = phrase === undefined ? word : next.slice(0, phrase.length);
    // rigid hollow shaft: no support
    const isPart = phrase?.aside === true && /(?:shaft|rotor|coupling)$/i.test(known);
    if (phrase !== undefined && !isPart) return 0;
    at += space.length + known.length;
    if (isPart || !isNeutral(word)) return at;
  }
}

const THING = /* @__PURE__ */ (() =>
  new RegExp(`(?:^|\\s)(?:(?:${things.join("|")})s?|.*(?:shaft|rotor|coupling)s?)$`, "i"))();

/** True for words that end with a thing which a word such as new or flexible before them is about. */
export function isThing(words: string): boolean {
  return THING.test(words);
}

/** How many characters of a text its words take up to the kind of machine that they stand before; none where none does. */
export function kindBehind(text: string): number {
  let at = 0;
  for (;;) {
    const gap = /^[\s()[\]"]+/.exec(text.slice(at))?.[0] ?? "";
    const next = text.slice(at + gap.length);
    const phrase = phraseAt(next);
    if (gap === "") return 0;
    if (phrase?.facts.type !== undefined || phrase?.mayBe !== undefined) return at + gap.length + phrase.length;
    const word = wordAt(next);
    const isDriven = phrase?.aside === true && /driven$/i.test(next.slice(0, phrase.length));
    if (!isDriven && (phrase !== undefined || !isNeutral(word))) return 0;
    at += gap.length + (isDriven ? phrase.length : word.length);
  }
}
