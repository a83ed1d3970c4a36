import { differencesOf, type Provenance, worstProvenance } from "../core/index";
import { type Amplitude, parsedType, significant } from "../reading/index";
import { applicableCriteria, type Unjudged } from "./applicable-criteria";
import { type CriterionPlan, criterionPlan } from "./criterion-plan";
import { kindCautions } from "./kind-cautions";
import { isOfDisplacement } from "./of-displacement";
import { outsideBand } from "./outside-band";
import { peakCautions } from "./peak-meaning";
import { withoutPlace } from "./place-text";
import type { PlacedMachine } from "./placed-machine";
import { type PossibleZones, possibleZones } from "./possible-zones";
import { rangeOfLaw } from "./range-of-law";
import { requireCriterion } from "./require-criterion";
import { requirePlace } from "./require-place";
import { schemeCautions } from "./scheme-cautions";
import { signaturesOf } from "./signatures-of";
import { type SupportRule, supportRuleOf } from "./support-rule-of";

/** What of a judgement depends on the table, the machine and what the readings are written in, but not on their size. */
export interface JudgementPlan {
  readonly criteria: readonly CriterionPlan[];
  readonly unjudged: readonly Unjudged[];
  /** Why more than what was judged may be there, in words; undefined where the judgement is complete. */
  readonly openBecause: string | undefined;
  readonly assumedFacts: readonly string[];
  readonly provenance: Provenance;
  readonly supportRule: SupportRule | undefined;
  /** Who confirmed limits among those that apply. */
  readonly confirmed: readonly string[];
  /** Where a confirmed copy prints other values than the table had. */
  readonly differences: readonly string[];
  readonly cautions: readonly string[];
  /** What is possible between the zone that was judged and the worst that is possible, by their numbers. */
  possible(at: number, upTo: number, openBecause: string | undefined): PossibleZones;
}

/** What was assumed of the machine, with what is taken for the place of a displacement, which housings and shafts both have. */
function withPlace(
  { scheme: { place }, facts, assumedFacts }: PlacedMachine,
  readings: readonly Amplitude[],
): readonly string[] {
  const before = withoutPlace(assumedFacts);
  if (facts.place !== undefined || !readings.some(isOfDisplacement)) return assumedFacts;
  const other = place === "housing" ? "shaft" : "housing";
  return [...before, `place ${place}: not given; a displacement of the ${other} needs a table for the ${other}`];
}

/** What was taken for the height of the measuring point, where limits rise with it. */
function assumedHeight(criteria: readonly CriterionPlan[], { facts }: PlacedMachine): string[] {
  const rises = facts.height === undefined && criteria.some(({ criterion }) => criterion.height !== undefined);
  return rises ? ["height of the measuring point: not given, and nothing more is allowed for it"] : [];
}

/** What is missing where limits fall with a speed that nobody gave, and the highest it may be is taken. */
function speedMissing(machine: PlacedMachine): string[] {
  const range = rangeOfLaw(machine);
  if (range === undefined) return [];
  return [
    `the running speed is missing, and decides: the limits fall with it, and those of ${range[1]} r/min are taken; tell the speed before acting on this verdict`,
  ];
}

/** Why a judgement by these criteria leaves worse zones open. */
function openBecause(criteria: readonly CriterionPlan[], unjudged: readonly Unjudged[]): string | undefined {
  const not = unjudged.map(({ as }) => parsedType(as).quantity);
  const least = (isAtSpeed: boolean): string =>
    [
      ...new Set(
        criteria
          .filter(({ bound, hertz }) => bound === "least" && (hertz !== undefined) === isAtSpeed)
          .map(({ type }) => type.quantity),
      ),
    ].join(" and ");
  const [atSpeed, asSine] = [least(true), least(false)];
  const told = [
    ...(not.length > 0 ? [`${[...new Set(not)].join(" and ")} not judged`] : []),
    ...(atSpeed === "" ? [] : [`${atSpeed} judged at running speed only, and may be more`]),
    ...(asSine === "" ? [] : [`${asSine} judged as a sine, and its crests may be higher`]),
  ];
  return told.length === 0 ? undefined : told.join("; ");
}

