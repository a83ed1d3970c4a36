import type { Amplitude } from "../reading/index";
import { applicableCriteria, type Unjudged } from "./applicable-criteria";
import { type CriterionPlan, criterionPlan } from "./criterion-plan";
import { zoneWord } from "./kinds";
import type { PlacedMachine } from "./placed-machine";
import { requirePlace } from "./require-place";
import type { Scheme } from "./scheme";

/** What of a judgement depends on the table, the machine and what the readings are written in, but not on their size. */
export interface JudgementPlan {
  readonly criteria: readonly CriterionPlan[];
  readonly unjudged: readonly Unjudged[];
  readonly assumedFacts: readonly string[];
  readonly verified: boolean;
  readonly cautions: readonly string[];
  /** What each zone means, by its name. */
  readonly words: ReadonlyMap<string, string>;
}

/** What is taken for the place of a displacement, which housings and shafts both have. */
function assumedPlace({ scheme: { place }, facts }: PlacedMachine, readings: readonly Amplitude[]): string[] {
  if (facts.place !== undefined || readings.every(({ quantity }) => quantity !== "displacement")) return [];
  const other = place === "housing" ? "shaft" : "housing";
  return [`place ${place}: not given; a displacement of the ${other} needs a table for the ${other}`];
}

const UNVERIFIED = "limits from memory: check them against the standard before relying on them";
const GOVERN = "limits of the machine's maker, site rules, local codes and licensed practice govern";

function cautionsOf(scheme: Scheme, verified: boolean, note: string | undefined): string[] {
  const { status, replacedBy, orientation, notes } = scheme;
  return [
    ...(verified ? [] : [UNVERIFIED]),
    ...(status === "withdrawn" ? [`withdrawn edition, replaced by ${replacedBy}`] : []),
    ...(orientation ? ["ranges for orientation, never a criterion"] : []),
    ...(status === "guide" ? ["a guide, not a standard"] : []),
    ...(note === undefined ? [] : [note]),
    ...(notes ?? []),
    GOVERN,
  ];
}

function planned(machine: PlacedMachine, readings: readonly Amplitude[], crestFactor?: number): JudgementPlan {
  const { scheme, chosen } = machine;
  requirePlace(machine, readings);
  const { applicable, unjudged } = applicableCriteria(machine, readings, crestFactor);
  const criteria = applicable.map((one) => criterionPlan(machine, one, readings));
  const verified = criteria.every((one) => one.verified);
  const zones = criteria.flatMap((one) => one.zones);
  return {
    criteria,
    unjudged: Object.freeze(unjudged.map((one) => Object.freeze(one))),
    assumedFacts: Object.freeze([...machine.assumedFacts, ...assumedPlace(machine, readings)]),
    verified,
    cautions: Object.freeze(cautionsOf(scheme, verified, chosen.note)),
    words: new Map(zones.map((zone) => [zone, zoneWord(scheme.kind, zone)])),
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
    (one.hertz === undefined) === (other.hertz === undefined)
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
