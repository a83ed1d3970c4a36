import { replayOf } from "./monte-carlo";
import type { Uncertain } from "./uncertain";
import { type UncertaintyOf, uncertaintyBy } from "./uncertainty-of";

/** As the expanded uncertainty: two standard ones. */
const K = 2;

/**
 * The answer with its inputs moved by two standard uncertainties: all together along the slopes, and each alone. A stated
 * ± 6 dB (k=2) alone comes to twice the reading, while of draws 97.5 % are less.
 */
function carried({ graph, slopes }: Uncertain): readonly number[] {
  const { parts, slope } = slopes();
  if (slope === 0) return [];
  const replay = replayOf(graph);
  const at = (z: readonly number[]): number => replay(z)[graph.answer] as number;
  const moved = (sign: number) => [
    at(parts.map((part) => (sign * K * part) / slope)),
    ...parts.map((_, i) => at(parts.map((__, k) => (k === i ? sign * K : 0)))),
  ];
  return [...moved(1), ...moved(-1)].filter(Number.isFinite);
}

/**
 * The ends between which an answer lies, none inside of what was stated: the widest of value plus and minus the expanded
 * uncertainty, by slopes and by draws, the draws' own interval, and the stated ends carried through.
 *
 * @param least - what the answer is above: 0 of an amplitude, of which an end at or below it says nothing
 */
export function endsOf(
  uncertain: Uncertain,
  found: UncertaintyOf,
  least = Number.NEGATIVE_INFINITY,
): readonly [low: number, high: number] {
  const { value, interval, expanded } = found;
  const slopes = found.method === "first order" ? expanded : uncertaintyBy(uncertain, [], "first order").expanded;
  const most = Math.max(expanded, slopes);
  const stated = carried(uncertain);
  const below = [value - most, ...stated].filter((one) => one > least);
  return [Math.max(least, Math.min(value, interval[0], ...below)), Math.max(value + most, interval[1], ...stated)];
}
