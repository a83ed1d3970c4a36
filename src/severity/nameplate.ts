import { frozen, requirePositive, same, shown, VeladisError } from "../core/index";
import { isDualRating } from "./dual-rating";
import { type Fact, facts as factTable } from "./facts";
import { folded, labelKey } from "./label";
import { type KnownFacts, knownFacts, type Machine, type NotUnderstood } from "./machine";
import type { NumberSaid, SpeedSaid } from "./machine-numbers";
import { kindsOf, machineTypes } from "./machine-types";
import { drivenSets } from "./machine-words";
import { kilovoltAmperesPer } from "./size";
import { type Poles, speedOf } from "./speed-of";

/** What is taken for the ratio of power to apparent power where only the latter is stated (common practice, no source). */
const POWER_FACTOR = 0.8;

/** What one phrase says. */
export interface Said extends Omit<NumberSaid, "didYouMean"> {
  /** Facts that the words do not say but are taken for. */
  readonly taken?: readonly Fact[];
  /** Words within, that are not understood and leave the rest what it is. */
  readonly beside?: readonly string[];
  /** The nearest known words, of one that is not understood. */
  readonly didYouMean?: readonly string[];
}

function contradiction(what: string, a: string, b: string): VeladisError {
  return new VeladisError("syntax", {
    expected: `one ${what} in the description of a machine`,
    received: `${shown(a)} and ${shown(b)}`,
  });
}

function isSame(a: KnownFacts[Fact], b: KnownFacts[Fact]): boolean {
  return typeof a === "number" && typeof b === "number" ? same(a, b) : labelKey(String(a)) === labelKey(String(b));
}

/** The power of one of several ratings in words, in kW, with its unit; undefined for a range. */
function ratingOf(value: unknown): { kilowatts: number; unit: string } | undefined {
  if (typeof value !== "string") return undefined;
  return { kilowatts: knownFacts({ power: value } as Machine).power as number, unit: value.replace(/^\S+\s/, "") };
}

/** True for one power rounded in two units. */
function areDual(a: unknown, b: unknown): boolean {
  const [one, other] = [ratingOf(a), ratingOf(b)];
  return (
    one !== undefined && other !== undefined && one.unit !== other.unit && isDualRating(one.kilowatts, other.kilowatts)
  );
}

