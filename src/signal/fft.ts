import { cached } from "../core/index";
import { bluestein } from "./bluestein";
import { type Butterfly, butterfly2, butterfly3, butterfly4, butterfly5, butterflyOf } from "./butterflies";
import type { Fft } from "./fft-type";
import { type Leaf, leaf1, leaf2, leaf4, leaf8 } from "./leaves";
import { writeRootOfUnity } from "./root-of-unity";

/** Complex numbers whose tables are kept, over all lengths: some 40 MB. */
const KEPT = 2_097_152;

/** Primes above this are left to Bluestein's transform. */
const LARGEST_RADIX = 61;

const special: Readonly<Record<number, Butterfly>> = {
  2: butterfly2,
  3: butterfly3,
  4: butterfly4,
  5: butterfly5,
};

/** Radices of a length, outermost first, and the power of two that the leaf takes; undefined for a large prime. */
function factors(length: number): { radices: number[]; leaf: number } | undefined {
  const radices: number[] = [];
  let rest = length;
  for (let prime = 3; prime <= LARGEST_RADIX && rest > 1; prime += 2) {
    for (; rest % prime === 0; rest /= prime) radices.push(prime);
  }
  if ((rest & (rest - 1)) !== 0) return undefined;
  for (; rest > 8; rest /= 4) radices.push(4);
  return { radices: radices.sort((a, b) => b - a), leaf: rest };
}

/** Roots of a stage: for each element of a part, the powers 1 to radix - 1 of its root of unity. */
function rootsOf(radix: number, length: number): Float64Array {
  const part = length / radix;
  const roots = new Float64Array(2 * (radix - 1) * part);
  for (let k = 0, at = 0; k < part; k++) {
    for (let power = 1; power < radix; power++, at += 2) writeRootOfUnity(roots, at, power * k, length);
  }
  return roots;
}

/** Every fourth entry of the stage before, whose length is four times as much. */
function thinned(roots: Float64Array): Float64Array {
  const few = new Float64Array(roots.length / 4);
  for (let at = 0, from = 0; at < few.length; from += 24) {
    for (let j = 0; j < 6; j++) few[at++] = roots[from + j] as number;
  }
  return few;
}

interface Stage {
  readonly radix: number;
  readonly part: number;
  readonly butterfly: Butterfly;
  readonly roots: Float64Array;
}

function stagesOf(length: number, radices: readonly number[]): Stage[] {
  const stages: Stage[] = [];
  let left = length;
  for (const radix of radices) {
    const before = stages[stages.length - 1];
    const roots = radix === 4 && before?.radix === 4 ? thinned(before.roots) : rootsOf(radix, left);
    left /= radix;
    stages.push({ radix, part: left, butterfly: special[radix] ?? butterflyOf(radix), roots });
  }
  return stages;
}

/** Where each bin stands after the stages: its digits, read the other way round. */
function placesOf(length: number, radices: readonly number[]): Int32Array {
  const places = new Int32Array(length);
  let known = 1;
  let part = length;
  for (const radix of radices) {
    part /= radix;
    for (let digit = radix - 1; digit >= 0; digit--) {
      for (let k = 0; k < known; k++) places[digit * known + k] = (places[k] as number) + digit * part;
    }
    known *= radix;
  }
  for (let digit = part - 1; digit > 0; digit--) {
    for (let k = 0; k < known; k++) places[digit * known + k] = (places[k] as number) + digit;
  }
  return places;
}

function stagedFft(length: number, radices: readonly number[], leafSize: number): Fft {
  const stages = stagesOf(length, radices);
  const leaf: Leaf = leafSize === 8 ? leaf8 : leafSize === 4 ? leaf4 : leafSize === 2 ? leaf2 : leaf1;
  // Depth first: a part is finished while it is still in the cache.
  const descend = (x: Float64Array, start: number, depth: number): void => {
    const stage = stages[depth];
    if (stage === undefined) {
      leaf(x, start);
      return;
    }
    const { radix, part, butterfly, roots } = stage;
    butterfly(x, start, part, roots);
    for (let i = 0; i < radix; i++) descend(x, start + 2 * part * i, depth + 1);
  };
  return { length, places: placesOf(length, radices), run: leafSize, transform: (x) => descend(x, 0, 0) };
}

/** All bins of a transformed array, in order: a run of neighbours at a time, so that memory is read once. */
export function inOrder({ length, places, run }: Fft, x: Float64Array): Float64Array {
  const ordered = new Float64Array(2 * length);
  const rows = length / run;
  const stride = 2 * rows;
  for (let k = 0; k < rows; k++) {
    // a shift keeps the index a whole number, for twice the speed
    let from = (places[k] as number) << 1;
    for (let at = k << 1; at < ordered.length; at += stride, from += 2) {
      ordered[at] = x[from] as number;
      ordered[at + 1] = x[from + 1] as number;
    }
  }
  return ordered;
}

/**
 * The transform of a length: any length, fastest where no prime above 5 divides it.
 *
 * The tables of the lengths last used are kept.
 */
export const fftOf: (length: number) => Fft = /* @__PURE__ */ cached(
  (length) => {
    const split = factors(length);
    return split === undefined ? bluestein(length, fftOf) : stagedFft(length, split.radices, split.leaf);
  },
  { room: KEPT, size: (length) => length },
);
