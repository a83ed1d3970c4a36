import { intervalOf, momentsOf } from "./monte-carlo";
import { holdsOrigin, partsOfVector } from "./origin";
import { MOST_PHASE } from "./phases";
import { alongAndAcross, RADIANS } from "./phasor-nodes";
import type { Uncertain, UncertaintyMethod } from "./uncertain";
import { partsOf, type UncertaintyOf } from "./uncertainty-of";

/** How well the phase of a vector is known, in degrees. */
export interface UncertaintyOfPhase
  extends Pick<UncertaintyOf, "expanded" | "k" | "method" | "draws" | "seed" | "parts"> {
  /** The phase lag as it stands, 0 to below 360. */
  readonly value: number;
  /** Standard uncertainty (one standard deviation). */
  readonly standard: number;
  /** Where the true phase lies with about 95 %; an end may be below 0 or above 360, so that the two are in order. */
  readonly interval: readonly [low: number, high: number];
}

/** Drawn phases may come to this much more than the slopes say, and still have a direction. */
const DRAWN = 1.1;

/**
 * How well the phase of a vector is known, by its history; null where it is not determined: the region in which the vector
 * lies with 95 % holds the origin, or two standard uncertainties are more than a quarter of a turn.
 *
 * @param phase - as it stands, in degrees
 */
export function uncertaintyOfPhase(
  uncertain: Uncertain,
  phase: number,
  asked?: UncertaintyMethod,
): UncertaintyOfPhase | null {
  const { graph, seed } = uncertain;
  const exact = { value: phase, standard: 0, expanded: 0, k: 2, parts: Object.freeze([]) } as const;
  if (graph.vector === undefined) {
    return Object.freeze({ ...exact, interval: Object.freeze([phase, phase] as const), method: "first order" });
  }
  const { partsAt, fitting } = uncertain.slopes();
  const { at, parts: both } = partsOfVector(graph.vector, graph, partsAt);
  const [re, im] = at;
  const size = Math.hypot(re, im);
  if (size === 0 || (graph.isOfVectors && holdsOrigin(at, both))) return null;
  const parts = alongAndAcross(at, both)[1].map((part) => part / size / RADIANS);
  const slope = Math.hypot(...parts);
  if (2 * slope > MOST_PHASE * (1 + 1e-9)) return null;
  const method = slope === 0 && fitting === "first order" ? fitting : (asked ?? fitting);
  const drawn = method === "first order" ? undefined : uncertain.drawn().turns;
  const standard = drawn === undefined ? slope : momentsOf(drawn).standard;
  if (2 * standard > MOST_PHASE * DRAWN) return null;
  const [low, high] = drawn === undefined ? [-2 * standard, 2 * standard] : intervalOf(drawn);
  return Object.freeze({
    ...exact,
    standard,
    expanded: 2 * standard,
    interval: Object.freeze([phase + low, phase + high] as const),
    method,
    ...(drawn !== undefined && { draws: drawn.length, seed }),
    parts: partsOf(parts, slope, graph),
  });
}
