import { shown, VeladisError } from "../core/index";
import { detectors } from "../detectors/index";
import { type AnswerType, amplitudeOf, answerType, derivations, sampleUnit, unitFactor } from "./amplitude-type";
import { type Band, bandEdgesOf, binsOf, checkedBand } from "./band";
import { bandPassPowerGain, DEFAULT_ORDER, filterOrder } from "./butterworth-gain";
import { removeTrend, trendOf } from "./detrend";
import type { OverallOptions, SpectrumOverall } from "./overall-type";
import { realFftOf, waveformOf } from "./real-fft";
import { type Samples, samplingRate, vibrationSamples } from "./samples";
import { windowWeights } from "./weights";
import { windowName } from "./windows";

const TWO_PI = 2 * Math.PI;

/** Gains of amplitude for each bin: `(2 pi f)^steps`, and the -3 dB edges if there are any. */
function binGains(first: number, last: number, resolution: number, steps: number, edges?: [Band, number]) {
  const gains = new Float64Array(last - first + 1);
  const omega = TWO_PI * resolution;
  for (let k = first, i = 0; k <= last; k++, i++) {
    const w = omega * k;
    gains[i] = steps === 0 ? 1 : steps === -1 ? 1 / w : steps === 1 ? w : steps === 2 ? w * w : 1 / (w * w);
  }
  if (edges !== undefined) {
    const [band, order] = edges;
    for (let i = 0; i < gains.length; i++) {
      gains[i] = (gains[i] as number) * Math.sqrt(bandPassPowerGain(band, order, (first + i) * resolution));
    }
  }
  return gains;
}

/** Sum over the bins of what the gains leave of their power, each bin and its mirror image. */
function powerOf(bins: Float64Array, gains: Float64Array, first: number, length: number): number {
  let sum = 0;
  for (let i = 0; i < gains.length; i++) {
    const re = (bins[2 * i] as number) * (gains[i] as number);
    const im = (bins[2 * i + 1] as number) * (gains[i] as number);
    sum += re * re + im * im;
  }
  const nyquist = 2 * (first + gains.length - 1) === length;
  if (!nyquist) return 2 * sum;
  // the bin at half the sampling rate is its own mirror image
  const i = gains.length - 1;
  return 2 * sum - ((bins[2 * i] as number) ** 2 + (bins[2 * i + 1] as number) ** 2) * (gains[i] as number) ** 2;
}

/** The bins of a waveform `over` times as finely sampled: each turned by what its derivative turns it. */
function turnedBins(bins: Float64Array, gains: Float64Array, steps: number, over: number): Float64Array {
  const turned = new Float64Array(bins.length);
  const sign = steps === 2 || steps === -2 ? -1 : 1;
  for (let i = 0; i < gains.length; i++) {
    const gain = over * sign * (gains[i] as number);
    const re = gain * (bins[2 * i] as number);
    const im = gain * (bins[2 * i + 1] as number);
    turned[2 * i] = steps === 1 ? -im : steps === -1 ? im : re;
    turned[2 * i + 1] = steps === 1 ? re : steps === -1 ? -re : im;
  }
  return turned;
}

function oversampling(over: number): number {
  if (Number.isInteger(over) && over >= 1 && over <= 64) return over;
  throw new VeladisError("out-of-range", { expected: "1 to 64 points for each sample", received: shown(over) });
}