/** What was taken of frequency or crest factor for readings without one. */
function assumedFrequency(criteria: readonly CriterionPlan[]): string[] {
  const bound = criteria.find(({ hertz }) => hertz !== undefined);
  const sine = criteria.some(({ crestFactor }) => crestFactor !== undefined);
  if (bound === undefined) return sine ? ["crest factor 1.414, of a sine: not given, assumed"] : [];
  return [`nothing below running speed, ${significant(bound.hertz as number)} Hz: assumed`];
}

function planned(machine: PlacedMachine, readings: readonly Amplitude[], crestFactor?: number): JudgementPlan {
  const { scheme, chosen, given } = machine;
  requireCriterion(scheme);
  requirePlace(machine, readings);
  const { applicable, unjudged } = applicableCriteria(machine, readings, crestFactor);
  const criteria = applicable.map((one) => criterionPlan(machine, one, readings));
  const provenance = worstProvenance(criteria.map((one) => one.provenance));
  const { zones } = criteria[0] as CriterionPlan;
  const sources = criteria.flatMap((one) => one.limits.map(({ source }) => source));
  const named = criteria.flatMap(({ criterion: { as }, limits }) =>
    limits.map(({ name, source }) => ({ name, as, source })),
  );
  const differences = Object.freeze(differencesOf(sources));
  return {
    criteria,
    unjudged: Object.freeze(unjudged.map((one) => Object.freeze(one))),
    openBecause: openBecause(criteria, unjudged),
    assumedFacts: Object.freeze([
      ...withPlace(machine, readings),
      ...assumedFrequency(criteria),
      ...assumedHeight(criteria, machine),
    ]),
    provenance,
    supportRule: supportRuleOf(machine),
    confirmed: Object.freeze(signaturesOf(named)),
    differences,
    cautions: Object.freeze([
      ...differences,
      ...speedMissing(machine),
      ...outsideBand(criteria, given.speed),
      ...peakCautions(scheme, criteria, readings),
      ...kindCautions(scheme, given),
      ...schemeCautions(scheme, provenance, chosen.note),
    ]),
    possible: possibleZones(scheme.kind, zones),
  };
}

/** What readings are written in, as far as a plan rests on it. */
interface Planned {
  readonly readings: readonly Amplitude[];
  readonly crestFactor: number | undefined;
  readonly plan: JudgementPlan;
}

function isLike(one: Amplitude, other: Amplitude | undefined): boolean {
  return (
    one.unit === other?.unit &&
    one.detector === other.detector &&
    one.level?.re === other.level?.re &&
    (one.hertz === undefined) === (other.hertz === undefined) &&
    (one.crestFactor === undefined) === (other.crestFactor === undefined) &&
    isOfDisplacement(one) === isOfDisplacement(other)
  );
}

/** One plan for readings in one type, two where a frequency is given at times, and a few more; not one for each reading. */
const MOST_PLANS = 8;

const remembered = /* @__PURE__ */ new WeakMap<PlacedMachine, Planned[]>();

/**
 * How readings of a machine are judged. A plan made before for readings written alike is taken again.
 *
 * @throws {@link VeladisError} `missing-fact` for the place or the speed, `missing-frequency`, `not-a-sine`
 */
export function judgementPlan(
  machine: PlacedMachine,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): JudgementPlan {
  const plans = remembered.get(machine) ?? [];
  const known = plans.find(
    (one) =>
      (one.crestFactor === undefined) === (crestFactor === undefined) &&
      one.readings.length === readings.length &&
      readings.every((reading, i) => isLike(reading, one.readings[i])),
  );
  if (known !== undefined) return known.plan;
  const plan = planned(machine, readings, crestFactor);
  remembered.set(machine, [{ readings, crestFactor, plan }, ...plans].slice(0, MOST_PLANS));
  return plan;
}
