import type { Graph } from "./node";
import type { Phasor } from "./phasor-nodes";

/** What each of two parts owes to every input. */
type Both = readonly [cosine: readonly number[], sine: readonly number[]];

/** The two parts of a vector, and what each owes to every input. */
export function partsOfVector(
  vector: Phasor,
  { nodes, inputs }: Graph,
  partsAt: (at: number) => readonly number[],
): { readonly at: Phasor; readonly parts: Both } {
  const at = vector.map((one) => nodes[one]?.value) as unknown as Phasor;
  const parts = vector.map((one) => {
    const owed = partsAt(one);
    return owed.length > 0 ? owed : inputs.map(() => 0);
  }) as unknown as Both;
  return { at, parts };
}

/** Within this many squared standard deviations two numbers lie with 95 % (chi-squared, two degrees of freedom). */
const WITHIN = 5.991;

/** Whether the ellipse in which a vector lies with 95 % holds the origin. */
export function holdsOrigin([re, im]: Phasor, [cosine, sine]: Both): boolean {
  const size = Math.hypot(re, im);
  if (size === 0) return true;
  // over the length, so that no square leaves the range of numbers
  const sum = (one: readonly number[], other: readonly number[]): number =>
    one.reduce((all, part, i) => all + (part / size) * ((other[i] as number) / size), 0);
  const both = sum(cosine, sine);
  // an ellipse without width has a little
  const width = 1e-12 * (sum(cosine, cosine) + sum(sine, sine)) + Number.MIN_VALUE;
  const [xx, yy] = [sum(cosine, cosine) + width, sum(sine, sine) + width];
  const [x, y] = [re / size, im / size];
  return x * x * yy - 2 * x * y * both + y * y * xx <= WITHIN * (xx * yy - both * both);
}

/** Whether nothing may be left of a vector that was made of others: its phase is not determined, and its length begins at 0. */
export function mayBeNothing(graph: Graph, partsAt: (at: number) => readonly number[]): boolean {
  if (graph.vector === undefined || !graph.isOfVectors) return false;
  const { at, parts } = partsOfVector(graph.vector, graph, partsAt);
  return holdsOrigin(at, parts);
}