/**
 * The overall level of a sampled vibration within a band, in any unit, quantity and detector.
 *
 * An overall cannot be converted by one frequency when the vibration is not one sine. So the record is taken to its
 * spectrum, each bin is integrated or differentiated at its own frequency, and the bins of the band are summed
 * (RMS, by Parseval's theorem) or taken back to a waveform (peak, peak-to-peak, average: read from the waveform,
 * nothing derived by the ratios of a sine).
 *
 * The mean is taken off first. Bin k stands for the frequency k rate / n. With ideal edges a bin counts when
 * `low <= frequency <= high`, both edges included; with -3 dB edges every bin but the one at 0 Hz counts by the gain
 * of a Butterworth band-pass. What the record holds is taken as one period of something that repeats: a tone that
 * does not fit a whole number of times leaks into its neighbours, and with a rectangular window towards low
 * frequencies too, where integration enlarges it. `window: "hann"` cures that, for RMS values.
 *
 * A sample peak can miss the crest between two samples: by cos(pi high / rate) at worst. `oversample` fills in.
 *
 * @param samples - evenly spaced, any array of numbers; it is not changed
 * @returns the level as an amplitude, with band, edges, bins, resolution, window, and what was taken off
 * @throws {@link VeladisError} `not-a-number` or `not-finite` with the index of the sample, `not-positive` for the
 *   rate, `out-of-range` for the band, `missing-fact` for fewer than two samples, `sensor-fault` when all samples are
 *   equal, `unknown-option`, and all of `readingType` and `unitSymbol`
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { overall } from "veladis/signal";
 *
 * // an induced-draught fan: 1 g pk at 25 Hz and 0.5 g pk at 400 Hz, one second at 5120 samples a second
 * const rate = 5120;
 * const samples = Float64Array.from({ length: rate }, (_, i) => {
 *   const t = (2 * Math.PI * i) / rate;
 *   return Math.sin(25 * t) + 0.5 * Math.sin(400 * t);
 * });
 * const level = overall(samples, { rate, unit: "g", band: [10, 1000], as: "mm/s rms" });
 * level.value.toFixed(4); // => "44.1670"
 * format(level); // => "44.2 mm/s rms"
 * level.bins; // => [10, 1000]
 * format(overall(samples, { rate, unit: "g", band: [10, 1000], as: "um pp" })); // => "795 um pp"
 * ```
 */
export function overall(samples: Samples, options: OverallOptions): SpectrumOverall {
  const rate = samplingRate(options.rate);
  const unit = sampleUnit(options.unit);
  const answer = answerType(options.as);
  const edges = bandEdgesOf(options.edges ?? "ideal");
  const order = edges === "ideal" ? undefined : filterOrder(options.order ?? DEFAULT_ORDER);
  const trend = trendOf(options.detrend ?? "mean");
  const window = windowName(options.window ?? "rectangular");
  const over = oversampling(options.oversample ?? 1);
  if (answer.detector !== "rms" && window !== "rectangular") {
    throw new VeladisError("unknown-option", {
      expected: "a rectangular window for anything but an RMS value, since others change the waveform",
      received: shown(window),
      allowed: ["rectangular"],
    });
  }
  const x = vibrationSamples(samples);
  const count = x.length;
  const resolution = rate / count;
  const band = checkedBand(options.band, rate, resolution);
  removeTrend(x, trend);
  // RMS by the sum of the squares of the weights: gain and noise bandwidth of the window in one
  let squares = count;
  if (window !== "rectangular") {
    const weights = windowWeights(window, count);
    squares = 0;
    for (let i = 0; i < count; i++) {
      const weight = weights[i] as number;
      squares += weight * weight;
      x[i] = (x[i] as number) * weight;
    }
  }
  const within = order === undefined ? binsOf(band, resolution) : ([1, Math.floor(count / 2)] as const);
  const [first, last] = [within[0], Math.min(within[1], Math.floor(count / 2))];
  const fft = realFftOf(count);
  const bins = fft.bins(fft.transform(x), first, last);
  const steps = derivations(unit, answer.unit);
  const gains = binGains(first, last, resolution, steps, order === undefined ? undefined : [band, order]);
  const factor = unitFactor(unit, answer.unit);
  const value =
    answer.detector === "rms"
      ? factor * Math.sqrt(powerOf(bins, gains, first, count) / count / squares)
      : factor *
        detectors[answer.detector].ofSamples(waveformOf(turnedBins(bins, gains, steps, over), first, count * over));
  return Object.freeze({
    ...amplitudeOf(finiteLevel(value), answer as AnswerType),
    band,
    edges,
    ...(order !== undefined && { order }),
    method: "spectrum" as const,
    detrend: trend,
    window,
    rate,
    count,
    seconds: count / rate,
    resolution,
    bins: [first, last] as const,
  });
}

/** The level, if the samples were not so large that their squares left the range of numbers. */
export function finiteLevel(value: number): number {
  if (Number.isFinite(value)) return value;
  throw new VeladisError("not-finite", {
    expected: "samples whose squares a 64-bit number can hold",
    received: "samples beyond 1e150 or so, as of a file read in the wrong format",
  });
}
