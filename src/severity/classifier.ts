import { conversionAssumes } from "../amplitude/index";
import { requireFinite, requireGiven, requireNonNegative, shown, VeladisError } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Assumption, amplitudeIn, parsedType, type ReadingType } from "../reading/index";
import type { CriterionPlan } from "./criterion-plan";
import { judgementPlan } from "./judgement-plan";
import type { SchemeKind, Zone } from "./kinds";
import { type Told, valuesIn } from "./limits-in-type";
import type { MachineRef } from "./machine-facts";
import { type Assume, placedMachine } from "./placed-machine";
import type { Scheme } from "./scheme";
import { type KindOf, type SchemeRef, schemeOf } from "./scheme-of";

/** A judge of many readings of one machine in one reading type. */
export interface Classifier<K extends SchemeKind = SchemeKind> {
  /** The zone of a value in `from`; the same as {@link classify} gives. Nothing is allocated. */
  (value: number): Zone<K>;
  /** The zones, best first; an index into this list is what `index` and `array` give. */
  readonly zones: readonly Zone<K>[];
  /** The limits between them in `from`, where several criteria apply the lowest. */
  readonly limits: readonly number[];
  /** The highest value that is still in each zone but the worst: the limits with their tolerance for float noise, 2^-23. */
  readonly bounds: readonly number[];
  readonly from: string;
  readonly scheme: string;
  readonly assumed: readonly Assumption[];
  readonly assumedFacts: readonly string[];
  readonly verified: boolean;
  /** The number of the zone of a value, 0 for the best. */
  index(value: number): number;
  /**
   * The number of the zone of every value, into a new array or into `target`.
   *
   * @throws {@link VeladisError} `length-mismatch`, `wrong-type`, or as for one value with the index named
   */
  array(values: Float64Array, target?: Uint8Array): Uint8Array;
}

/** What {@link classifier} can be told besides. */
export interface ClassifierOptions {
  /** The frequency of the vibration, where the table limits another quantity, or others too. */
  readonly at?: Frequency;
  readonly crestFactor?: number;
  readonly assume?: Assume;
}

/** The lowest of all criteria, limit by limit, in the reader's type: of the limits themselves, or of what is still within them. */
function lowestOf(
  criteria: readonly CriterionPlan[],
  valuesOf: (plan: CriterionPlan) => readonly number[],
  type: ReadingType,
  told: Told,
): readonly number[] {
  const [first, ...others] = criteria.map((plan) => valuesIn(type, valuesOf(plan), plan.criterion.as, told));
  return Object.freeze(
    (first as number[]).map((value, k) => Math.min(value, ...others.map((one) => one[k] as number))),
  );
}

function refuse(value: number, isLevel: boolean, where = ""): void {
  if (isLevel) requireFinite(value, `a level in dB${where}`);
  else requireNonNegative(value, `an amplitude of zero or more${where}`);
}

/** The number of the zone of a value, and of every value of an array, by up to three bounds without a loop. */
function compiled(bounds: readonly number[], zones: readonly Zone[], isLevel: boolean) {
  const lowest = isLevel ? -Number.MAX_VALUE : 0;
  const [a = Number.MAX_VALUE, b = Number.MAX_VALUE, c = Number.MAX_VALUE] = bounds;
  const highest = Number.MAX_VALUE;
  const few = bounds.length <= 3;
  const more = bounds.slice(3);
  const [za, zb, zc, zd] = zones as [Zone, Zone, Zone, Zone];
  const index = (value: number): number => {
    if (typeof value !== "number" || !(value >= lowest && value <= highest)) refuse(value, isLevel);
    if (value <= a) return 0;
    if (value <= b) return 1;
    if (value <= c) return 2;
    let at = 3;
    for (const bound of more) if (value > bound) at++;
    return at;
  };
  // the same ladder once more: a list of zones to look an index up in would cost a third
  const judge = (value: number): Zone => {
    if (typeof value !== "number" || !(value >= lowest && value <= highest)) refuse(value, isLevel);
    if (value <= a) return za;
    if (value <= b) return zb;
    if (value <= c) return zc;
    return few ? zd : (zones[index(value)] as Zone);
  };
  const array = (values: Float64Array, target = new Uint8Array(values?.length ?? 0)): Uint8Array => {
    checkArrays(values, target);
    // nothing but readings keeps this 0: a branch in the loop would cost more than the judgement
    let fault = 0;
    for (let i = 0; i < values.length; i++) {
      const value = values[i] as number;
      fault += isLevel ? value - value : Math.abs(value) - value;
      target[i] = Number(value > a) + Number(value > b) + Number(value > c);
    }
    if (fault !== 0) refuseFirst(values, lowest, isLevel);
    for (const bound of more) {
      for (let i = 0; i < values.length; i++) {
        target[i] = (target[i] as number) + Number((values[i] as number) > bound);
      }
    }
    return target;
  };
  return { judge, index, array };
}

