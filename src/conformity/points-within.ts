import { isUncertain } from "../reading/index";
import { type PointsVerdict, type PointVerdict, pointsVerdict } from "../severity/index";
import { decidedVerdict } from "./decided-verdict";
import { type ZonesWithin, type ZonesWithinOptions, zonesWithin } from "./zones-within";

/** A point with its verdict by a rule; the zones within its interval, where its reading has one. */
interface PointWithin extends PointVerdict {
  readonly within?: ZonesWithin;
}

/** A verdict on a machine by several points, with the zones within the interval of each. */
export interface PointsWithin extends PointsVerdict {
  readonly governing: PointWithin;
  readonly points: readonly PointWithin[];
}

function decided(one: PointVerdict, options: ZonesWithinOptions): PointWithin {
  if (!isUncertain(one.reading.history ?? [])) return one;
  const within = zonesWithin(one.verdict, options);
  return Object.freeze({ ...one, verdict: decidedVerdict(one.verdict, within), within });
}

/** What is taken of a reading without a ± beside others that have one. */
const EXACT = "uncertainty of the reading: not stated, taken as none";

function takenAsExact({ verdict, ...one }: PointWithin): PointWithin {
  return Object.freeze({
    ...one,
    verdict: Object.freeze({ ...verdict, assumedFacts: Object.freeze([...verdict.assumedFacts, EXACT]) }),
  });
}

/** A point with no zone possible that is better than the one by the rule. */
function fromItsZone({ verdict, ...point }: PointWithin): PointVerdict {
  const { possible, zone } = verdict;
  return { ...point, verdict: { ...verdict, possible: possible.slice(possible.indexOf(zone)) } };
}

/** The verdict by several points, decided within the interval of each by a rule; as it is where none has one. */
export function pointsWithin(answer: PointsVerdict, options: ZonesWithinOptions = {}): PointsWithin {
  const each = answer.points.map((one) => decided(one, options));
  if (each.every(({ within }) => within === undefined)) return answer;
  const points = Object.freeze(each.map((one) => (one.within === undefined ? takenAsExact(one) : one)));
  const isGuarded = options.rule !== "simple acceptance";
  const { headline, word, zone, governing } = isGuarded ? pointsVerdict(points.map(fromItsZone)) : answer;
  const { possible, worst, notRead } = pointsVerdict(points);
  const own = points.find(({ point }) => point === governing.point) as PointWithin;
  return Object.freeze({
    headline,
    word,
    zone,
    possible,
    worst,
    governing: own,
    points,
    notRead,
    cautions: answer.cautions,
  });
}
