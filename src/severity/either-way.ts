import { shown, VeladisError } from "../core/index";
import type { Machine } from "./machine";
import { isThing } from "./machine-neighbours";
import { phraseAt } from "./machine-phrases";

/** A fact that may not be left open: a machine that is not new, or a reading on the housing, is judged by other limits. */
export type AskedFact = "new" | "shaft";

/** What is told apart, what the word says of the machine, and what it may say else. */
const meanings = {
  new: ["the machine and its parts apart", "the machine is new", "a part of it is"],
  shaft: [
    "the place of the reading and the parts of the machine apart",
    "the reading was taken on the shaft",
    "it is a part of the machine",
  ],
} as const satisfies Record<AskedFact, readonly string[]>;

/** The fact that may not be left open, of those that a word says. */
export function askedFact({ condition, place }: Machine): AskedFact | undefined {
  return condition === "new" ? "new" : place === "shaft" ? "shaft" : undefined;
}

/** The refusal of a word that says such a fact, or belongs to words beside it that are not understood. */
export function eitherWay(fact: AskedFact, word: string, apart: string, written: string): VeladisError {
  const [what, said, other] = meanings[fact];
  return new VeladisError("syntax", {
    expected: `${what}: ${shown(apart)} where ${said}; without ${shown(word)} where ${other}`,
    received: shown(written),
  });
}

/**
 * Refuses a `shaft` right behind a word that says nothing of its own: in `parallel shaft` or `cardan shaft` it is a part of
 * the machine, not the place of the reading.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireNoPart(before: string, words: string, facts: Machine | undefined): void {
  if (before === "" || facts?.place !== "shaft" || !/^\p{L}+$/u.test(words)) return;
  throw eitherWay("shaft", words, `${before}, ${words}`, `${before} ${words}`);
}

/** Refuses a word such as `new-premium` that a hyphen makes of a fact that may not be left open and another word. */
export function requireApart(word: string): void {
  const parts = word.split(/[‐‑-]+/).filter((part) => part !== "");
  if (parts.length < 2 || /\d/.test(word) || isThing(parts.at(-1) as string)) return;
  for (const [i, part] of parts.entries()) {
    const phrase = phraseAt(part);
    const fact = phrase?.length === part.length ? askedFact(phrase.facts) : undefined;
    if (fact !== undefined) throw eitherWay(fact, part, `${part}, ${parts.filter((_, k) => k !== i).join(" ")}`, word);
  }
}
