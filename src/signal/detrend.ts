import { frozen, requireChoice, withParameters } from "../core/index";
import { finiteLevels } from "./finite-level";
import { finiteSamples, type Samples, sumOf } from "./samples";

/** What can be taken off a record before it is analysed. */
export const trends = /* @__PURE__ */ frozen({
  none: "nothing",
  mean: "the mean",
  linear: "the straight line of least squares",
});

/** What is taken off a record: a key of {@link trends}. */
export type Trend = keyof typeof trends;

/** The name of a trend, if it is one. */
export function requireTrend(name: string): Trend {
  return requireChoice(name, Object.keys(trends) as Trend[], "what to take off the record", { parameter: "detrend" });
}

/** Mean of the record, and slope a sample of its line of least squares. */
export function lineOf(x: Float64Array): { mean: number; slope: number } {
  const n = x.length;
  const mean = sumOf(x) / n;
  let moment = 0;
  for (let i = 0; i < n; i++) moment += (i - (n - 1) / 2) * ((x[i] as number) - mean);
  return { mean, slope: n < 2 ? 0 : (12 * moment) / (n * (n * n - 1)) };
}

/** Takes the trend off, in place. */
export function removeTrend(x: Float64Array, trend: Trend): Float64Array {
  if (trend === "mean") {
    const mean = sumOf(x) / x.length;
    for (let i = 0; i < x.length; i++) x[i] = (x[i] as number) - mean;
  } else if (trend === "linear") {
    const { mean, slope } = lineOf(x);
    const start = mean - (slope * (x.length - 1)) / 2;
    for (let i = 0; i < x.length; i++) x[i] = (x[i] as number) - (start + slope * i);
  }
  return x;
}

/**
 * A copy of the samples without their mean, or without their line of least squares.
 *
 * The mean of an accelerometer's signal is gravity and the amplifier's offset, and no vibration. A line is taken off
 * where a sensor still settles; it also takes a little of any tone that does not fit the record a great many times
 * (a part in 2 k, k being the periods in the record), so it is not the default anywhere.
 *
 * @param trend - `"mean"`, `"linear"` or `"none"`; the mean if not given
 * @throws {@link VeladisError} `not-a-number` or `not-finite` with the index, `wrong-type`, `unknown-option`
 * @example
 * ```ts
 * import { detrended } from "veladis/signal";
 *
 * [...detrended([1, 2, 6])]; // => [-2, -1, 3]
 * [...detrended([1, 2, 3], "linear")]; // => [0, 0, 0]
 * ```
 */
export function detrended(samples: Samples, trend: Trend = "mean"): Float64Array {
  return withParameters({ samples, trend }, () => {
    return finiteLevels(removeTrend(finiteSamples(samples), requireTrend(trend)));
  });
}
