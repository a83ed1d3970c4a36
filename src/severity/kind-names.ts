import { lazily } from "../core/index";
import { folded } from "./label";
import { isNeutralFor, phraseAt } from "./machine-phrases";
import { kindsOf, type MachineType, machineTypes } from "./machine-types";
import { factWords } from "./machine-words";

/** A name of a kind of machine, taken apart. */
export interface Name {
  readonly words: readonly string[];
  readonly type: MachineType;
}

/** What names a kind of machine, or several: words that belong together. */
export interface Unit {
  readonly written: string;
  readonly words: readonly string[];
  readonly type?: MachineType;
}

/** The words of a text that may name a kind. */
export function wordsIn(text: string): string[] {
  return text
    .split(/[^\p{L}]+/u)
    .map(folded)
    .filter((word) => word !== "" && word !== "driven" && word !== "by");
}

/** Whether a word alone names a kind. */
export function isKindWord(word: string): boolean {
  return phraseAt(word)?.facts.type !== undefined;
}

/** Names of two words or more, which may stand in any order; a fan motor is no fan beside a motor. */
const names = /* @__PURE__ */ lazily((): readonly Name[] =>
  [
    ...Object.entries(machineTypes).flatMap(([type, { also }]) => [type, ...also].map((name) => [name, type])),
    ...factWords.flatMap(([fact, type, plain, taken]) =>
      fact === "type" ? [...plain, ...taken].map((name) => [name, type]) : [],
    ),
  ]
    .map(([name = "", type]) => ({ words: wordsIn(name), type: type as MachineType }))
    .filter(({ words }) => words.length > 1 && words.filter(isKindWord).length < 2),
);

/** The kinds that words name beside a unit, whatever their order. */
export function namedWith({ words, type }: Unit, others: readonly string[]): Name[] {
  const own = words.filter((word) => type === undefined || !isNeutralFor(word, type));
  return names().filter(
    (name) =>
      own.every((word) => name.words.includes(word)) &&
      name.words.every((word) => words.includes(word) || others.includes(word)) &&
      // centrifugal spare chiller: all its own words, parted
      (name.words.some((word) => !words.includes(word)) || (type !== undefined && kindsOf(name.type).includes(type))) &&
      (type === undefined || !kindsOf(type).includes(name.type)),
  );
}

/** Kinds that are said, without those that belong to a narrower one. */
export function narrowest<Said extends { readonly type: MachineType }>(all: readonly Said[]): Said[] {
  return all.filter(
    ({ type }, i) => !all.some((other, k) => (other.type === type ? k < i : kindsOf(other.type).includes(type))),
  );
}
