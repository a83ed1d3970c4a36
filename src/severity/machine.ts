import { finiteResult, inPlace, requirePositive, shown, unknownOption, VeladisError } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import type { ByDirection, Direction } from "./directions";
import { type Fact, facts, isNumberFact, type TextFact } from "./facts";
import { type FanApplication, fanApplications } from "./fan-applications";
import { folded } from "./label";
import { type MachineType, machineTypes } from "./machine-types";
import { kilowattsPer, type LengthText, millimetresPer, type PowerText, sizeOf } from "./size";

/** A machine as its nameplate and its surroundings tell it. Every fact may be left out; what a table needs, it asks. */
export interface Machine {
  readonly type?: MachineType;
  /** Rated power: `"90 kW"`, `{ kilowatts: 90 }`, or a range of them such as `{ from: "50 kW", to: "400 kW" }`. */
  readonly power?: RatedPower | PowerRange;
  /** Running speed: `"2980 r/min"`, `{ hertz }`, or a range of them such as `{ from: "900 r/min", to: "1800 r/min" }`. */
  readonly speed?: Frequency | SpeedRange;
  /** Shaft height of an electrical machine: `"280 mm"`, or `{ millimetres: 280 }`. */
  readonly shaftHeight?: LengthText | { readonly millimetres: number };
  /** System of frame sizes; that of the unit of the shaft height if not given: IEC for mm, NEMA for inches. */
  readonly frame?: "IEC" | "NEMA";
  /** Height of the measuring point above the base of the machine: `"2.5 m"`, or `{ metres: 2.5 }`. */
  readonly height?: LengthText | { readonly metres: number };
  /** Lowest natural frequency of machine and support in the measured direction; with the speed it gives the support. */
  readonly naturalFrequency?: Frequency;
  readonly support?: "rigid" | "flexible";
  /** Support or natural frequency where they differ by direction: `{ axial: { support: "flexible" } }`; the rest is for the others. */
  readonly byDirection?: ByDirection;
  /** Direction of the reading, where the support differs by it. */
  readonly direction?: Direction;
  readonly place?: "housing" | "shaft";
  readonly condition?: "new" | "in service";
  /** Group of ISO 10816-3, ISO 20816-3 or ISO 10816-5. */
  readonly group?: number | string;
  /** Class of ISO 2372 and ISO 10816-1, or classification number of ISO 10816-6. */
  readonly class?: number | string;
  /** What a fan is for; with the power of its driver it tells the category. */
  readonly application?: FanApplication;
  /** Category of ISO 10816-7 (I, II) or ISO 14694 (BV-1 to BV-5). */
  readonly category?: string;
  /** Grade of an acceptance test. */
  readonly grade?: string;
  /** Mounting on the test bed. */
  readonly mounting?: string;
  /** Operating region of a pump: `"preferred"` or `"allowable"`. */
  readonly region?: string;
  /** Place of an acceptance test: `"works"` or `"site"`. */
  readonly test?: string;
  /** The part measured, where a table distinguishes parts. */
  readonly part?: string;
  /** The band measured, where a table distinguishes bands: `"low"` or `"high"`. */
  readonly band?: string;
  /** `"overall"` or `"discrete"`, where a table distinguishes them. */
  readonly content?: string;
  /** Column of units the contract uses, where a table prints two: `"metric"` or `"customary"`. */
  readonly units?: string;
  /** What reading the words assumed, as {@link parseMachine} found it; no fact. */
  readonly assumedFacts?: readonly string[];
  /** Words that say nothing of a machine, as {@link parseMachine} found them; no fact. */
  readonly notUnderstood?: readonly NotUnderstood[];
}

/** A rated power with its unit. */
export type RatedPower = PowerText | { readonly kilowatts: number };

/** A rated power that is known to lie between two. */
export interface PowerRange {
  readonly from: RatedPower;
  readonly to: RatedPower;
}

/** A speed that varies, from the lowest to the highest. */
export interface SpeedRange {
  readonly from: Frequency;
  readonly to: Frequency;
}

/** A word that is not understood, with the nearest words that are. */
export interface NotUnderstood {
  readonly word: string;
  readonly didYouMean: readonly string[];
}

/** A fact as schemes compare it: a number, a range of which every value is possible, or a label. */
export type FactValue = number | string | readonly [low: number, high: number];

/**
 * The facts of a machine as schemes compare them: kW, r/min, mm, Hz and m as numbers, labels as texts; a power or
 * speed given as a range as its lowest and highest.
 */
export type KnownFacts = { readonly [F in Fact]?: FactValue };

/** The labels of facts that know a closed list of them. */
export const closedLabels: { readonly [F in TextFact]?: readonly string[] } = {
  type: /* @__PURE__ */ Object.keys(machineTypes),
  support: ["rigid", "flexible"],
  place: ["housing", "shaft"],
  condition: ["new", "in service"],
  frame: ["IEC", "NEMA"],
};

/** What a machine holds besides facts. */
const notes = ["assumedFacts", "notUnderstood", "byDirection", "direction"];

const byName: ReadonlyMap<string, MachineType> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.entries(machineTypes) as [MachineType, { also: readonly string[] }][]).flatMap(
    ([type, { also }]) => [type, ...also].map((name) => [folded(name), type] as const),
  ),
);

/** The kind of machine that a text names, by its name or another people write. */
function findMachineType(name: string): MachineType | undefined {
  return byName.get(folded(name));
}

