import { replayOf } from "./monte-carlo";
import type { Graph } from "./node";
import { SECOND } from "./phasor-nodes";

/** The third order may be this share of the first: it changes the standard deviation by three times as much at the most. */
const THIRD = 0.002;

/**
 * True where a vector was made of others and its slopes say too little of its length: each input is moved by one standard
 * uncertainty either way, and the answer reckoned again. A phase of a few degrees moves a vector along a bow.
 *
 * @param partsAt - what each number owes to every input to first order
 */
export function isCurved(graph: Graph, partsAt: (place: number) => readonly number[]): boolean {
  const { inputs, answer, isOfVectors } = graph;
  if (!isOfVectors) return false;
  const replay = replayOf(graph);
  const z = new Float64Array(inputs.length);
  const best = replay(z)[answer] as number;
  const parts = partsAt(answer);
  let [second, third] = [0, 0];
  inputs.forEach((_, i) => {
    z[i] = 1;
    const above = (replay(z)[answer] as number) - best;
    z[i] = -1;
    const below = (replay(z)[answer] as number) - best;
    z[i] = 0;
    second += (above + below) ** 2 / 2;
    third += ((above - below) / 2 - (parts[i] ?? 0)) ** 2;
  });
  const first = Math.hypot(...parts);
  return Math.sqrt(second) > SECOND * first || Math.sqrt(third) > THIRD * first;
}
