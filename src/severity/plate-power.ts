import { lazily, requirePositive, same, shown, VeladisError } from "../core/index";
import { isDualRating } from "./dual-rating";
import { type KnownFacts, knownFacts, type Machine } from "./machine";
import { kilovoltAmperesPer } from "./size";
import { contradiction } from "./two-values";

/** The ratio of power to apparent power lies between these where it is not stated (common practice, no source). */
const LEAST_FACTOR = 0.7;
const MOST_FACTOR = 1;

/** The power factor that a generating set is rated at (ISO 8528-1, from memory): tables print 200 kW beside 250 kVA. */
const SET_FACTOR = 0.8;

/** Apparent power as written. */
export interface ApparentSaid {
  readonly digits: string;
  readonly unit: string;
}

/** What a line says of the power, each with its words. */
export interface PowersSaid {
  readonly ratings: readonly { readonly value: Machine["power"]; readonly written: string }[];
  readonly apparent: readonly { readonly said: ApparentSaid; readonly written: string }[];
  readonly factors: readonly { readonly value: number; readonly written: string }[];
  /** True for a generating set. */
  readonly isSet: boolean;
}

/** The power of a machine, and what that assumes, in words. */
export interface PlatePower {
  readonly power?: Machine["power"];
  readonly because?: string;
}

const factors = /* @__PURE__ */ lazily(() => {
  const name = "(?:cos[\\s-]*(?:phi|fi|\u03c6|\u03d5)|power[\\s-]+factor|p\\.?f\\.?)";
  const number = "(\\d+(?:[.,]\\d+)?)(?![\\w.,]*\\d|\\s*%)";
  return new RegExp(`^(?:${name}[\\s:=]*(?:of\\s+)?${number}|${number}\\s*${name}(?![\\w.]))`, "iu");
});

/**
 * The power factor at the beginning of a text: `cos phi 0.85`, `power factor 0.8`, `0.85 PF`. One that stands alone has a
 * decimal comma on many plates.
 *
 * @throws {@link VeladisError} `out-of-range` for one above 1 or of zero
 */
export function powerFactorAt(text: string): { length: number; powerFactor: number } | undefined {
  const found = factors().exec(text);
  if (found === null) return undefined;
  const powerFactor = Number((found[1] ?? found[2] ?? "").replace(",", "."));
  if (powerFactor > 0 && powerFactor <= 1) return { length: found[0].length, powerFactor };
  throw new VeladisError("out-of-range", {
    expected: "a power factor above 0 and up to 1, as in cos phi 0.85",
    received: shown(found[0]),
  });
}

/**
 * Refuses an apparent power as that of a machine that generates none: what a motor takes in is more than its shaft gives, and a
 * table for higher powers is often the milder one.
 *
 * @param name - the kind as it was written
 * @throws {@link VeladisError} `missing-fact`
 */
export function requireOutput(type: unknown, name: string, apparent: string): void {
  if (
    type === undefined ||
    type === "generator" ||
    type === "hydro set" ||
    /generat|gen[\s-]?set/i.test(`${type} ${name}`)
  )
    return;
  throw new VeladisError("missing-fact", {
    expected: /turbine/i.test(`${type}`)
      ? "the power of the turbine in kW; kVA is what its generator gives"
      : "the shaft power in kW; kVA is what the motor takes in",
    received: shown(apparent),
    fact: "power",
  });
}

function inKilowatts(power: Machine["power"]): KnownFacts["power"] {
  return knownFacts({ power } as Machine).power;
}

/** The power of one of several ratings in words, in kW, with its unit; undefined for a range. */
function ratingOf(value: unknown): { kilowatts: number; unit: string } | undefined {
  if (typeof value !== "string") return undefined;
  return { kilowatts: inKilowatts(value as Machine["power"]) as number, unit: value.replace(/^\S+\s/, "") };
}

/** True for one power rounded in two units. */
function areDual(a: unknown, b: unknown): boolean {
  const [one, other] = [ratingOf(a), ratingOf(b)];
  return (
    one !== undefined && other !== undefined && one.unit !== other.unit && isDualRating(one.kilowatts, other.kilowatts)
  );
}

function isSamePower(a: KnownFacts["power"], b: KnownFacts["power"]): boolean {
  return typeof a === "number" && typeof b === "number" ? same(a, b) : String(a) === String(b);
}

/** The lowest of ratings that are one power, in two units perhaps. */
function ratedPower({ ratings }: PowersSaid): PlatePower {
  let isDual = false;
  for (const [i, one] of ratings.entries()) {
    for (const other of ratings.slice(i + 1)) {
      if (isSamePower(inKilowatts(one.value), inKilowatts(other.value))) continue;
      if (!areDual(one.value, other.value)) throw contradiction("power", one.written, other.written);
      isDual = true;
    }
  }
  const [first] = ratings;
  if (first === undefined || !isDual) return { power: first?.value };
  const [lowest] = [...ratings].sort((a, b) => (inKilowatts(a.value) as number) - (inKilowatts(b.value) as number));
  const said = [...new Set(ratings.map(({ written }) => `"${written}"`))].sort().join(" and ");
  return { power: lowest?.value, because: `power ${lowest?.value}: the lowest of ${said}, taken for one power` };
}

/** The only one of several numbers of one thing. */
function onlyOne<One extends { readonly value: number; readonly written: string }>(
  all: readonly One[],
  what: string,
): One | undefined {
  const [first, ...others] = all;
  const other = others.find(({ value }) => !same(value, (first as One).value));
  if (other !== undefined) throw contradiction(what, (first as One).written, other.written);
  return first;
}

/**
 * The power that a line says: the rated one, else the apparent power by the power factor; of one that was not stated every
 * value is possible that is usual.
 *
 * @throws {@link VeladisError} `syntax` for two that differ, and for a power above the apparent power; `not-positive`
 */
export function platePower(said: PowersSaid): PlatePower {
  const rated = ratedPower(said);
  const apparent = onlyOne(
    said.apparent.map(({ said: { digits, unit }, written }) => ({
      value: requirePositive(
        Number(digits) * kilovoltAmperesPer[unit as keyof typeof kilovoltAmperesPer],
        'an apparent power above zero such as "500 kVA"',
      ),
      written,
    })),
    "apparent power",
  );
  const factor = onlyOne(said.factors, "power factor");
  if (apparent === undefined) return rated;
  const { value: kilovoltAmperes, written } = apparent;
  if (rated.power !== undefined) {
    const kilowatts = Math.max(...[inKilowatts(rated.power) as number | number[]].flat());
    if (kilowatts <= kilovoltAmperes || same(kilowatts, kilovoltAmperes)) return rated;
    const [first] = said.ratings;
    throw contradiction("power, no higher than the apparent power,", first?.written as string, written);
  }
  const at = (one: number): number => Number((kilovoltAmperes * one).toPrecision(12));
  if (factor !== undefined) {
    const kilowatts = at(factor.value);
    return { power: { kilowatts }, because: `power ${kilowatts} kW: ${written} at ${factor.written}` };
  }
  if (said.isSet) {
    const kilowatts = at(SET_FACTOR);
    return {
      power: { kilowatts },
      because: `power ${kilowatts} kW: ${written} at an assumed power factor of ${SET_FACTOR}, at which sets are rated`,
    };
  }
  const [from, to] = [at(LEAST_FACTOR), at(MOST_FACTOR)];
  return {
    power: { from: { kilowatts: from }, to: { kilowatts: to } },
    because: `power ${from} to ${to} kW: ${written} at a power factor of ${LEAST_FACTOR} to ${MOST_FACTOR}, which was not given`,
  };
}
