import { shown, VeladisError } from "../core/index";
import { type Name, type Unit, wordsIn } from "./kind-names";
import type { KindSaid, WordsAside } from "./kind-said";
import { folded } from "./label";
import type { Beside } from "./machine-beside";
import { isNeutralFor, phraseAt } from "./machine-phrases";
import { kindsOf, type MachineType } from "./machine-types";
import { builds, drivers, kindMarks, neverDriven } from "./machine-words";

/** The refusal of words that name two kinds of machine. */
export function twoKinds(a: string, b: string): VeladisError {
  return new VeladisError("syntax", {
    expected:
      'one type in the description of a machine, with what drives it as in "pump driven by motor", and what it is for as in "motor for pump"',
    received: `${shown(a)} and ${shown(b)}`,
  });
}

/** The refusal of a generator whose driver is told: the set has other limits, and higher ones, than a generator alone. */
export function setOrGenerator(written: string, driver: string): VeladisError {
  const set = `generating set driven by ${driver}`;
  return new VeladisError("missing-fact", {
    expected: `type: what was read, ${shown(set)} for the set as a whole or ${shown(written)} without its driver for the generator alone`,
    received: `${shown(written)} and ${shown(driver)}`,
    fact: "type",
  });
}

/** Refuses a kind of compressor that is put together beside a word for another build: `centrifugal`, `reciprocating`. */
export function requireOneBuild(
  { written, words }: Unit,
  others: readonly string[],
  { type, words: made }: Name,
): void {
  if (!kindsOf(type).includes("compressor") && type !== "reciprocating compressor") return;
  const all = [...words, ...others.flatMap(wordsIn)];
  if (all.some((word) => builds.includes(word) && !made.includes(word))) throw twoKinds(written, made.join(" "));
}

/** The refusal of words that make another kind of a machine. */
export function otherKind(word: string, { written }: KindSaid, kinds: readonly string[]): VeladisError {
  const isOfDriver = /\bdrive[nr]\b/i.test(word);
  return new VeladisError("syntax", {
    expected: isOfDriver
      ? 'what drives the machine, named as in "pump driven by motor" or "motor driven pump"'
      : `one kind of machine, named whole, or the line without ${shown(word)}`,
    received: `${shown(word)} beside ${shown(written)}`,
    didYouMean: kinds,
  });
}

/** The kinds that words may make of a machine; undefined where they leave it what it is. */
function markedKinds(word: string, type: MachineType): readonly string[] | undefined {
  for (const one of wordsIn(word.replace(/driven/gi, "driver"))) {
    const found = kindMarks.find(
      ([words, , beside]) =>
        words.some((mark) => folded(mark) === one) && (beside === undefined || beside.includes(type)),
    );
    if (found === undefined || isNeutralFor(one, type)) continue;
    if (!found[1].some((kind) => kindsOf(type).includes(kind))) return found[1];
  }
  return undefined;
}

/** Refuses words beside a kind that make another of it, and what cannot drive it. */
export function requireOneKind(kind: KindSaid, aside: readonly WordsAside[], beside: readonly Beside[]): void {
  const { value: type, written } = kind;
  for (const { word, mayBe, isKnown } of aside) {
    if (mayBe !== undefined) {
      if (!mayBe.some((name) => kindsOf(type).includes(phraseAt(name)?.facts.type as string)))
        throw otherKind(word, kind, mayBe);
    } else if (!isKnown) {
      const kinds = markedKinds(word, type);
      if (kinds !== undefined) throw otherKind(word, kind, kinds);
    }
  }
  for (const { name, role, type: other } of beside) {
    if (role === "for") continue;
    if (neverDriven.includes(type) || (other !== undefined && !drivers.includes(other))) throw twoKinds(written, name);
    const kinds = type === "generator" ? markedKinds(name, type) : undefined;
    if (kinds !== undefined) throw otherKind(name, kind, kinds);
  }
}
