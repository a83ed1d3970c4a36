import type { RunningSums } from "../detectors/index";

/** Samples whose sums are folded into the total at once, a power of two; keeps rounding small in signals of any length. */
const FOLD = 4096;

/** Sums over the samples that went by, in two parts, so that rounding stays small. */
export interface FoldedSums {
  count: number;
  /** Sums of squares and of magnitudes: of the samples since the last fold, and of those before. */
  squares: number;
  foldedSquares: number;
  sizes: number;
  foldedSizes: number;
  low: number;
  high: number;
}

/** Sums of nothing yet. */
export function emptySums(): FoldedSums {
  const none = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
  return { count: 0, squares: 0, foldedSquares: 0, sizes: 0, foldedSizes: 0, ...none };
}

/** Takes the samples from `first` up to `end` into the sums; how they are portioned makes no difference to a bit. */
export function addToSums(sums: FoldedSums, x: Float64Array, first: number, end: number): void {
  let { count, squares, sizes, low, high } = sums;
  for (let i = first; i < end; i++) {
    const v = x[i] as number;
    squares += v * v;
    sizes += Math.abs(v);
    if (v < low) low = v;
    if (v > high) high = v;
    count++;
    if ((count & (FOLD - 1)) === 0) {
      sums.foldedSquares += squares;
      sums.foldedSizes += sizes;
      squares = 0;
      sizes = 0;
    }
  }
  sums.count = count;
  sums.squares = squares;
  sums.sizes = sizes;
  sums.low = low;
  sums.high = high;
}

/** The sums of two stretches together. */
export function mergedSums(a: FoldedSums, b: FoldedSums): FoldedSums {
  return {
    count: a.count + b.count,
    squares: 0,
    foldedSquares: a.foldedSquares + a.squares + (b.foldedSquares + b.squares),
    sizes: 0,
    foldedSizes: a.foldedSizes + a.sizes + (b.foldedSizes + b.sizes),
    low: Math.min(a.low, b.low),
    high: Math.max(a.high, b.high),
  };
}

/** The sums as a detector reads them. */
export function runningSums({ count, squares, foldedSquares, sizes, foldedSizes, low, high }: FoldedSums): RunningSums {
  return { count, squares: foldedSquares + squares, sizes: foldedSizes + sizes, low, high };
}
