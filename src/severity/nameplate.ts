import { frozen, same } from "../core/index";
import { type Fact, facts as factTable } from "./facts";
import type { KindSaid } from "./kind-said";
import { labelKey } from "./label";
import { type KnownFacts, knownFacts, type Machine, type NotUnderstood } from "./machine";
import type { Beside } from "./machine-beside";
import { kindFound } from "./machine-kind";
import type { NumberSaid, SpeedSaid } from "./machine-numbers";
import { machineTypes } from "./machine-types";
import { type ApparentSaid, platePower, requireOutput } from "./plate-power";
import { type Poles, speedOf } from "./speed-of";
import { contradiction } from "./two-values";

/** What one phrase says. */
export interface Said extends Omit<NumberSaid, "didYouMean"> {
  /** Facts that the words do not say but are taken for. */
  readonly taken?: readonly Fact[];
  /** Words within, that are not understood and leave the rest what it is. */
  readonly beside?: readonly string[];
  /** The nearest known words, of one that is not understood. */
  readonly didYouMean?: readonly string[];
  /** What a name of several kinds of machine may be. */
  readonly mayBe?: readonly string[];
  /** True for words set aside that are known to say no fact. */
  readonly plain?: true;
  readonly machineBeside?: Beside;
  /** What a frame size with a space in it says, should the machine be electrical. */
  readonly spacedFrame?: Machine;
  readonly powerFactor?: number;
  /** True for a range of the line's frequency, which is set aside. */
  readonly isLineRange?: true;
}

/** A letter of a thermal class of IEC 60085, as insulation has it (from memory); no table of limits has such a class. */
const THERMAL = /^(?:class|cl)\b[.\s:=]*[AEBYNRC]$/i;

function isSame(a: KnownFacts[Fact], b: KnownFacts[Fact]): boolean {
  return typeof a === "number" && typeof b === "number" ? same(a, b) : labelKey(String(a)) === labelKey(String(b));
}

/** Sets of which the generator alone is judged by other tables; that of a hydro set is a part of it in its own. */
const setsApart: readonly unknown[] = /* @__PURE__ */ frozen([
  "steam turbine",
  "gas turbine",
  "reciprocating generating set",
] as const);

/** What is said of a name that ends with the generator and was taken for the set. */
function setText(fact: Fact, value: unknown, words: ReadonlySet<string>): string {
  const isSet = fact === "type" && setsApart.includes(value) && [...words].some((one) => /generator$/i.test(one));
  return isSet ? ', taken for the set as a whole; where its generator alone was read, say "generator"' : "";
}

