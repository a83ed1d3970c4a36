import type { Step } from "../reading/index";
import { drawsOf, intervalOf, momentsOf } from "./monte-carlo";
import { holdsOrigin, partsOfVector } from "./origin";
import { MOST_PHASE } from "./phases";
import { alongAndAcross } from "./phasor-nodes";
import {
  bySlopes,
  drawing,
  partsOf,
  type UncertaintyMethod,
  type UncertaintyOptions,
  type UncertaintyPart,
  uncertainOf,
} from "./uncertainty-of";

/** How well the phase of a vector is known, in degrees. */
export interface UncertaintyOfPhase {
  /** The phase lag as it stands, 0 to below 360. */
  readonly value: number;
  /** Standard uncertainty (one standard deviation). */
  readonly standard: number;
  /** Expanded uncertainty, 2 x standard. */
  readonly expanded: number;
  readonly k: 2;
  /** Where the true phase lies with about 95 %; an end may be below 0 or above 360, so that the two are in order. */
  readonly interval: readonly [low: number, high: number];
  readonly method: UncertaintyMethod;
  /** `Monte Carlo`: how many draws, by which seed. */
  readonly draws?: number;
  readonly seed?: number;
  /** The inputs to first order, the largest in front; independent of one another. */
  readonly parts: readonly UncertaintyPart[];
}

/** 180 / pi. */
const DEGREES = 57.295_779_513_082_32;

/** Drawn phases may come to this much more than the slopes say, and still have a direction. */
const DRAWN = 1.1;

/**
 * How well the phase of a vector is known, by its history; null where it is not determined: the region in which the vector
 * lies with 95 % holds the origin, or two standard uncertainties are more than a quarter of a turn.
 *
 * @param phase - as it stands, in degrees
 */
export function uncertaintyOfPhase(
  history: readonly Step[],
  phase: number,
  options: UncertaintyOptions = {},
): UncertaintyOfPhase | null {
  const uncertain = uncertainOf({ history });
  const { graph } = uncertain;
  const { count, seed } = drawing(options);
  const exact = { value: phase, standard: 0, expanded: 0, k: 2, parts: Object.freeze([]) } as const;
  if (graph.vector === undefined) {
    return Object.freeze({ ...exact, interval: Object.freeze([phase, phase] as const), method: "first order" });
  }
  const { partsAt, fitting } = bySlopes(uncertain);
  const { at, parts: both } = partsOfVector(graph.vector, graph, partsAt);
  const [re, im] = at;
  const size = Math.hypot(re, im);
  if (size === 0 || (graph.isOfVectors && holdsOrigin(at, both))) return null;
  const parts = alongAndAcross(at, both)[1].map((part) => (part / size) * DEGREES);
  const slope = Math.hypot(...parts);
  if (2 * slope > MOST_PHASE * (1 + 1e-9)) return null;
  const method = slope === 0 && fitting === "first order" ? fitting : (options.method ?? fitting);
  const [x, y] = [re / size, im / size];
  const [atRe, atIm] = graph.vector;
  const sorted =
    method === "first order"
      ? undefined
      : drawsOf(graph, count, seed, (values) => {
          const [a, b] = [values[atRe] as number, values[atIm] as number];
          return Math.atan2(x * b - y * a, x * a + y * b) * DEGREES;
        }).sort();
  const standard = sorted === undefined ? slope : momentsOf(sorted).standard;
  if (2 * standard > MOST_PHASE * DRAWN) return null;
  const [low, high] = sorted === undefined ? [-2 * standard, 2 * standard] : intervalOf(sorted);
  return Object.freeze({
    ...exact,
    standard,
    expanded: 2 * standard,
    interval: Object.freeze([phase + low, phase + high] as const),
    method,
    ...(sorted !== undefined && { draws: sorted.length, seed }),
    parts: partsOf(parts, slope, graph),
  });
}
