import { isVerified } from "../core/index";
import { type Amplitude, type Unfinished, union } from "../reading/index";
import { type CriterionJudgement, judgedBy, rankOf } from "./judge-criterion";
import type { Judgement } from "./judgement";
import { judgementPlan } from "./judgement-plan";
import type { Zone } from "./kinds";
import type { PlacedMachine } from "./placed-machine";
import { readingCautions } from "./reading-cautions";
import { clippedBecause, requireInRange } from "./require-in-range";

/** The worst of the criteria that say what the vibration is or is at least. */
function governingOf(criteria: readonly CriterionJudgement[]): CriterionJudgement {
  let worst: CriterionJudgement | undefined;
  for (const one of criteria) {
    if (one.bound !== "most" && (worst === undefined || rankOf(one) > rankOf(worst))) worst = one;
  }
  return worst as CriterionJudgement;
}

/** The worst number of a zone that any criterion admits, those that say the most included. */
function mostOf(criteria: readonly CriterionJudgement[], zones: readonly Zone[], at: number): number {
  let most = at;
  for (const { bound, zone } of criteria) if (bound === "most") most = Math.max(most, zones.indexOf(zone));
  return most;
}

/**
 * What a scheme says of readings of a machine that has its class in it.
 *
 * @throws {@link VeladisError} `sensor-fault`, `missing-fact`, `missing-frequency`, `not-a-sine`, `out-of-range`
 */
export function judgementIn(
  machine: PlacedMachine,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): Judgement {
  const { scheme } = machine;
  requireInRange(readings);
  const plan = judgementPlan(machine, readings, crestFactor);
  const criteria = Object.freeze(plan.criteria.map((one) => judgedBy(one, readings, crestFactor)));
  const governing = governingOf(criteria);
  const { zones } = governing;
  const at = zones.indexOf(governing.zone);
  const openBecause = clippedBecause(readings) ?? plan.openBecause;
  const upTo = openBecause === undefined ? mostOf(criteria, zones, at) : zones.length - 1;
  const { possible, worst, headline, word } = plan.possible(at, upTo, openBecause);
  let { assumed } = criteria[0] as CriterionJudgement;
  for (let i = 1; i < criteria.length; i++) assumed = union(assumed, (criteria[i] as CriterionJudgement).assumed);
  const loop = readingCautions(readings);
  // written out: a copy of the governing criterion with parts added to it costs more than all the rest
  const judgement: Unfinished<Judgement> = {
    headline,
    quantity: governing.quantity,
    zone: governing.zone,
    possible,
    worst,
    zones,
    judged: governing.judged,
    limits: governing.limits,
    limit: governing.limit,
    margin: governing.margin,
    source: governing.source,
    bound: governing.bound,
    band: governing.band,
    assumed,
    provenance: plan.provenance,
    verified: isVerified(plan.provenance),
    confirmed: plan.confirmed,
    differences: plan.differences,
    history: governing.history,
    kind: scheme.kind,
    word,
    scheme: scheme.id,
    standard: scheme.standard,
    edition: scheme.edition,
    measuredOn: scheme.measuredOn,
    machineClass: machine.machineClass,
    machine: machine.given,
    criteria,
    unjudged: plan.unjudged,
    assumedFacts: plan.assumedFacts,
    setAside: machine.setAside,
    cautions: loop.length === 0 ? plan.cautions : Object.freeze([...loop, ...plan.cautions]),
  };
  if (governing.peakMeans !== undefined) judgement.peakMeans = governing.peakMeans;
  if (plan.supportRule !== undefined) judgement.supportRule = plan.supportRule;
  return Object.freeze(judgement);
}
