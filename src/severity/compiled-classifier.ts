import { conversionAssumes } from "../amplitude/index";
import { inPlace, isVerified, type Provenance, VeladisError, worstProvenance } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Assumption, amplitudeIn, parsedType, type ReadingType } from "../reading/index";
import type { Unjudged } from "./applicable-criteria";
import { isAssumedOfBound } from "./carried-as-bound";
import type { CriterionPlan } from "./criterion-plan";
import { eachReadable } from "./each-readable";
import { type JudgementPlan, judgementPlan } from "./judgement-plan";
import type { SchemeKind, Zone } from "./kinds";
import { type LadderRow, ladderRows } from "./ladder-rows";
import { valuesIn } from "./limits-in-type";
import type { Assume, PlacedMachine } from "./placed-machine";
import { type ZonesOptions, zoneLadder } from "./zone-ladder";

/** A judge of many readings of one machine in one reading type. */
export interface CompiledClassifier<K extends SchemeKind = SchemeKind> {
  /** The zone of a value in `from`; the same as {@link classify} or {@link judge} gives. Nothing is allocated. */
  (value: number): Zone<K>;
  /** The zones, best first; an index into this list is what `index` and `array` give. */
  readonly zones: readonly Zone<K>[];
  /** The limits between them in `from`, where several criteria apply the lowest. */
  readonly limits: readonly number[];
  /** The highest value that is still in each zone but the worst: the limits with their tolerance for float noise, 2^-23. */
  readonly bounds: readonly number[];
  /**
   * The same for `worst`: the highest value for which nothing worse is possible; empty where the worst zone is possible
   * for every value.
   */
  readonly worstBounds: readonly number[];
  readonly from: string;
  readonly assumed: readonly Assumption[];
  readonly assumedFacts: readonly string[];
  /** What was given of the machine and plays no part, in words. */
  readonly setAside: readonly string[];
  /** Criteria that could not be applied, with the reason. */
  readonly unjudged: readonly Unjudged[];
  /** How the least known of the limits is known. */
  readonly provenance: Provenance;
  readonly verified: boolean;
  /** Who confirmed limits among them against a printed copy; empty where nobody did. */
  readonly confirmed: readonly string[];
  /** Where a confirmed copy prints other values than the table had; empty where it does not. */
  readonly differences: readonly string[];
  /** True where `worst` is always the zone itself: nothing that was not measured could be worse. */
  readonly complete: boolean;
  /** The worst zone that is possible for a value; the zone itself where the judgement is `complete`. */
  worst(value: number): Zone<K>;
  /** The number of the zone of a value, 0 for the best. */
  index(value: number): number;
  /**
   * The number of the zone of every value, into a new array or into `target`; with `nan: "keep"` 255 for a gap.
   *
   * @throws {@link VeladisError} `length-mismatch`, `wrong-type`, or as for one value with the index named
   */
  array(source: ArrayLike<number>, target?: Uint8Array, options?: ZonesOptions): Uint8Array;
}

/** A judge of many readings of one machine by one scheme. */
export interface Classifier<K extends SchemeKind = SchemeKind> extends CompiledClassifier<K> {
  /** The id of the scheme. */
  readonly scheme: string;
}

/** What {@link classifier} can be told besides. */
export interface ClassifierOptions {
  /** The frequency of the vibration, where the table limits another quantity, or others too. */
  readonly at?: Frequency;
  readonly crestFactor?: number;
  readonly assume?: Assume;
}

/** The lowest of criteria, limit by limit, in the reader's type: of the limits themselves, or of what is still within them. */
function lowestOf(
  criteria: readonly CriterionPlan[],
  valuesOf: (plan: CriterionPlan) => readonly number[],
  type: ReadingType,
  told: { readonly hertz: number | undefined; readonly crestFactor: number | undefined },
): readonly number[] {
  const [first, ...others] = criteria.map((plan) =>
    valuesIn(type, valuesOf(plan), plan.criterion.as, {
      hertz: plan.hertz ?? told.hertz,
      crestFactor: told.crestFactor ?? plan.crestFactor,
    }),
  );
  return Object.freeze(
    (first as number[]).map((value, k) => Math.min(value, ...others.map((one) => one[k] as number))),
  );
}

