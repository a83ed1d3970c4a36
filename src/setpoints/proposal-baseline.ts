import { type Amplitude, amplitudeOf } from "../amplitude/index";
import { shaped, VeladisError } from "../core/index";
import type { Baseline } from "./baseline";
import { baselineShape } from "./baseline-shape";
import type { OwnLimits } from "./setpoint-limits";

/** Baseline level, its statistics and its type, whatever form it was given in. */
export function baselineOf(given: Baseline | Amplitude | string, limits: OwnLimits | undefined) {
  if (typeof given === "object" && given !== null && "median" in given) {
    shaped(given, baselineShape, "baseline");
    return { statistics: given, level: given.median, type: given.as };
  }
  if (given === "none") {
    const own = limits?.["B/C"];
    const reading = own === undefined ? undefined : amplitudeOf(own);
    return { statistics: null, level: null, type: reading && `${reading.unit} ${reading.detector}` };
  }
  if (given === undefined || given === null) {
    throw new VeladisError("missing-fact", {
      expected: 'a baseline: statistics, one reading such as "2 mm/s rms", or "none"',
      received: "nothing",
    });
  }
  const reading = amplitudeOf(given);
  return { statistics: null, level: reading.value, type: `${reading.unit} ${reading.detector}` };
}

/** Statistics in the device's type, as far as the warnings look at them. */
export function inDevice(statistics: Baseline, here: (value: number) => number, as: string): Baseline {
  return {
    ...statistics,
    as,
    median: here(statistics.median),
    spread: here(statistics.spread),
    percentile: { ...statistics.percentile, value: here(statistics.percentile.value) },
  };
}
