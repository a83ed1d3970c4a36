import { inPlace } from "../core/index";
import { type Band, binsOf, requireBand, requireBandEdges } from "./band";
import { DEFAULT_ORDER, powerGain, requireFilterOrder } from "./butterworth-gain";
import { removeTrend, requireTrend } from "./detrend";
import type { OverallOptions, SpectrumOverall } from "./overall-type";
import { realFftOf } from "./real-fft";
import { requireSamplingRate, type Samples, vibrationSamples } from "./samples";
import { windowWeights } from "./window-weights";
import { windowName } from "./windows";

const WINDOW = { option: "window" };

/** What the answers from the spectrum of a whole record have in common. */
export type RecordOptions = Pick<OverallOptions, "rate" | "band" | "edges" | "order" | "detrend" | "window">;

/** The bins of a record's spectrum within a band. */
export interface RecordBins {
  /** Real and imaginary parts in turn, from bin `first` on, as the transform gives them. */
  readonly bins: Float64Array;
  /** What each bin's amplitude is multiplied with: the differentiation or integration, and the edges of the band. */
  readonly gains: Float64Array;
  readonly first: number;
  /** Sum of the squares of the window's weights. */
  readonly weightSquares: number;
  /** What was done, for the answer. */
  readonly done: Pick<
    SpectrumOverall,
    "band" | "edges" | "order" | "method" | "detrend" | "window" | "rate" | "count" | "seconds" | "resolution" | "bins"
  >;
}

/** Where bins lie: the number of the first, and how far they are apart in Hz. */
interface BinsPlaced {
  readonly first: number;
  readonly resolution: number;
}

/** Gains of amplitude for each bin: `(2 pi f)^steps`. */
function derivativeGains(first: number, last: number, resolution: number, steps: number): Float64Array {
  const gains = new Float64Array(last - first + 1).fill(1);
  const omega = 2 * Math.PI * resolution;
  for (let round = Math.abs(steps); round > 0; round--) {
    for (let i = 0; i < gains.length; i++) {
      const w = omega * (first + i);
      gains[i] = steps > 0 ? (gains[i] as number) * w : (gains[i] as number) / w;
    }
  }
  return gains;
}

function withEdges(gains: Float64Array, { first, resolution }: BinsPlaced, band: Band, order: number): void {
  for (let i = 0; i < gains.length; i++) {
    gains[i] = (gains[i] as number) * Math.sqrt(powerGain(band[0], band[1], order, (first + i) * resolution));
  }
}

/** Multiplies the samples with a window, in place; returns the sum of the squares of its weights. */
function weighted(x: Float64Array, weights: Float64Array): number {
  let squares = 0;
  for (let i = 0; i < x.length; i++) {
    const weight = weights[i] as number;
    squares += weight * weight;
    x[i] = (x[i] as number) * weight;
  }
  return squares;
}

/**
 * The bins of a record's spectrum within a band.
 *
 * @param steps - differentiations, -2 to 2; below zero they are integrations
 */
export function recordBins(samples: Samples, options: RecordOptions, steps: number): RecordBins {
  const rate = requireSamplingRate(options.rate);
  const edges = requireBandEdges(options.edges ?? "ideal");
  const order = edges === "ideal" ? undefined : requireFilterOrder(options.order ?? DEFAULT_ORDER);
  const detrend = requireTrend(options.detrend ?? "mean");
  const window = inPlace(WINDOW, () => windowName(options.window ?? "rectangular"));
  const x = vibrationSamples(samples);
  const count = x.length;
  const resolution = rate / count;
  const band = inPlace({ option: "band" }, () => requireBand(options.band, rate, resolution));
  const [first, end] = order === undefined ? binsOf(band, resolution) : [1, count];
  const last = Math.min(end, Math.floor(count / 2));
  removeTrend(x, detrend);
  const weightSquares = window === "rectangular" ? count : weighted(x, windowWeights(window, count));
  const fft = realFftOf(count);
  const bins = fft.bins(fft.transform(x), first, last);
  const gains = derivativeGains(first, last, resolution, steps);
  if (order !== undefined) withEdges(gains, { first, resolution }, band, order);
  return {
    bins,
    gains,
    first,
    weightSquares,
    done: {
      band,
      edges,
      ...(order !== undefined && { order }),
      method: "spectrum",
      detrend,
      window,
      rate,
      count,
      seconds: count / rate,
      resolution,
      bins: [first, last],
    },
  };
}

/** Mean square of what the bins stand for, each bin and its mirror image. */
export function meanSquare({ bins, gains, first, weightSquares, done: { count } }: RecordBins): number {
  let sum = 0;
  let last = 0;
  for (let i = 0; i < gains.length; i++) {
    const re = (bins[2 * i] as number) * (gains[i] as number);
    const im = (bins[2 * i + 1] as number) * (gains[i] as number);
    last = re * re + im * im;
    sum += last;
  }
  // the bin at half the sampling rate is its own mirror image
  const alone = 2 * (first + gains.length - 1) === count;
  return (alone ? 2 * sum - last : 2 * sum) / count / weightSquares;
}

/** The bins with their gains, each turned by the quarter circles that its differentiations turn it. */
export function turnedBins({ bins, gains }: RecordBins, steps: number, scale: number): Float64Array {
  const turned = new Float64Array(bins.length);
  const sign = Math.abs(steps) === 2 ? -1 : 1;
  for (let i = 0; i < gains.length; i++) {
    const gain = scale * sign * (gains[i] as number);
    const re = gain * (bins[2 * i] as number);
    const im = gain * (bins[2 * i + 1] as number);
    turned[2 * i] = steps === 1 ? -im : steps === -1 ? im : re;
    turned[2 * i + 1] = steps === 1 ? re : steps === -1 ? -re : im;
  }
  return turned;
}
