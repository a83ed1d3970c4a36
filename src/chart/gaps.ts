import { counted, requirePositive } from "../core/index";
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

function medianOf(numbers: readonly number[]): number {
  const sorted = numbers.filter((one) => one > 0).sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2;
}

/** How times and lengths of time are told. */
export interface TimeWords {
  readonly at: (time: number) => string;
  readonly length: (span: number) => string;
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
  { at, length }: TimeWords,
): GappedCurve<Point> {
  const spans = given.slice(1).map(({ x }, i) => x - (given[i] as Point).x);
  const most =
    longest === undefined
      ? MEDIANS * medianOf(spans)
      : requirePositive(longest, "a longest time between two readings above zero", { option: "longestGap" });
  const apart = spans.flatMap((span, i) => (most > 0 && span > most * (1 + 1e-9) ? [i] : []));
  const empty = given.filter(({ y }) => !Number.isFinite(y)).length;
  if (apart.length === 0 && empty === 0) return { points: given, said: "", notes: [] };
  const before = new Set(apart);
  const points = given.flatMap((point, i) => (before.has(i) ? [point, { x: point.x, y: Number.NaN }] : [point]));
  const widest = apart.reduce((best, i) => ((spans[i] as number) > (spans[best] as number) ? i : best), apart[0] ?? 0);
  const ofTime =
    apart.length === 0
      ? ""
      : ` ${counted(apart.length, "gap")} longer than ${length(most)}, the longest from ${at((given[widest] as Point).x)} to ${at((given[widest + 1] as Point).x)}.`;
  const missing = empty === 0 ? "" : ` ${counted(empty, "time")} without a reading.`;
  const how = longest === undefined ? ", five times the median time between readings" : "";
  return {
    points,
    said: ofTime + missing,
    notes: [
      ...(apart.length === 0 ? [] : [`The curve is broken where readings lie more than ${length(most)} apart${how}.`]),
      ...(empty === 0 ? [] : ["The curve is broken where no reading was taken."]),
    ],
  };
}
