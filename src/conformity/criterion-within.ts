import { raised } from "../core/index";
import type { Bound, CriterionJudgement, Judgement, Limit, Zone } from "../severity/index";
import { endsOf, type UncertaintyOf, type UncertaintyOptions, uncertainOf, uncertaintyBy } from "../uncertainty/index";
import type { Quantity } from "../units/index";

/** A reading with its interval, in what the reader wrote it in. */
export interface IntervalWithin {
  readonly value: number;
  /** A reading type, as the reader's limits have it. */
  readonly type: string;
  /** Expanded uncertainty, k = 2. */
  readonly expanded: number;
  /** Lower end; of a level minus infinite where nothing may be left, which JSON writes as null. */
  readonly low: number;
  readonly high: number;
}

/** What one criterion of a scheme says of a reading with its uncertainty. */
export interface CriterionWithin {
  /** The id of the scheme. */
  readonly scheme: string;
  readonly quantity: Quantity;
  readonly bound: Bound;
  /** Of the reading in the unit and detector of the standard. */
  readonly uncertainty: UncertaintyOf;
  /** In the reader's type. */
  readonly interval: IntervalWithin;
  /** The zones that the interval touches, best first. */
  readonly zones: readonly Zone[];
}

/** The same, with the numbers of its zones among those of the scheme. */
export interface Placed {
  readonly answer: CriterionWithin;
  readonly low: number;
  readonly best: number;
  readonly high: number;
  /** The upper end of the interval over the last limit below it, or the first above: how bad it is within its zone. */
  readonly used: number;
  /** The largest value that is still within each zone but the worst, in the unit of the standard. */
  readonly bounds: readonly number[];
}

/** The ends in the reader's type: a limit says how one is carried to the other. */
function readersInterval(
  { as, value: limit, level, printed }: Limit,
  { value, expanded }: UncertaintyOf,
  [low, high]: readonly [number, number],
): IntervalWithin {
  if (level === undefined) {
    const factor = limit / printed.value;
    return Object.freeze({
      ...{ value: value * factor, type: as, expanded: expanded * factor },
      ...{ low: low * factor, high: high * factor },
    });
  }
  const decibels = (one: number): number => level.decibels + 20 * Math.log10(one / printed.value);
  const best = decibels(value);
  return Object.freeze({
    ...{ value: best, type: as, expanded: (20 / Math.LN10) * (expanded / value) },
    ...{ low: decibels(low), high: decibels(high) },
  });
}

/** What a criterion of a judgement says of its reading with the uncertainty. */
export function criterionWithin(
  { scheme }: Judgement,
  { judged, limits, zones, bound, quantity }: CriterionJudgement,
  options: UncertaintyOptions,
): Placed {
  const sorted = (Object.values(limits) as Limit[]).sort((a, b) => a.printed.value - b.printed.value);
  const bounds = sorted.map(({ printed }) => raised(printed.value));
  const at = (value: number): number => bounds.filter((one) => value > one).length;
  const uncertain = uncertainOf(judged, options);
  const uncertainty = uncertaintyBy(uncertain, judged.assumed ?? [], options.method);
  const ends = endsOf(uncertain, uncertainty, 0);
  const best = at(uncertainty.value);
  const [low, high] = [at(ends[0]), at(ends[1])];
  const next = sorted[Math.min(high, sorted.length - 1)] as Limit;
  return {
    answer: Object.freeze({
      ...{ scheme, quantity, bound, uncertainty },
      interval: readersInterval(sorted[0] as Limit, uncertainty, ends),
      zones: Object.freeze(zones.slice(low, high + 1)),
    }),
    ...{ low, best, high, bounds },
    used: ends[1] / next.printed.value,
  };
}
