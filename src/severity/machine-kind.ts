import { shown, VeladisError } from "../core/index";
import { folded } from "./label";
import type { Beside } from "./machine-beside";
import { isNeutralFor, phraseAt } from "./machine-phrases";
import { kindsOf, type MachineType, machineTypes } from "./machine-types";
import { builds, drivenSets, drivers, factWords, kindMarks, neverDriven } from "./machine-words";

/** A kind of machine as words said it. */
export interface KindSaid {
  readonly value: MachineType;
  readonly written: string;
}

/** Words that say no fact. */
export interface WordsAside {
  readonly word: string;
  /** What a name of several kinds may be. */
  readonly mayBe?: readonly string[];
  /** True for words that are known to say nothing. */
  readonly isKnown: boolean;
}

/** The kind of a machine, with the words that made it. */
export interface KindFound {
  readonly kind?: KindSaid;
  /** Words that make another kind of what was said, where they do. */
  readonly madeOf: readonly string[];
}

interface Name {
  readonly words: readonly string[];
  readonly type: MachineType;
}

/** What names a kind of machine, or several: words that belong together. */
interface Unit {
  readonly written: string;
  readonly words: readonly string[];
  readonly type?: MachineType;
}

function wordsIn(text: string): string[] {
  return text
    .split(/[^\p{L}]+/u)
    .map(folded)
    .filter((word) => word !== "" && word !== "driven" && word !== "by");
}

function isKindWord(word: string): boolean {
  return phraseAt(word)?.facts.type !== undefined;
}

/** Names of two words or more, which may stand in any order; a fan motor is no fan beside a motor. */
const names = /* @__PURE__ */ (() => {
  let made: readonly Name[] | undefined;
  return () => {
    made ??= [
      ...Object.entries(machineTypes).flatMap(([type, { also }]) => [type, ...also].map((name) => [name, type])),
      ...factWords.flatMap(([fact, type, plain, taken]) =>
        fact === "type" ? [...plain, ...taken].map((name) => [name, type]) : [],
      ),
    ]
      .map(([name = "", type]) => ({ words: wordsIn(name), type: type as MachineType }))
      .filter(({ words }) => words.length > 1 && words.filter(isKindWord).length < 2);
    return made;
  };
})();

