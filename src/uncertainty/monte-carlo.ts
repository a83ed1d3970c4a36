import { VeladisError } from "../core/index";
import { factorAway } from "../reading/index";
import type { Graph, Input, Node } from "./node";
import { RADIANS } from "./phasor-nodes";
import { normalNumbers, uniformNumbers } from "./random";

/** Draws of an answer, in what it is written in. */
export type Draws = Float64Array;

const ROOT_THREE = 1.732_050_807_568_877_2;

/** A node's value with its own input drawn: `z` standard uncertainties away. */
function drawn({ value, isLevel, isSigned, of }: Node, { uncertainty }: Input, from: number, z: number): number {
  const { standard, in: scale } = uncertainty;
  // a factor by itself is known as a share of 1
  if ((scale === "dB" && !isLevel) || of.length > 0) return from * factorAway(uncertainty, 1, z);
  return isLevel || isSigned || value < 0 ? value + standard * z : Math.max(0, value + standard * z);
}

/** Refuses a draw that no arithmetic comes to: one over an input that reached zero, or its level. */
function requireDraw(draw: number): number {
  if (Number.isFinite(draw)) return draw;
  throw new VeladisError("out-of-range", {
    expected: "uncertainties that leave a reading above zero, where an answer divides by it or is its level in dB",
    received: "a reading that may be zero within its uncertainty",
  });
}

/** Reckons all numbers of a graph again, with every input so many standard uncertainties away. */
export type Replay = (z: ArrayLike<number>) => Float64Array;

/** A graph as something to reckon again; each time into the same list. */
export function replayOf({ nodes, inputs }: Graph): Replay {
  const values = Float64Array.from(nodes, ({ value }) => value);
  const starts = nodes.map(({ of }) => new Array<number>(of.length).fill(0));
  // only what depends on an input is reckoned again
  const live = nodes
    .map((node, place) => ({ node, place }))
    .filter(({ node: { arithmetic, own } }) => arithmetic !== undefined || own !== undefined);
  return (z) => {
    for (const { node, place } of live) {
      const { of, arithmetic, own, hertz, hz } = node;
      let value = node.value;
      if (arithmetic !== undefined) {
        const x = starts[place] as number[];
        for (let k = 0; k < of.length; k++) x[k] = values[of[k] as number] as number;
        const ratio =
          hertz === undefined
            ? 1
            : Math.max(
                1e-9,
                1 + ((inputs[hertz] as Input).uncertainty.standard * (z[hertz] as number)) / (hz as number),
              );
        value = arithmetic.apply(x, ratio);
      }
      values[place] = own === undefined ? value : drawn(node, inputs[own] as Input, value, z[own] as number);
    }
    return values;
  };
}

/** What was drawn of an answer. */
export interface Drawn {
  readonly answer: Draws;
  /** Of a vector: how far its phase is off, in degrees. */
  readonly turns?: Draws;
}

/** How far drawn numbers turn a vector, in degrees. */
type Turn = (values: Float64Array) => number;

/** How far a drawn vector is turned from the one of a graph, in degrees; undefined where the answer is none. */
function turnOf({ nodes, vector }: Graph): Turn | undefined {
  if (vector === undefined) return undefined;
  const [atRe, atIm] = vector;
  const [re, im] = vector.map((at) => (nodes[at] as Node).value) as [number, number];
  // of none that has no direction the turn is asked for
  const size = Math.hypot(re, im);
  const [x, y] = [re / size, im / size];
  return (values) => {
    const [a, b] = [values[atRe] as number, values[atIm] as number];
    return Math.atan2(x * b - y * a, x * a + y * b) / RADIANS;
  };
}

/**
 * An answer reckoned again and again with its inputs drawn from their distributions (JCGM 101:2008), with the nodes in
 * order, so that an input that is used twice is drawn once.
 */
export function drawsOf(graph: Graph, count: number, seed: number): Drawn {
  const uniform = uniformNumbers(seed);
  const normal = normalNumbers(uniform);
  const samplers = graph.inputs.map(({ uncertainty }) =>
    uncertainty.distribution === "normal" ? normal : () => ROOT_THREE * (2 * uniform() - 1),
  );
  const z = new Float64Array(graph.inputs.length);
  const replay = replayOf(graph);
  const answer = new Float64Array(count);
  const turn = turnOf(graph);
  const turns = turn && new Float64Array(count);
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < z.length; k++) z[k] = (samplers[k] as () => number)();
    const values = replay(z);
    answer[i] = requireDraw(values[graph.answer] as number);
    if (turns !== undefined) turns[i] = (turn as Turn)(values);
  }
  return { answer, ...(turns && { turns }) };
}

/** Mean and standard deviation of draws, by a sum that does not lose small differences. */
export function momentsOf(draws: Draws): { mean: number; standard: number } {
  const shift = draws[0] as number;
  // over the greatest of them, so that no square is too large or too small for a number
  let size = 0;
  for (let i = 0; i < draws.length; i++) size = Math.max(size, Math.abs((draws[i] as number) - shift));
  if (size === 0) return { mean: shift, standard: 0 };
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < draws.length; i++) {
    const away = ((draws[i] as number) - shift) / size;
    sum += away;
    squares += away * away;
  }
  const mean = sum / draws.length;
  return { mean: shift + size * mean, standard: size * Math.sqrt(Math.max(0, squares / draws.length - mean ** 2)) };
}

/** Puts the draw that so many are at most in its place, with none above it before it and none below behind (Hoare). */
function placed(draws: Draws, place: number, from: number): number {
  let [low, high] = [from, draws.length - 1];
  while (low < high) {
    const pivot = draws[(low + high) >> 1] as number;
    let [i, j] = [low, high];
    while (i <= j) {
      while ((draws[i] as number) < pivot) i++;
      while ((draws[j] as number) > pivot) j--;
      if (i > j) break;
      const one = draws[i] as number;
      draws[i++] = draws[j] as number;
      draws[j--] = one;
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else break;
  }
  return draws[place] as number;
}

/** The probabilistically symmetric 95 % interval of draws (JCGM 101:2008, 7.7.2); puts them into another order. */
export function intervalOf(draws: Draws): readonly [low: number, high: number] {
  const at = (share: number) => Math.min(draws.length - 1, Math.round(share * (draws.length - 1)));
  const low = placed(draws, at(0.025), 0);
  return [low, placed(draws, at(0.975), at(0.025))];
}

/** From zero to what 95 % of draws are at most; puts them into another order. */
export function intervalFromZero(draws: Draws): readonly [low: 0, high: number] {
  return [0, placed(draws, Math.round(0.95 * (draws.length - 1)), 0)];
}
