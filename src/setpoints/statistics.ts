import { finiteResult } from "../core/index";

/** Plain statistics of values in rising order. */
export function quantile(sorted: Float64Array, share: number): number {
  const at = (sorted.length - 1) * share;
  const low = Math.floor(at);
  const below = sorted[low] as number;
  const above = sorted[Math.min(low + 1, sorted.length - 1)] as number;
  return below + (above - below) * (at - low);
}

/** Mean, and standard deviation of a sample (n - 1), of two values or more. */
export function meanAndDeviation(values: Float64Array): { mean: number; standardDeviation: number } {
  let mean = 0;
  let sum = 0;
  // Welford's recurrence: no cancellation however far the values lie from zero.
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    const before = value - mean;
    mean += before / (i + 1);
    sum += before * (value - mean);
  }
  return { mean, standardDeviation: Math.sqrt(finiteResult(sum / (values.length - 1))) };
}

/** Median of the distances from the median, times 1.4826: the standard deviation of normal scatter, blind to outliers. */
export function robustSpread(values: Float64Array, median: number): number {
  const distances = values.map((value) => Math.abs(value - median)).sort();
  return finiteResult(1.4826 * quantile(distances, 0.5));
}
