import { finiteResult, requirePositive, shown, unknownOption, VeladisError } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Fact, facts, isNumberFact, type TextFact } from "./facts";
import { folded } from "./label";
import { type MachineType, machineTypes } from "./machine-types";
import { kilowattsPer, type LengthText, millimetresPer, type PowerText, sizeOf } from "./size";

/** A machine as its nameplate and its surroundings tell it. Every fact may be left out; what a table needs, it asks. */
export interface Machine {
  readonly type?: MachineType;
  /** Rated power: `"90 kW"`, or `{ kilowatts: 90 }`. */
  readonly power?: PowerText | { readonly kilowatts: number };
  /** Running speed: `"2980 r/min"`, or `{ hertz }`. */
  readonly speed?: Frequency;
  /** Shaft height of an electrical machine: `"280 mm"`, or `{ millimetres: 280 }`. */
  readonly shaftHeight?: LengthText | { readonly millimetres: number };
  /** Lowest natural frequency of machine and support in the measured direction; with the speed it gives the support. */
  readonly naturalFrequency?: Frequency;
  readonly support?: "rigid" | "flexible";
  readonly place?: "housing" | "shaft";
  readonly condition?: "new" | "in service";
  /** Group of ISO 10816-3, ISO 20816-3 or ISO 10816-5. */
  readonly group?: number | string;
  /** Class of ISO 2372 and ISO 10816-1, or classification number of ISO 10816-6. */
  readonly class?: number | string;
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
  /** What reading a description assumed, in words; made by {@link parseMachine}, and no fact. */
  readonly assumed?: readonly string[];
  /** Words of a description that were not understood; made by {@link parseMachine}, and no fact. */
  readonly notUnderstood?: readonly NotUnderstood[];
}

/** A word that says nothing of a machine, with the nearest that do. */
export interface NotUnderstood {
  readonly word: string;
  readonly didYouMean: readonly string[];
}

/** A fact as schemes compare it: a number, a range of which every value is possible, or a label. */
export type FactValue = number | string | readonly [low: number, high: number];

/** The facts of a machine as tables compare them: kW, r/min, mm and Hz as numbers, labels as texts. */
export type KnownFacts = { readonly [F in Fact]?: FactValue };

/** The labels of facts that know a closed list of them. */
export const closedLabels: { readonly [F in TextFact]?: readonly string[] } = {
  type: /* @__PURE__ */ Object.keys(machineTypes),
  support: ["rigid", "flexible"],
  place: ["housing", "shaft"],
  condition: ["new", "in service"],
  frame: ["IEC", "NEMA"],
};

const byName: ReadonlyMap<string, MachineType> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.entries(machineTypes) as [MachineType, { also: readonly string[] }][]).flatMap(
    ([type, { also }]) => [type, ...also].map((name) => [folded(name), type] as const),
  ),
);

/** The kind of machine that a text names, by its name or another people write. */
export function findMachineType(name: string): MachineType | undefined {
  return byName.get(folded(name));
}

function labelOf(fact: TextFact, given: unknown): string {
  if (typeof given !== "string" && typeof given !== "number") {
    throw new VeladisError("wrong-type", { expected: `${facts[fact].ask}, as text`, received: shown(given) });
  }
  const label = String(given).trim();
  const allowed = closedLabels[fact];
  if (allowed === undefined) return label;
  const known = fact === "type" ? findMachineType(label) : allowed.find((one) => folded(one) === folded(label));
  if (known !== undefined) return known;
  throw unknownOption(label, allowed, facts[fact].ask);
}

const readers = {
  power: (given: Exclude<Machine["power"], undefined>) =>
    typeof given === "string"
      ? sizeOf(given, kilowattsPer, 'a rated power above zero such as "90 kW"')
      : requirePositive(given.kilowatts, "a rated power above zero, in kW"),
  shaftHeight: (given: Exclude<Machine["shaftHeight"], undefined>) =>
    typeof given === "string"
      ? sizeOf(given, millimetresPer, 'a shaft height above zero such as "280 mm"')
      : requirePositive(given.millimetres, "a shaft height above zero, in mm"),
  speed: (given: Frequency) => finiteResult(hertz(given) * 60),
  naturalFrequency: (given: Frequency) => hertz(given),
};

function numberOf(fact: keyof typeof readers, given: unknown): number {
  if (typeof given !== "string" && (typeof given !== "object" || given === null)) {
    const { ask, unit } = facts[fact];
    throw new VeladisError(typeof given === "number" ? "missing-unit" : "wrong-type", {
      expected: `${ask} with its unit, as in "${fact === "speed" ? 2980 : 90} ${unit}"`,
      received: shown(given),
    });
  }
  return (readers[fact] as (given: unknown) => number)(given);
}

/**
 * The facts of a machine as numbers and plain labels.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option` for a fact or label there is none of,
 *   `missing-unit`, `unknown-unit`, `not-positive`
 */
export function knownFacts(machine: Machine): KnownFacts {
  if (typeof machine !== "object" || machine === null || Array.isArray(machine)) {
    throw new VeladisError("wrong-type", {
      expected: 'a machine such as { type: "pump", power: "90 kW", support: "rigid" }',
      received: shown(machine),
    });
  }
  const known: { [F in Fact]?: FactValue } = {};
  for (const [name, given] of Object.entries(machine)) {
    if (!Object.hasOwn(facts, name)) {
      throw unknownOption(name, Object.keys(facts), "a fact about a machine");
    }
    if (given === undefined) continue;
    const fact = name as Fact;
    known[fact] = isNumberFact(fact) ? numberOf(fact, given) : labelOf(fact, given);
  }
  return known;
}
