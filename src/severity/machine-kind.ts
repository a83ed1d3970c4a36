import { isKindWord, type Name, namedWith, narrowest, type Unit, wordsIn } from "./kind-names";
import { otherKind, requireOneBuild, requireOneKind, setOrGenerator, twoKinds } from "./kind-refusals";
import type { KindSaid, WordsAside } from "./kind-said";
import type { Beside } from "./machine-beside";
import { kindsOf, type MachineType } from "./machine-types";
import { drivenSets, drivers } from "./machine-words";

/** The kind of a machine, with the words that made it. */
export interface KindFound {
  readonly kind?: KindSaid;
  /** Words that make another kind of what was said, where they do. */
  readonly madeOf: readonly string[];
}

/** All that words said of what a machine is. */
interface Said {
  readonly kinds: readonly KindSaid[];
  readonly aside: readonly WordsAside[];
  readonly beside: readonly Beside[];
}

/** A kind that several words make together. */
interface Made {
  readonly type: MachineType;
  readonly madeOf: readonly string[];
}

/** What names a kind by itself, and words of which nothing else is known. */
function unitsOf({ kinds, aside }: Said): Unit[] {
  return [
    ...narrowest(kinds.map(({ value, written }) => ({ type: value, written, words: wordsIn(written) }))),
    ...aside.flatMap(({ word, mayBe }) => (mayBe === undefined ? [] : [{ written: word, words: wordsIn(word) }])),
  ];
}

/** Words that were not understood and name no kind alone: a diesel fire pump is a machine of its own. */
function looseWords({ aside }: Said): string[] {
  return aside
    .filter(({ word, mayBe, isKnown }) => !isKnown && !mayBe && !wordsIn(word).some(isKindWord))
    .map(({ word }) => word);
}

function namesBeside({ beside }: Said, role: Beside["role"]): string[] {
  return beside.flatMap((one) => (one.role === role ? [one.name] : []));
}

/** The kind that a name says, made of what was written and of the texts that hold words of the name. */
function madeFrom({ type, words }: Name, written: readonly string[], texts: readonly string[]): Made {
  const used = texts.filter((text) => wordsIn(text).some((word) => words.includes(word)));
  return { type, madeOf: [...new Set([...written, ...used])] };
}

/** The kinds that a unit makes with the words around it. */
function madeOfUnit(unit: Unit, said: Said): Made[] {
  const around = [...looseWords(said), ...namesBeside(said, "for")];
  // what drives a machine makes a kind of a set alone: a compressor with a reciprocating engine is no reciprocating one
  const isSet = unit.type === "generator" || (unit.type === undefined && unit.words.includes("generating"));
  const from = isSet ? [...around, ...namesBeside(said, "driver")] : around;
  const named = namedWith(unit, from.flatMap(wordsIn)).map((name) => {
    requireOneBuild(unit, around, name);
    return madeFrom(name, [unit.written], from);
  });
  if (!isSet) return named;
  const others = [...said.kinds.map(({ value, written }) => ({ type: value, name: written })), ...said.beside];
  const driven = others.flatMap(({ type, name }) => {
    const set = drivenSets[type as keyof typeof drivenSets];
    return set === undefined ? [] : [{ type: set, madeOf: [unit.written, name] }];
  });
  return [...named, ...driven];
}

/** The kinds that words make which say none by themselves. */
function madeOfStrangers(said: Said): Made[] {
  const loose = looseWords(said);
  const strange = said.aside.filter(({ word, isKnown }) => !isKnown && !loose.includes(word)).map(({ word }) => word);
  return (strange.length === 0 ? [undefined] : strange).flatMap((one) => {
    const texts = [...(one === undefined ? [] : [one]), ...loose];
    // what is put together beside a machine that is not understood has to be that machine
    const needed = one === undefined ? [] : wordsIn(one).filter(isKindWord);
    return namedWith({ written: "", words: needed }, texts.flatMap(wordsIn)).map((name) => madeFrom(name, [], texts));
  });
}

/** The one kind that was said by itself; none where nothing was. */
function oneSaid(typed: readonly (Unit & { type: MachineType })[], said: Said): KindFound {
  const [first, second] = typed;
  if (first !== undefined && second !== undefined) throw twoKinds(first.written, second.written);
  if (first === undefined) {
    // pump driven: by what?
    const idle = said.beside.find(
      ({ role, type }) => role === "driver" && type !== undefined && !drivers.includes(type),
    );
    if (idle !== undefined) throw otherKind("driven", { value: idle.type as MachineType, written: idle.name }, []);
    return { madeOf: [] };
  }
  const kind = { value: first.type, written: first.written };
  requireOneKind(kind, said.aside, said.beside);
  return { kind, madeOf: [] };
}

/**
 * The kind of machine that words say in whatever order: `compressor, screw`, `generating set driven by a diesel engine`.
 *
 * @throws {@link VeladisError} `syntax` for two kinds, and for words that make another kind of the one that is said;
 *   `missing-fact` for a generator with what drives it, which may be the generator alone or the set
 */
export function kindFound(
  kinds: readonly KindSaid[],
  aside: readonly WordsAside[],
  beside: readonly Beside[],
): KindFound {
  const said = { kinds, aside, beside };
  const units = unitsOf(said);
  const found = units.length === 0 ? madeOfStrangers(said) : units.flatMap((unit) => madeOfUnit(unit, said));
  const typed = units.filter((unit): unit is Unit & { type: MachineType } => unit.type !== undefined);
  const [made, other] = narrowest(found);
  if (made === undefined) return oneSaid(typed, said);
  const { type, madeOf } = made;
  const written = madeOf.join(", ");
  if (other !== undefined) throw twoKinds(written, other.madeOf.join(", "));
  const apart = typed.find((unit) => !kindsOf(type).includes(unit.type) && !madeOf.includes(unit.written));
  if (apart !== undefined) throw twoKinds(written, apart.written);
  const alone = typed.find((unit) => unit.type === "generator" && madeOf.includes(unit.written));
  // a wind turbine has its generator as a part in its own table
  if (alone !== undefined && type !== "generator" && type !== "wind turbine")
    throw setOrGenerator(alone.written, madeOf.filter((word) => word !== alone.written).join(" "));
  const kind = { value: type, written };
  requireOneKind(
    kind,
    aside.filter(({ word }) => !madeOf.includes(word)),
    beside.filter(({ name }) => !madeOf.includes(name)),
  );
  return { kind, madeOf };
}
