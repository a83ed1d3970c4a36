import { counted, medianOf, requirePositive } from "../core/index";
import type { CurvePoint } from "./reduced-curve";

/** Longest time between two readings that is no gap, in medians of that time, as for the gaps of a history. */
const MEDIANS = 5;

/** A curve that is broken where readings are missing, and what is said of that. */
export interface GappedCurve<Point extends CurvePoint> {
  /** In order of time; one whose value is NaN breaks the curve. */
  readonly points: readonly (Point | CurvePoint)[];
  /** How many gaps there are, and the longest; empty for none. */
  readonly said: string;
  readonly notes: readonly string[];
}

/** The time from each point to the next. */
function spansOf(points: readonly CurvePoint[]): Float64Array {
  const spans = new Float64Array(Math.max(0, points.length - 1));
  for (let i = 0; i < spans.length; i++) spans[i] = (points[i + 1] as CurvePoint).x - (points[i] as CurvePoint).x;
  return spans;
}

/** How times, lengths of time and what is missing are told. */
export interface GapWords {
  readonly at: (time: number) => string;
  readonly length: (span: number) => string;
  /** What a time lacks whose value is NaN, and what is said of the curve there. */
  readonly lacking: string;
  readonly broken: string;
  /** What a gap between two readings means. */
  readonly meaning?: string;
}

/**
 * Points as a curve with its gaps: between two that lie further apart than the longest time that is none, and where a value is
 * NaN, since no reading was taken.
 *
 * @param given - points in order of time
 * @param longest - longest time between two readings that is no gap; five times the median if undefined
 */
export function gappedCurve<Point extends CurvePoint>(
  given: readonly Point[],
  longest: number | undefined,
  { at, length, lacking, broken, meaning }: GapWords,
): GappedCurve<Point> {
  const spans = spansOf(given);
  const most =
    longest === undefined
      ? MEDIANS * medianOf(spans.filter((span) => span > 0))
      : requirePositive(longest, "a longest time between two readings above zero", { option: "longestGap" });
  const apart: number[] = [];
  for (let i = 0; i < spans.length; i++) if (most > 0 && (spans[i] as number) > most * (1 + 1e-9)) apart.push(i);
  const empty = given.filter(({ y }) => !Number.isFinite(y)).length;
  if (apart.length === 0 && empty === 0) return { points: given, said: "", notes: [] };
  const before = new Set(apart);
  const points: (Point | CurvePoint)[] = [];
  for (const [i, point] of given.entries()) {
    points.push(point);
    if (before.has(i)) points.push({ x: point.x, y: Number.NaN });
  }
  const widest = apart.reduce((best, i) => ((spans[i] as number) > (spans[best] as number) ? i : best), apart[0] ?? 0);
  const ofTime =
    apart.length === 0
      ? ""
      : ` ${counted(apart.length, "gap")} longer than ${length(most)}, the longest from ${at((given[widest] as Point).x)} to ${at((given[widest + 1] as Point).x)}.`;
  const missing = empty === 0 ? "" : ` ${counted(empty, "time")} without ${lacking}.`;
  const how = longest === undefined ? ", five times the median time between readings" : "";
  return {
    points,
    said: ofTime + missing,
    notes: [
      ...(apart.length === 0
        ? []
        : [
            `The curve is broken where readings lie more than ${length(most)} apart${how}.${meaning === undefined ? "" : ` ${meaning}`}`,
          ]),
      ...(empty === 0 ? [] : [broken]),
    ],
  };
}