/** A collector of what the phrases of a line say, in any order; it refuses what contradicts. */
export function nameplate() {
  const stated = new Map<Fact, { value: unknown; written: string }>();
  const plain = new Set<Fact>();
  const taken = new Map<Fact, Set<string>>();
  const speeds: SpeedSaid[] = [];
  const lines: SpeedSaid[] = [];
  const lineRanges: string[] = [];
  const poles: Poles[] = [];
  const apparent: { said: ApparentSaid; written: string }[] = [];
  const factors: { value: number; written: string }[] = [];
  const kinds: KindSaid[] = [];
  const aside: (NotUnderstood & { readonly mayBe?: readonly string[]; readonly isKnown: boolean })[] = [];
  const machinesBeside: Beside[] = [];
  const ratings: { value: Machine["power"]; written: string }[] = [];
  /** Words whose meaning waits for the kind of machine. */
  const waiting: { said: Said; written: string }[] = [];

  const state = (fact: Fact, value: unknown, written: string): void => {
    if (fact === "type") {
      // all kinds are compared once they are read
      kinds.push({ value: value as KindSaid["value"], written });
      return;
    }
    if (fact === "power") ratings.push({ value: value as Machine["power"], written });
    const before = stated.get(fact);
    if (before === undefined) {
      stated.set(fact, { value, written });
      return;
    }
    const known = (one: unknown) => knownFacts({ [fact]: one } as Machine)[fact];
    // all powers are compared once they are read
    if (fact !== "power" && !isSame(known(before.value), known(value)))
      throw contradiction(fact, before.written, written);
  };

  const add = (said: Said, written: string): void => {
    if (said.spacedFrame !== undefined || (said.facts?.class !== undefined && THERMAL.test(written))) {
      waiting.push({ said, written });
      return;
    }
    take(said, written);
  };

  const take = (said: Said, written: string): void => {
    const { didYouMean, mayBe, plain: isKnown = false } = said;
    if (didYouMean !== undefined)
      aside.push({ word: written, didYouMean, isKnown, ...(mayBe !== undefined && { mayBe }) });
    for (const word of said.beside ?? []) aside.push({ word, didYouMean: [], isKnown: true });
    if (said.machineBeside !== undefined) machinesBeside.push(said.machineBeside);
    for (const [name, value] of Object.entries(said.facts ?? {})) {
      const fact = name as Fact;
      state(fact, value, written);
      if (said.taken?.includes(fact)) taken.set(fact, (taken.get(fact) ?? new Set()).add(written));
      else plain.add(fact);
    }
    if (said.speed) speeds.push(said.speed);
    if (said.lineFrequency) lines.push(said.lineFrequency);
    if (said.isLineRange) lineRanges.push(written);
    if (said.poles) poles.push({ count: said.poles, written });
    if (said.apparent) apparent.push({ said: said.apparent, written });
    if (said.powerFactor !== undefined) factors.push({ value: said.powerFactor, written });
  };

  /** True where an electrical machine or a set with one is described: hertz are those of its line. */
  const isElectrical = (): boolean => {
    const { value, written = "" } = stated.get("type") ?? {};
    return (
      apparent.length > 0 ||
      stated.has("frame") ||
      stated.has("shaftHeight") ||
      /motor|generat|gen\s?set/i.test(written) ||
      (value !== undefined && machineTypes[value as keyof typeof machineTypes].electrical)
    );
  };

  const powerOf = (assumed: Map<Fact, string>): void => {
    const { value, written: name } = stated.get("type") ?? {};
    const [input] = apparent;
    if (input !== undefined && ratings.length === 0) requireOutput(value, `${name}`, input.written);
    const { power, because } = platePower({
      ...{ ratings, apparent, factors },
      isSet: value === "reciprocating generating set",
    });
    // beside a rated power it says nothing
    if (ratings.length > 0 || apparent.length === 0)
      for (const { written } of factors) aside.push({ word: written, didYouMean: [], isKnown: true });
    if (power !== undefined) stated.set("power", { value: power, written: "" });
    if (because !== undefined) assumed.set("power", because);
  };

  /** The kind of machine, by all the words that bear on it; words that made it are set aside no longer. */
  const nameKind = (assumed: Map<Fact, string>): string[] => {
    const { kind, madeOf } = kindFound(kinds, aside, machinesBeside);
    if (kind !== undefined) stated.set("type", kind);
    if (kind !== undefined && madeOf.length > 0) {
      assumed.set("type", `type ${kind.value}: for ${madeOf.map((word) => `"${word}"`).join(" and ")}`);
      aside.splice(0, aside.length, ...aside.filter(({ word }) => !madeOf.includes(word)));
    }
    return machinesBeside
      .filter(({ name }) => !madeOf.includes(name))
      .map(({ name, role }) => `${role} "${name}": named, not judged`);
  };

  /** A frame size or the class of an insulation, where the machine is electrical; else metres, or a class of a table. */
  const takeWaiting = (): void => {
    for (const { said, written } of waiting) {
      const { length, spacedFrame } = said;
      const isThis = isElectrical();
      if (spacedFrame === undefined)
        take(isThis ? { length, didYouMean: [`insulation ${written}`], plain: true } : said, written);
      else if (isThis) take({ length, facts: spacedFrame, taken: ["shaftHeight"] }, written);
      else take({ length, didYouMean: [written.replace(/\s+/g, "")] }, written);
    }
  };

  const machine = (): Machine => {
    const assumed = new Map<Fact, string>();
    const beside = nameKind(assumed);
    takeWaiting();
    for (const [fact, words] of taken) {
      if (assumed.has(fact)) continue;
      if (plain.has(fact)) continue;
      const said = [...words]
        .sort()
        .map((word) => `"${word}"`)
        .join(" and ");
      const { value } = stated.get(fact) as { value: unknown };
      assumed.set(
        fact,
        `${fact === "shaftHeight" ? "shaft height" : fact} ${value}: for ${said}${setText(fact, value, words)}`,
      );
    }
    powerOf(assumed);
    const { speed, because } = speedOf(
      { speeds, lines, poles, isElectrical: isElectrical(), lineRanges },
      contradiction,
    );
    if (speed !== undefined) stated.set("speed", { value: speed, written: "" });
    const reasons = [...Object.keys(factTable).map((fact) => assumed.get(fact as Fact)), ...beside, ...because].filter(
      (reason) => reason !== undefined,
    );
    return frozen<Machine>({
      ...Object.fromEntries([...stated].map(([fact, { value }]) => [fact, value])),
      ...(reasons.length > 0 && { assumedFacts: reasons }),
      ...(aside.length > 0 && { notUnderstood: aside.map(({ word, didYouMean }) => ({ word, didYouMean })) }),
    });
  };

  return { add, machine };
}