/** What carrying readings to a criterion assumes; as a bound by the running frequency, not that it is their only one. */
function assumedBy(plan: CriterionPlan, type: ReadingType, crestFactor: number | undefined): readonly Assumption[] {
  const all = conversionAssumes(type, plan.criterion.as, crestFactor ?? plan.crestFactor);
  return plan.hertz === undefined ? all : all.filter(isAssumedOfBound);
}

/** Refuses schemes whose zones have other names: no one ladder holds both. */
function requireSameZones(plans: readonly JudgementPlan[]): readonly Zone[] {
  const [first, ...others] = plans.map(({ criteria }) => (criteria[0] as CriterionPlan).zones);
  const zones = first as readonly Zone[];
  if (others.every((one) => one.join() === zones.join())) return zones;
  throw new VeladisError("missing-fact", {
    expected: "facts of the machine that leave schemes with the same zones",
    received: [zones, ...others].map((one) => one.join(", ")).join("; "),
  });
}

/**
 * A classifier for a machine in one scheme or in several, of which the worst governs; with the schemes that can judge
 * such a reading, whether something is not judged, and the limits behind it.
 *
 * @throws {@link VeladisError} as {@link classify}
 */
export function compiledClassifier(
  from: string,
  options: ClassifierOptions,
  machinesOf: (assume: Assume | undefined) => readonly PlacedMachine[],
) {
  const { at, crestFactor, assume } = options;
  const { type, reference } = inPlace({ parameter: "from" }, () => parsedType(from));
  const reading = amplitudeIn(type, 1, at === undefined ? undefined : hertz(at));
  const told = { hertz: reading.hertz, crestFactor };
  const machines = machinesOf(assume);
  const {
    answers: plans,
    unread,
    refusal,
  } = eachReadable(machines, (machine) => ({
    ...judgementPlan(machine, [reading], crestFactor),
    machine,
  }));
  // here the reading is a type alone, and its frequency an option
  if (refusal?.parameter === "reading") {
    Object.assign(refusal, { parameter: refusal.option === undefined ? "from" : "options" });
  }
  if (plans.length === 0) throw refusal;
  const zones = requireSameZones(plans);
  const all = plans.flatMap(({ criteria }) => criteria);
  const certain = all.filter(({ bound }) => bound !== "most");
  const bounds = lowestOf(certain, (one) => one.bounds, type, told);
  const isOpen = unread.length > 0 || plans.some(({ openBecause }) => openBecause !== undefined);
  const { judge, index, array } = zoneLadder(bounds, zones, reference !== 0);
  const worstBounds = isOpen ? Object.freeze([]) : lowestOf(all, (one) => one.bounds, type, told);
  const isComplete = !isOpen && bounds.every((bound, i) => bound === worstBounds[i]);
  const worstIndex = isOpen
    ? (value: number): number => Math.max(index(value), zones.length - 1)
    : isComplete
      ? index
      : zoneLadder(worstBounds, zones, reference !== 0).index;
  const assumed = new Set(all.flatMap((plan) => assumedBy(plan, type, crestFactor)));
  const limits = lowestOf(certain, (one) => one.limits.map(({ value }) => value), type, told);
  const provenance = worstProvenance(plans.map((plan) => plan.provenance));
  const compiled = Object.assign(judge, {
    zones,
    limits,
    bounds,
    worstBounds,
    from: type,
    assumed: Object.freeze([...assumed]) as readonly Assumption[],
    assumedFacts: Object.freeze([...new Set(plans.flatMap((plan) => plan.assumedFacts))]),
    setAside: Object.freeze([...new Set(plans.flatMap(({ machine }) => machine.setAside))]),
    unjudged: Object.freeze([...plans.flatMap(({ unjudged }) => unjudged), ...unread]),
    provenance,
    verified: isVerified(provenance),
    confirmed: Object.freeze([...new Set(plans.flatMap(({ confirmed }) => confirmed))]),
    differences: Object.freeze([...new Set(plans.flatMap(({ differences }) => differences))]),
    complete: isComplete,
    index,
    array,
    worst: (value: number): Zone => zones[worstIndex(value)] as Zone,
  });
  return {
    judge: compiled,
    schemes: Object.freeze(plans.map(({ machine }) => machine.scheme.id)),
    isOpen,
    rows: (): readonly LadderRow[] => ladderRows(plans, type, told),
  };
}
