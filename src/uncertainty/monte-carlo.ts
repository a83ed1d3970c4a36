import { VeladisError } from "../core/index";
import type { Graph, Input, Node } from "./graph";
import { normalNumbers, uniformNumbers } from "./random";

/** Draws of an answer, in what it is written in. */
export type Draws = Float64Array;

/** ln 10 / 20: the share of a linear value that a decibel is. */
const perDecibel = 0.11512925464970229;
const ROOT_THREE = 1.732_050_807_568_877_2;

/** The values of a node with its own input drawn: each `z` standard uncertainties away. */
function drawOwn({ value, isLevel, of }: Node, { uncertainty }: Input, column: Draws, z: Draws, count: number): void {
  const { standard, in: scale } = uncertainty;
  const isFactor = of.length > 0;
  const isShare = scale === "dB" && !isLevel;
  // neither an amplitude nor a factor is ever below zero
  const least = isLevel || value < 0 ? Number.NEGATIVE_INFINITY : 0;
  for (let i = 0; i < count; i++) {
    const from = column[i] as number;
    const away = standard * (z[i] as number);
    if (isShare) column[i] = from * Math.exp(perDecibel * away);
    else if (isFactor) column[i] = from * Math.max(0, 1 + away);
    else column[i] = Math.max(least, value + away);
  }
}

/** Refuses a draw that no arithmetic comes to: one over an input that reached zero, or its level. */
function requireDraw(draw: number): number {
  if (Number.isFinite(draw)) return draw;
  throw new VeladisError("out-of-range", {
    expected: "uncertainties that leave a reading above zero, where an answer divides by it or is its level in dB",
    received: "a reading that may be zero within its uncertainty",
  });
}

/** So many draws are carried through all nodes at a time: what they need stays in the cache. */
const BLOCK = 4096;

/** The frequency of a step over the one that was used, for each draw. */
function drawHertz({ uncertainty }: Input, hertz: number, ratios: Draws, z: Draws, count: number): void {
  const share = uncertainty.standard;
  for (let i = 0; i < count; i++) ratios[i] = Math.max(1e-9, 1 + (share * (z[i] as number)) / hertz);
}

/**
 * An answer reckoned again and again with its inputs drawn from their distributions (JCGM 101:2008), with the nodes in
 * order, so that an input that is used twice is drawn once.
 */
export function drawsOf(
  { nodes, inputs }: Graph,
  hertzAt: readonly (number | undefined)[],
  count: number,
  seed: number,
): Draws {
  const uniform = uniformNumbers(seed);
  const normal = normalNumbers(uniform);
  const isNormal = inputs.map(({ uncertainty }) => uncertainty.distribution === "normal");
  const z = inputs.map(() => new Float64Array(BLOCK));
  const columns = nodes.map(({ value }) => new Float64Array(BLOCK).fill(value));
  const ratios = new Float64Array(BLOCK);
  const draws = new Float64Array(count);
  for (let start = 0; start < count; start += BLOCK) {
    const size = Math.min(BLOCK, count - start);
    for (let i = 0; i < size; i++) {
      for (let k = 0; k < z.length; k++) (z[k] as Draws)[i] = isNormal[k] ? normal() : ROOT_THREE * (2 * uniform() - 1);
    }
    nodes.forEach((node, place) => {
      const { of, arithmetic, own, hertz, value } = node;
      // only what depends on an input is reckoned again
      if (arithmetic === undefined && own === undefined) return;
      const column = columns[place] as Draws;
      if (arithmetic !== undefined) {
        if (hertz === undefined) ratios.fill(1);
        else drawHertz(inputs[hertz] as Input, hertzAt[place] as number, ratios, z[hertz] as Draws, size);
        const from = of.map((at) => columns[at] as Draws);
        arithmetic.apply(from, ratios, column, size);
      } else column.fill(value);
      if (own !== undefined) drawOwn(node, inputs[own] as Input, column, z[own] as Draws, size);
    });
    draws.set((columns[nodes.length - 1] as Draws).subarray(0, size), start);
  }
  for (let i = 0; i < count; i++) requireDraw(draws[i] as number);
  return draws;
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
