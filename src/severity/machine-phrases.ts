import { lazily } from "../core/index";
import type { Fact } from "./facts";
import { folded } from "./label";
import type { Machine } from "./machine";
import { machineTypes } from "./machine-types";
import { type Context, factWords, fillers, noFacts, qualifiers, sizes, vagueNames } from "./machine-words";

/** What the words at the beginning of a text say of a machine, and how many characters they take. */
export interface Phrase {
  readonly length: number;
  readonly facts: Machine;
  /** Facts that the words do not say but are taken for. */
  readonly taken: readonly Fact[];
  /** What the next number is, where the words only lead to it. */
  readonly leads?: Context;
  /** True for words that are known to say no fact. */
  readonly aside?: true;
  /** What a name of several kinds of machine may be. */
  readonly mayBe?: readonly string[];
}

type Meaning = Omit<Phrase, "length">;

/** A word at the beginning of a text, where it ends, and whether a hyphen ties it to the next. */
interface Word {
  readonly key: string;
  readonly end: number;
  readonly tied: boolean;
}

const MOST_WORDS = 5;

interface Tables {
  readonly meanings: ReadonlyMap<string, Meaning>;
  /** The kinds of machine that a word may stand before. */
  readonly kinds: ReadonlyMap<string, readonly string[]>;
}

function makeTables(): Tables {
  const meanings = new Map<string, Meaning>();
  const kinds = new Map<string, readonly string[]>();
  const says = (phrase: string, facts: Machine, taken: readonly Fact[]): void => {
    const before = meanings.get(folded(phrase));
    meanings.set(folded(phrase), {
      facts: { ...before?.facts, ...facts },
      taken: [...(before?.taken ?? []), ...taken],
    });
  };
  for (const phrase of noFacts) meanings.set(folded(phrase), { facts: {}, taken: [], aside: true });
  for (const [names, mayBe] of vagueNames)
    for (const name of names) meanings.set(folded(name), { facts: {}, taken: [], aside: true, mayBe });
  for (const [leads, phrases] of fillers) {
    for (const phrase of phrases) meanings.set(folded(phrase), { facts: {}, taken: [], leads });
  }
  for (const [type, { also }] of Object.entries(machineTypes)) {
    for (const name of [type, ...also]) says(name, { type } as Machine, []);
  }
  for (const [fact, label, plain, taken] of factWords) {
    for (const phrase of plain) says(phrase, { [fact]: label }, []);
    for (const phrase of taken) says(phrase, { [fact]: label }, [fact]);
  }
  for (const [kind, words] of qualifiers) {
    for (const word of words) kinds.set(folded(word), [...(kinds.get(folded(word)) ?? []), kind]);
  }
  return { meanings, kinds };
}

/** All phrases by their key; made when first asked for, since most imports never read a machine in words. */
const tables = /* @__PURE__ */ lazily(makeTables);

/** All phrases and names as people write them, to look for near ones. */
export function knownPhrases(): string[] {
  return [
    ...Object.entries(machineTypes).flatMap(([type, { also }]) => [type, ...also]),
    ...factWords.flatMap(([, , plain, taken]) => [...plain, ...taken]),
  ];
}

/** The kinds of machine that a word may stand before, each with the word: `ID fan` for `ID`. */
export function qualifiedBy(word: string): string[] {
  const kinds = tables().kinds.get(folded(word)) ?? [];
  return kinds.filter((kind) => kind !== "").map((kind) => `${word} ${kind}`);
}

/** True for a word that may stand before a kind of machine and leaves it what it is. */
export function isNeutralFor(word: string, type: string): boolean {
  return (tables().kinds.get(folded(word)) ?? []).some((kind) => kind === type || kind === "");
}

/** True for a word that may stand before some kind of machine, and says nothing of it. */
export function isNeutral(word: string): boolean {
  return tables().kinds.has(folded(word));
}

const SIZES = /* @__PURE__ */ (() =>
  new RegExp(`\\b(?:${[...sizes].reverse().join("|").replaceAll(" ", "[\\s-]+")})\\b`, "gi"))();

/** The words of a phrase that say a size. */
export function sizesIn(phrase: string): readonly string[] {
  return phrase.match(SIZES) ?? [];
}

function wordsOf(text: string): Word[] {
  const word = /([^\s,;:=()[\]|‐‑-]+)([‐‑-]*)([\s:=]*)/y;
  const words: Word[] = [];
  while (words.length < 2 * MOST_WORDS) {
    const start = word.lastIndex;
    const [, written = "", hyphen, space] = word.exec(text) ?? [];
    const key = folded(written).replace(/\.+$/, "");
    if (key === "") break;
    words.push({ key, end: start + written.length, tied: hyphen !== "" && space === "" });
  }
  return words;
}

/** The longest phrase of a table among words from a place on, and the place behind it. */
function longest<Entry>(
  table: ReadonlyMap<string, Entry>,
  words: readonly Word[],
  from: number,
  mayBeTied: boolean,
): [Entry, to: number] | undefined {
  for (let to = Math.min(words.length, from + MOST_WORDS); to > from; to--) {
    if (!mayBeTied && words[to - 1]?.tied) continue;
    const key = words
      .slice(from, to)
      .map((word) => word.key)
      .join("");
    const entry = table.get(key);
    if (entry !== undefined) return [entry, to];
  }
  return undefined;
}

/** The phrase that begins at a place, with the words before a kind of machine that leave it what it is. */
function meaningAt(words: readonly Word[], from: number): [Meaning, to: number] | undefined {
  const { meanings, kinds } = tables();
  const plain = longest(meanings, words, from, false);
  if (plain !== undefined && plain[0].leads !== "line") return plain;
  const qualified = longest(kinds, words, from, true);
  const named = qualified && meaningAt(words, qualified[1]);
  const type = named?.[0].facts.type;
  if (named?.[0].mayBe !== undefined && qualified?.[0].some((kind) => named[0].mayBe?.includes(kind) || kind === ""))
    return named;
  return type !== undefined && qualified?.[0].some((kind) => kind === type || kind === "") ? named : plain;
}

/** Behind driven: of what is before it, that is the machine or a part of it. */
const NO_DRIVER: readonly string[] = ["by", "end"];

/** What the words at the beginning of a text say, by the longest phrase that is known; undefined where none is. */
export function phraseAt(text: string): Phrase | undefined {
  const words = wordsOf(text);
  if (words.length === 0) return undefined;
  const found = meaningAt(words, 0);
  if (found === undefined) return undefined;
  const [meaning, to] = found;
  const length = (words[to - 1] as Word).end;
  const isMachine = meaning.facts.type !== undefined || meaning.mayBe !== undefined;
  const isDriven = isMachine && words[to]?.key === "driven" && !NO_DRIVER.includes(words[to + 1]?.key ?? "");
  if (!isDriven) return { ...meaning, length };
  // pump motor driven: a pump
  if (meaning.taken.includes("type") && to > 1) return phraseAt(text.slice(0, (words[to - 2] as Word).end));
  return { length: (words[to] as Word).end, facts: {}, taken: [], aside: true };
}