function labelOf(fact: TextFact, given: unknown): string {
  if (typeof given !== "string" && !Number.isFinite(given)) {
    throw new VeladisError("wrong-type", {
      expected: `${facts[fact].ask}, as text`,
      received: shown(given),
    });
  }
  const label = String(given).trim();
  // apart from the others: who asks for no application takes none of them along
  const allowed = fact === "application" ? Object.keys(fanApplications) : closedLabels[fact];
  if (allowed === undefined) return label;
  const known = fact === "type" ? findMachineType(label) : allowed.find((one) => folded(one) === folded(label));
  if (known !== undefined) return known;
  throw unknownOption(label, allowed, facts[fact].ask);
}

function perMinute(speed: Frequency): number {
  return finiteResult(hertz(speed) * 60);
}

function speedRange({ from, to }: SpeedRange): readonly [low: number, high: number] {
  const [low, high] = [perMinute(from), perMinute(to)];
  if (low < high) return Object.freeze([low, high] as const);
  throw new VeladisError("out-of-range", {
    expected: "a range of speeds from the lowest to the highest",
    received: `${low} to ${high} r/min`,
  });
}

/** Shaft heights that any electrical machine has, in mm. */
const [LOWEST, HIGHEST] = [20, 3000];

/** Refuses a shaft height that no machine has, and one of a machine that is not electrical. */
export function requireShaftHeight({ shaftHeight, type }: KnownFacts): void {
  if (typeof shaftHeight !== "number") return;
  if (shaftHeight < LOWEST || shaftHeight > HIGHEST) {
    throw new VeladisError("out-of-range", {
      expected: `a shaft height from ${LOWEST} to ${HIGHEST} mm; a frame size is written in one, as in "280M"`,
      received: `${Number(shaftHeight.toPrecision(6))} mm`,
    });
  }
  if (type === undefined || machineTypes[type as MachineType].electrical) return;
  throw new VeladisError("out-of-range", {
    expected: "a motor or generator, since a shaft height is that of an electrical machine",
    received: `a ${type} with a shaft height of ${Number(shaftHeight.toPrecision(6))} mm`,
  });
}

/** The system of frames that the unit of a shaft height belongs to. */
function frameFor(shaftHeight: Machine["shaftHeight"]): "IEC" | "NEMA" {
  return typeof shaftHeight === "string" && /(?:in|ft)\s*$/i.test(shaftHeight) ? "NEMA" : "IEC";
}

function kilowatts(given: RatedPower): number {
  if (typeof given === "string") return sizeOf(given, kilowattsPer, 'a rated power above zero such as "90 kW"');
  return requirePositive(given?.kilowatts, "a rated power above zero, in kW", { option: "kilowatts" });
}

function powerRange({ from, to }: PowerRange): readonly [low: number, high: number] {
  const [low, high] = [kilowatts(from), kilowatts(to)];
  if (low < high) return Object.freeze([low, high] as const);
  throw new VeladisError("out-of-range", {
    expected: "a range of powers from the lowest to the highest",
    received: `${low} to ${high} kW`,
  });
}

const readers = {
  power: (given: RatedPower | PowerRange) =>
    typeof given === "object" && "from" in given ? powerRange(given) : kilowatts(given),
  shaftHeight: (given: Exclude<Machine["shaftHeight"], undefined>) =>
    typeof given === "string"
      ? sizeOf(given, millimetresPer, 'a shaft height above zero such as "280 mm"')
      : requirePositive(given.millimetres, "a shaft height above zero, in mm", { option: "millimetres" }),
  height: (given: Exclude<Machine["height"], undefined>) =>
    typeof given === "string"
      ? sizeOf(given, millimetresPer, 'a height above zero such as "2.5 m"') / 1000
      : requirePositive(given.metres, "a height above zero, in m", { option: "metres" }),
  speed: (given: Frequency | SpeedRange) =>
    typeof given === "object" && "from" in given ? speedRange(given) : perMinute(given),
  naturalFrequency: (given: Frequency) => hertz(given),
};

function numberOf(fact: keyof typeof readers, given: unknown): number | readonly [number, number] {
  if (typeof given !== "string" && (typeof given !== "object" || given === null)) {
    const { ask, unit } = facts[fact];
    throw new VeladisError(typeof given === "number" ? "missing-unit" : "wrong-type", {
      expected: `${ask} with its unit, as in "${fact === "speed" ? 2980 : 90} ${unit}"`,
      received: shown(given),
    });
  }
  return (readers[fact] as (given: unknown) => number | readonly [number, number])(given);
}

/**
 * The facts of a machine as numbers and plain labels.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option` for a fact or label there is none of,
 *   `missing-unit`, `unknown-unit`, `not-positive`, `out-of-range` for a range that falls, a shaft height that no
 *   machine has, or one of a machine that is not electrical
 */
export function knownFacts(machine: Machine): KnownFacts {
  if (typeof machine !== "object" || machine === null || Array.isArray(machine)) {
    throw new VeladisError("wrong-type", {
      expected: 'a machine such as { type: "pump", power: "90 kW", support: "rigid" }',
      received: shown(machine),
      parameter: "machine",
    });
  }
  const known: { [F in Fact]?: number | string | readonly [number, number] } = {};
  for (const [name, given] of Object.entries(machine)) {
    if (notes.includes(name)) continue;
    if (!Object.hasOwn(facts, name)) {
      throw unknownOption(name, Object.keys(facts), "a fact about a machine", { option: name });
    }
    if (given === undefined) continue;
    const fact = name as Fact;
    known[fact] = inPlace({ fact }, () => (isNumberFact(fact) ? numberOf(fact, given) : labelOf(fact, given)));
  }
  requireShaftHeight(known as KnownFacts);
  if (known.shaftHeight !== undefined) known.frame ??= frameFor(machine.shaftHeight);
  return known as KnownFacts;
}
