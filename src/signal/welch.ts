import { counted, inPlace, shown, VeladisError } from "../core/index";
import { removeTrend, requireTrend, type Trend } from "./detrend";
import { finiteLevels } from "./finite-level";
import { realFftOf } from "./real-fft";
import { windowWeights } from "./window-weights";
import { type WindowName, windowName } from "./windows";

const WINDOW = { option: "window" };

/** How a record is cut up and averaged. */
export interface AveragingOptions {
  /** Samples of a segment. */
  readonly segment?: number;
  /** Part of a segment that the next one shares, 0 up to but not 1; 0.5 if not given. */
  readonly overlap?: number;
  /** Window over each segment; Hann if not given. */
  readonly window?: WindowName;
  /** What to take off each segment first; the mean if not given. */
  readonly detrend?: Trend;
}

/** How a spectrum was made. */
export interface Averaging {
  readonly segment: number;
  readonly overlap: number;
  readonly window: WindowName;
  readonly detrend: Trend;
  /** Mean of the window's weights; lines are divided by it already. */
  readonly coherentGain: number;
  /** Equivalent noise bandwidth of the window in bins. */
  readonly noiseBandwidth: number;
  /** How many segments were averaged. */
  readonly averages: number;
}

/** The averager of the power of segments, in constant memory. */
export interface WelchAverager {
  push(samples: Float64Array): void;
  /** How the segments were made and how many there were. */
  averaging(): Averaging;
  /**
   * Mean power of each bin from 0 Hz to half the sampling rate, mirror images added: `|X_k|^2`, twice but at the ends.
   *
   * @throws {@link VeladisError} `missing-fact` before the first segment is full
   */
  power(): Float64Array;
  /** Sum of the weights of the window, and of their squares. */
  readonly weightSum: number;
  readonly weightSquares: number;
}

/** Samples of the longest segment of a signal whose length is not known: half a gigabyte of work space. */
const LONGEST = 4_194_304;

/** The segment, if it can be one: refused before any room is made for it. */
function requireSegment(segment: number, available: number | undefined): number {
  if (!(Number.isSafeInteger(segment) && segment >= 2 && (available !== undefined || segment <= LONGEST))) {
    throw new VeladisError(typeof segment === "number" ? "out-of-range" : "wrong-type", {
      expected: `a segment of a whole number of samples, 2 or more${available === undefined ? ` and at most ${LONGEST}` : ""}`,
      received: shown(segment),
      parameter: "segment",
    });
  }
  if (available !== undefined && segment > available) throw tooShort(segment, available);
  return segment;
}

function tooShort(segment: number, count: number): VeladisError {
  return new VeladisError("missing-fact", {
    expected: `a whole segment, ${segment} samples or more`,
    received: counted(count, "sample"),
  });
}

function requireOverlap(overlap: number): number {
  if (typeof overlap === "number" && overlap >= 0 && overlap < 1) return overlap;
  throw new VeladisError("out-of-range", {
    expected: "an overlap from 0 to below 1",
    received: shown(overlap),
    parameter: "overlap",
  });
}

/**
 * The averager of P. D. Welch, The use of fast Fourier transform for the estimation of power spectra, IEEE Trans.
 * Audio Electroacoust. 15 (1967) 70-73: power of windowed segments that overlap. Samples behind the last full segment
 * do not count.
 *
 * @param available - samples of a record that is available whole; left out for a signal that comes in pieces
 */
export function welchAverager(
  options: AveragingOptions & { readonly segment: number },
  available?: number,
): WelchAverager {
  const segment = inPlace({ option: "segment" }, () => requireSegment(options.segment, available));
  const overlap = requireOverlap(options.overlap ?? 0.5);
  const window = inPlace(WINDOW, () => windowName(options.window ?? "hann"));
  const detrend = requireTrend(options.detrend ?? "mean");
  const weights = windowWeights(window, segment);
  const weightSum = weights.reduce((sum, weight) => sum + weight, 0);
  const weightSquares = weights.reduce((sum, weight) => sum + weight * weight, 0);
  const shared = Math.floor(segment * overlap);
  const last = Math.floor(segment / 2);
  const fft = realFftOf(segment);
  const block = new Float64Array(segment);
  const total = new Float64Array(last + 1);
  let filled = 0;
  let averages = 0;

  const finish = (): void => {
    const x = removeTrend(block.slice(), detrend);
    for (let i = 0; i < segment; i++) x[i] = (x[i] as number) * (weights[i] as number);
    const bins = fft.bins(fft.transform(x), 0, last);
    for (let k = 0; k <= last; k++) {
      const re = bins[2 * k] as number;
      const im = bins[2 * k + 1] as number;
      total[k] = (total[k] as number) + re * re + im * im;
    }
    averages++;
    block.copyWithin(0, segment - shared);
    filled = shared;
  };

  return {
    weightSum,
    weightSquares,
    push: (samples) => {
      for (let i = 0; i < samples.length; ) {
        const count = Math.min(segment - filled, samples.length - i);
        block.set(samples.subarray(i, i + count), filled);
        filled += count;
        i += count;
        if (filled === segment) finish();
      }
    },
    averaging: () => ({
      segment,
      overlap,
      window,
      detrend,
      coherentGain: weightSum / segment,
      noiseBandwidth: (segment * weightSquares) / (weightSum * weightSum),
      averages,
    }),
    power: () => {
      if (averages === 0) throw tooShort(segment, filled);
      return finiteLevels(total.map((sum, k) => ((k === 0 || 2 * k === segment ? 1 : 2) * sum) / averages));
    },
  };
}
