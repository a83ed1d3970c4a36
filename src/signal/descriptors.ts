import { requireKnownOptions, VeladisError, withParameters } from "../core/index";
import { type Detector, detectorFacts } from "../detectors/index";
import { type Amplitude, typeOf } from "../reading/index";
import type { Quantity, UnitSpelling, UnitSymbol } from "../units/index";
import { lineOf, removeTrend, requireTrend, type Trend } from "./detrend";
import { finiteLevel } from "./finite-level";
import { measured } from "./measured";
import { sampleUnit } from "./sample-unit";
import { type Samples, vibrationSamples } from "./samples";

/** What a waveform is like, in figures. */
export interface Descriptors {
  readonly unit: UnitSymbol;
  readonly quantity: Quantity;
  /** How many samples. */
  readonly count: number;
  /** What was taken off the samples before all but `mean` were computed. */
  readonly removed: Trend;
  /** Mean of the samples as they came, with its sign. */
  readonly mean: number;
  readonly rms: Amplitude;
  /** Largest distance of a sample from zero: a true peak, not one derived from the RMS value. */
  readonly peak: Amplitude;
  /** Highest sample less the lowest. */
  readonly peakToPeak: Amplitude;
  /** Mean of the rectified samples. */
  readonly average: Amplitude;
  /** Peak over RMS: 1.414 for a sine, above 3 for noise, more where something knocks. */
  readonly crestFactor: number;
  /** Third central moment over the 1.5th power of the second; 0 for a wave as high as it is deep. */
  readonly skewness: number;
  /** Fourth central moment over the square of the second: 1.5 for a sine, 3 for Gaussian noise (not its excess). */
  readonly kurtosis: number;
  /**
   * Longest run of neighbouring samples that all stand at the highest or all at the lowest value: one or two for a wave
   * that is whole, more where a sensor or converter is clipped, or resolves coarsely.
   */
  readonly flatCrest: number;
}

/** Options of {@link descriptors}. */
export interface DescriptorsOptions {
  /** Unit of the samples. */
  readonly unit: UnitSpelling;
  /** What to take off first; the mean if not given. */
  readonly detrend?: Trend;
}

/** Longest run of neighbours at the highest or at the lowest value. */
function longestCrest(x: Float64Array): number {
  const high = x.reduce((most, value) => Math.max(most, value));
  const low = x.reduce((least, value) => Math.min(least, value));
  let longest = 1;
  let run = 1;
  for (let i = 1; i < x.length; i++) {
    const value = x[i] as number;
    run = value === x[i - 1] && (value === high || value === low) ? run + 1 : 1;
    if (run > longest) longest = run;
  }
  return longest;
}

const keys: Readonly<Record<keyof DescriptorsOptions, true>> = /* @__PURE__ */ Object.freeze({
  unit: true,
  detrend: true,
});

/**
 * Mean, RMS, true peak, peak-to-peak, rectified average, crest factor, skewness and kurtosis of a waveform.
 *
 * All but the mean are of the samples about their mean, unless `detrend` says otherwise. Moments are those of the
 * population (divided by the number of samples, no correction for small ones).
 *
 * @throws {@link VeladisError} `not-a-number` or `not-finite` with the index, `missing-fact` for fewer than two
 *   samples, `sensor-fault` when all are equal, `unknown-unit`, `unknown-option`
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { descriptors } from "veladis/signal";
 *
 * const wave = descriptors([1, 3, 1, -1], { unit: "g" });
 * wave.mean; // => 1
 * wave.peak.value; // => 2
 * format(wave.rms); // => "1.41 g rms"
 * wave.kurtosis; // => 2
 * ```
 */
export function descriptors(samples: Samples, options: DescriptorsOptions): Descriptors {
  return withParameters({ samples, options }, () => {
    requireKnownOptions(options, keys, { what: "an option of descriptors", form: "options with the unit" });
    const unit = sampleUnit(options.unit);
    const removed = requireTrend(options.detrend ?? "mean");
    const x = vibrationSamples(samples);
    const { mean } = lineOf(x);
    const flatCrest = longestCrest(x);
    removeTrend(x, removed);
    const by = (detector: Detector): Amplitude =>
      measured(detectorFacts[detector].ofSamples(x), typeOf(unit, detector), "read from the samples");
    const about = lineOf(x).mean;
    let square = 0;
    let cube = 0;
    let fourth = 0;
    for (let i = 0; i < x.length; i++) {
      const off = (x[i] as number) - about;
      square += off * off;
      cube += off * off * off;
      fourth += off * off * off * off;
    }
    const variance = square / x.length;
    const rms = by("rms");
    const peak = by("pk");
    if (!(finiteLevel(rms.value) > 0)) {
      throw new VeladisError("sensor-fault", {
        expected: "a signal that vibrates",
        received: "nothing but its trend",
        parameter: "samples",
      });
    }
    return Object.freeze({
      unit,
      quantity: rms.quantity,
      count: x.length,
      removed,
      mean: finiteLevel(mean),
      rms,
      peak,
      peakToPeak: by("pp"),
      average: by("avg"),
      crestFactor: peak.value / rms.value,
      skewness: finiteLevel(cube / x.length / variance ** 1.5),
      kurtosis: finiteLevel(fourth / x.length / variance ** 2),
      flatCrest,
    });
  });
}
