import { type Judgement, type PossibleZones, possibleZones, type Zone } from "../severity/index";
import type { UncertaintyOptions } from "../uncertainty/index";
import { criterionWithin, type Placed } from "./criterion-within";
import { isOpen } from "./is-open";

/** What one scheme says of a reading with its uncertainty. */
export interface JudgementWithin {
  readonly judgement: Judgement;
  readonly criteria: readonly Placed[];
  /** The criterion that is worst at the upper end of its interval. */
  readonly governing: Placed;
  /** The zone at the upper end. */
  readonly zone: Zone;
  /** The zones possible from there on, as the verdict has them from the best value on. */
  readonly fromThere: PossibleZones;
  /** All zones that the interval touches, and those that are possible for the best value. */
  readonly zones: readonly Zone[];
}

/** The worst of several numbers of zones. */
const worstOf = (places: readonly number[]): number => Math.max(0, ...places);

/** What a scheme says of a reading with its uncertainty: the worst of its criteria governs, at each end of the interval. */
export function judgementWithin(judgement: Judgement, options: UncertaintyOptions): JudgementWithin {
  const { kind, zones, possible } = judgement;
  const criteria = judgement.criteria.map((one) => criterionWithin(judgement, one, options));
  const certain = criteria.filter(({ answer }) => answer.bound !== "most");
  const least = worstOf(certain.map(({ low }) => low));
  const most = worstOf(certain.map(({ high }) => high));
  const upTo = worstOf([...criteria.map(({ high }) => high), zones.indexOf(possible.at(-1) as Zone)]);
  const openBecause = isOpen(judgement) ? judgement.word : undefined;
  const [governing] = [...certain].sort((a, b) => b.high - a.high || b.used - a.used) as [Placed];
  return {
    ...{ judgement, criteria, governing },
    zone: zones[most] as Zone,
    fromThere: possibleZones(kind, zones)(most, upTo, openBecause),
    zones: zones.slice(least, upTo + 1),
  };
}