/** A collector of what the phrases of a line say, in any order; it refuses what contradicts. */
export function nameplate() {
  const stated = new Map<Fact, { value: unknown; written: string }>();
  const plain = new Set<Fact>();
  const taken = new Map<Fact, Set<string>>();
  const speeds: SpeedSaid[] = [];
  const lines: SpeedSaid[] = [];
  const poles: Poles[] = [];
  const apparent: { kilovoltAmperes: number; written: string }[] = [];
  const notUnderstood: NotUnderstood[] = [];
  const ratings: { value: unknown; written: string }[] = [];

  const state = (fact: Fact, value: unknown, written: string): void => {
    if (fact === "power") ratings.push({ value, written });
    const before = stated.get(fact);
    if (before === undefined) {
      stated.set(fact, { value, written });
      return;
    }
    const known = (one: unknown) => knownFacts({ [fact]: one } as Machine)[fact];
    if (fact === "type" && kindsOf(value as string).includes(before.value as string)) {
      // a compressor that is said to be a screw compressor too is the narrower of both
      stated.set(fact, { value, written });
      return;
    }
    if (fact === "type" && kindsOf(before.value as string).includes(value as string)) return;
    // all powers are compared once they are read
    if (fact !== "power" && !isSame(known(before.value), known(value)))
      throw contradiction(fact, before.written, written);
  };

  const add = (said: Said, written: string): void => {
    if (said.didYouMean !== undefined) notUnderstood.push({ word: written, didYouMean: said.didYouMean });
    for (const word of said.beside ?? []) notUnderstood.push({ word, didYouMean: [] });
    for (const [name, value] of Object.entries(said.facts ?? {})) {
      const fact = name as Fact;
      state(fact, value, written);
      if (said.taken?.includes(fact)) taken.set(fact, (taken.get(fact) ?? new Set()).add(written));
      else plain.add(fact);
    }
    if (said.speed) speeds.push(said.speed);
    if (said.lineFrequency) lines.push(said.lineFrequency);
    if (said.poles) poles.push({ count: said.poles, written });
    if (said.apparent) {
      const { digits, unit } = said.apparent;
      const kilovoltAmperes = requirePositive(
        Number(digits) * kilovoltAmperesPer[unit as keyof typeof kilovoltAmperesPer],
        'an apparent power above zero such as "500 kVA"',
      );
      apparent.push({ kilovoltAmperes, written });
    }
  };

  /** The lowest of ratings that are one power, in two units perhaps. */
  const ratedPower = (assumed: Map<Fact, string>): void => {
    const known = ({ value }: { value: unknown }) => knownFacts({ power: value } as Machine).power;
    let isDual = false;
    for (const [i, one] of ratings.entries()) {
      for (const other of ratings.slice(i + 1)) {
        if (isSame(known(one), known(other))) continue;
        if (!areDual(one.value, other.value)) throw contradiction("power", one.written, other.written);
        isDual = true;
      }
    }
    if (!isDual) return;
    const [lowest] = [...ratings].sort((a, b) => (known(a) as number) - (known(b) as number));
    stated.set("power", lowest as (typeof ratings)[number]);
    const said = [...new Set(ratings.map(({ written }) => `"${written}"`))].sort().join(" and ");
    assumed.set("power", `power ${lowest?.value}: the lowest of ${said}, taken for one power`);
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
    ratedPower(assumed);
    const [first, ...others] = apparent;
    if (first === undefined) return;
    const { kilovoltAmperes, written } = first;
    for (const one of others) {
      if (!same(one.kilovoltAmperes, kilovoltAmperes)) throw contradiction("apparent power", written, one.written);
    }
    const power = stated.get("power");
    if (power !== undefined) {
      const kilowatts = Math.max(...[knownFacts({ power: power.value } as Machine).power as number | number[]].flat());
      if (kilowatts <= kilovoltAmperes || same(kilowatts, kilovoltAmperes)) return;
      throw contradiction("power, no higher than the apparent power,", power.written, written);
    }
    const kilowatts = Number((kilovoltAmperes * POWER_FACTOR).toPrecision(12));
    stated.set("power", { value: { kilowatts }, written });
    assumed.set("power", `power ${kilowatts} kW: ${written} at an assumed power factor of ${POWER_FACTOR}`);
  };

  /** A generating set of which another word says what drives it. */
  const nameSet = (assumed: Map<Fact, string>): void => {
    for (const [name, driver, short, set] of drivenSets) {
      const named = notUnderstood.find(({ word }) => folded(word).startsWith(folded(name)));
      if (named === undefined) continue;
      const type = stated.get("type");
      const alone = type === undefined ? notUnderstood.find(({ word }) => folded(word) === short) : undefined;
      const by = type?.value === driver ? type.written : alone?.word;
      if (by === undefined) continue;
      for (const one of [named, alone]) if (one !== undefined) notUnderstood.splice(notUnderstood.indexOf(one), 1);
      stated.set("type", { value: set, written: named.word });
      assumed.set("type", `type ${set}: for "${named.word}" and "${by}"`);
    }
  };

  const machine = (): Machine => {
    const assumed = new Map<Fact, string>();
    for (const [fact, words] of taken) {
      if (plain.has(fact)) continue;
      const said = [...words]
        .sort()
        .map((word) => `"${word}"`)
        .join(" and ");
      assumed.set(fact, `${fact} ${stated.get(fact)?.value}: for ${said}`);
    }
    nameSet(assumed);
    powerOf(assumed);
    const { speed, because } = speedOf(speeds, lines, poles, isElectrical(), contradiction);
    if (speed !== undefined) stated.set("speed", { value: speed, written: "" });
    const reasons = [...Object.keys(factTable).map((fact) => assumed.get(fact as Fact)), ...because].filter(
      (reason) => reason !== undefined,
    );
    return frozen<Machine>({
      ...Object.fromEntries([...stated].map(([fact, { value }]) => [fact, value])),
      ...(reasons.length > 0 && { assumed: reasons }),
      ...(notUnderstood.length > 0 && { notUnderstood }),
    });
  };

  return { add, machine };
}