/** The kinds that words name beside a unit, whatever their order. */
function namedWith({ words, type }: Unit, others: readonly string[]): Name[] {
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
function narrowest<Said extends { readonly type: MachineType }>(all: readonly Said[]): Said[] {
  return all.filter(
    ({ type }, i) => !all.some((other, k) => (other.type === type ? k < i : kindsOf(other.type).includes(type))),
  );
}

function twoKinds(a: string, b: string): VeladisError {
  return new VeladisError("syntax", {
    expected:
      'one type in the description of a machine, with what drives it as in "pump driven by motor", and what it is for as in "motor for pump"',
    received: `${shown(a)} and ${shown(b)}`,
  });
}

/** Refuses a kind of compressor that is put together beside a word for another build: `centrifugal`, `reciprocating`. */
function requireOneBuild({ written, words }: Unit, others: readonly string[], { type, words: made }: Name): void {
  if (!kindsOf(type).includes("compressor") && type !== "reciprocating compressor") return;
  const all = [...words, ...others.flatMap(wordsIn)];
  if (all.some((word) => builds.includes(word) && !made.includes(word))) throw twoKinds(written, made.join(" "));
}

/** The refusal of words that make another kind of a machine. */
function otherKind(word: string, { written }: KindSaid, kinds: readonly string[]): VeladisError {
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
function requireOneKind(kind: KindSaid, aside: readonly WordsAside[], beside: readonly Beside[]): void {
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

/**
 * The kind of machine that words say in whatever order: `compressor, screw`, `generator driven by a diesel engine`.
 *
 * @throws {@link VeladisError} `syntax` for two kinds, and for words that make another kind of the one that is said
 */
export function kindFound(
  said: readonly KindSaid[],
  aside: readonly WordsAside[],
  beside: readonly Beside[],
): KindFound {
  const units: Unit[] = [
    ...narrowest(said.map(({ value, written }) => ({ type: value, written, words: wordsIn(written) }))),
    ...aside.flatMap(({ word, mayBe }) => (mayBe === undefined ? [] : [{ written: word, words: wordsIn(word) }])),
  ];
  // a diesel fire pump is a machine of its own
  const loose = aside.filter(({ word, mayBe, isKnown }) => !isKnown && !mayBe && !wordsIn(word).some(isKindWord));
  const others = [
    ...loose.map(({ word }) => word),
    ...beside.flatMap(({ role, name }) => (role === "for" ? [name] : [])),
  ];
  // what drives a machine makes a kind of a set alone: a compressor with a reciprocating engine is no reciprocating one
  const withDrivers = [...others, ...beside.flatMap(({ role, name }) => (role === "driver" ? [name] : []))];
  const found: { type: MachineType; madeOf: readonly string[] }[] = [];
  const makes = (name: Name, written: string | undefined, from: readonly string[]): void => {
    const used = from.filter((word) => wordsIn(word).some((one) => name.words.includes(one)));
    found.push({ type: name.type, madeOf: [...new Set([...(written === undefined ? [] : [written]), ...used])] });
  };
  for (const unit of units) {
    const isSet = unit.type === "generator" || (unit.type === undefined && unit.words.includes("generating"));
    const from = isSet ? withDrivers : others;
    for (const name of namedWith(unit, from.flatMap(wordsIn))) {
      requireOneBuild(unit, others, name);
      makes(name, unit.written, from);
    }
    if (!isSet) continue;
    for (const other of [...said.map(({ value, written }) => ({ type: value, name: written })), ...beside]) {
      const set = drivenSets[other.type as keyof typeof drivenSets];
      if (set !== undefined) found.push({ type: set, madeOf: [unit.written, other.name] });
    }
  }
  if (units.length === 0) {
    const alone = aside.filter(({ isKnown }) => !isKnown);
    const strange = alone.filter((one) => !loose.includes(one));
    for (const one of strange.length === 0 ? [undefined] : strange) {
      const texts = [...(one === undefined ? [] : [one]), ...loose].map(({ word }) => word);
      // what is put together beside a machine that is not understood has to be that machine
      const needed = one === undefined ? [] : wordsIn(one.word).filter(isKindWord);
      for (const name of namedWith({ written: "", words: needed }, texts.flatMap(wordsIn)))
        makes(name, undefined, texts);
    }
  }
  const typed = units.filter((unit): unit is Unit & { type: MachineType } => unit.type !== undefined);
  const [made, other] = narrowest(found);
  if (made !== undefined && other !== undefined) throw twoKinds(made.madeOf.join(", "), other.madeOf.join(", "));
  const [first, second] = typed.filter(
    ({ type, written }) => made === undefined || !(kindsOf(made.type).includes(type) || made.madeOf.includes(written)),
  );
  if (made === undefined) {
    if (second !== undefined) throw twoKinds((first as Unit).written, second.written);
    if (first === undefined) {
      // pump driven: by what?
      const idle = beside.find(({ role, type }) => role === "driver" && type !== undefined && !drivers.includes(type));
      if (idle !== undefined) throw otherKind("driven", { value: idle.type as MachineType, written: idle.name }, []);
      return { madeOf: [] };
    }
    const kind = { value: first.type, written: first.written };
    requireOneKind(kind, aside, beside);
    return { kind, madeOf: [] };
  }
  const kind = { value: made.type, written: made.madeOf.join(", ") };
  if (first !== undefined) throw twoKinds(made.madeOf.join(", "), first.written);
  requireOneKind(
    kind,
    aside.filter(({ word }) => !made.madeOf.includes(word)),
    beside.filter(({ name }) => !made.madeOf.includes(name)),
  );
  return { kind, madeOf: made.madeOf };
}