function refuseFirst(values: Float64Array, lowest: number, isLevel: boolean): void {
  const i = values.findIndex((value) => !(value >= lowest && value <= Number.MAX_VALUE));
  refuse(values[i] as number, isLevel, ` at index ${i}`);
}

function checkArrays(values: Float64Array, target: Uint8Array): void {
  if (!(values instanceof Float64Array && target instanceof Uint8Array)) {
    throw new VeladisError("wrong-type", {
      expected: "a Float64Array of readings and a Uint8Array for the zones",
      received: shown(values instanceof Float64Array ? target : values),
    });
  }
  if (values.length === target.length) return;
  throw new VeladisError("length-mismatch", {
    expected: `a target of ${values.length} elements`,
    received: `one of ${target.length}`,
  });
}

/**
 * A judge of readings compiled once, for many values of one machine.
 *
 * Called with a number it gives the zone that {@link classify} gives for the same reading, without allocating;
 * `.index` gives its number, `.array` the numbers for a Float64Array.
 *
 * @param scheme - the id of a built-in scheme, or a scheme
 * @param machine - the machine, as data or in words
 * @param from - what the values are written in, e.g. `"in/s pk"`
 * @param options - `at`, `crestFactor`, `assume` as for {@link classify}
 * @throws {@link VeladisError} as {@link classify}; later, for a value that is no amplitude, `negative`,
 *   `not-a-number`, `not-finite`
 * @example
 * ```ts
 * import { classifier } from "veladis/severity";
 *
 * const judge = classifier("iso-10816-3-2009", "group 2 rigid", "mm/s rms");
 * judge(2.8); // => "B"
 * judge(2.9); // => "C"
 * judge.zones; // => ["A", "B", "C", "D"]
 * judge.limits; // => [1.4, 2.8, 4.5]
 * [...judge.array(Float64Array.of(1, 2, 3, 5))]; // => [0, 1, 2, 3]
 * ```
 */
export function classifier<const S extends SchemeRef>(
  scheme: S,
  machine: MachineRef,
  from: string,
  options: ClassifierOptions = {},
): Classifier<KindOf<S>> {
  const { at, crestFactor, assume } = requireGiven(options, 'options such as { at: "1500 r/min" }');
  const table: Scheme = schemeOf(scheme);
  const { type, reference } = parsedType(from);
  const reading = amplitudeIn(type, 1, at === undefined ? undefined : hertz(at));
  const placed = placedMachine(table, machine, assume);
  const { criteria, verified } = judgementPlan(placed, [reading], crestFactor);
  const told = { hertz: reading.hertz, crestFactor };
  const bounds = lowestOf(criteria, (one) => one.bounds, type, told);
  const { zones } = criteria[0] as CriterionPlan;
  const { judge, index, array } = compiled(bounds, zones, reference !== 0);
  const assumed = new Set(criteria.flatMap(({ criterion }) => conversionAssumes(type, criterion.as, crestFactor)));
  return Object.freeze(
    Object.assign(judge, {
      zones,
      limits: lowestOf(criteria, (one) => one.limits.map(({ value }) => value), type, told),
      bounds,
      from: type,
      scheme: table.id,
      assumed: Object.freeze([...assumed]),
      assumedFacts: placed.assumedFacts,
      verified,
      index,
      array,
    }),
  ) as Classifier<KindOf<S>>;
}
