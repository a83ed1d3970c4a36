import { cached } from "../core/index";
import { fftOf, inOrder } from "./fft";
import type { Fft } from "./fft-type";
import { writeRootOfUnity } from "./root-of-unity";

/** Samples whose tables are kept, over all lengths: some 40 MB. */
const KEPT = 2_097_152;

/** The transform of real samples of one length. */
export interface RealFft {
  /** How many samples. */
  readonly length: number;
  /** Transforms the samples in place; what is then in the array is for {@link RealFft.bins} to read. */
  transform(samples: Float64Array): Float64Array;
  /** Bins `first` to `last` of what {@link RealFft.transform} returned, real and imaginary parts in turn. */
  bins(transformed: Float64Array, first: number, last: number): Float64Array;
  /** The samples of which the given bins, from `first` on, are the spectrum, all other bins being zero. */
  waveform(bins: Float64Array, first: number): Float64Array;
}

/** An odd length: the samples as complex numbers. */
function oddFft(length: number, fft: Fft): RealFft {
  return {
    length,
    transform: (samples) => {
      const x = new Float64Array(2 * length);
      for (let i = 0; i < length; i++) x[2 * i] = samples[i] as number;
      fft.transform(x);
      return x;
    },
    bins: (x, first, last) => {
      const bins = new Float64Array(2 * (last - first + 1));
      for (let k = first, at = 0; k <= last; k++, at += 2) {
        const from = 2 * (fft.places[k] as number);
        bins[at] = x[from] as number;
        bins[at + 1] = x[from + 1] as number;
      }
      return bins;
    },
    waveform: (bins, first) => {
      const x = new Float64Array(2 * length);
      for (let at = 0, k = first; at < bins.length; at += 2, k++) {
        // conjugated, so that the forward transform is the inverse one; with its mirror image a bin counts twice
        const size = (k === 0 ? 1 : 2) / length;
        x[2 * k] = size * (bins[at] as number);
        x[2 * k + 1] = -size * (bins[at + 1] as number);
      }
      fft.transform(x);
      const ordered = inOrder(fft, x);
      return new Float64Array(length).map((_, i) => ordered[2 * i] as number);
    },
  };
}

/** From this many bins on, putting all of them in order first is faster than fetching each. */
const MANY = 16_384;

/** All bins from those of the neighbours taken as one number, in order; bin k and its counterpart at once. */
function allBins(z: Float64Array, roots: Float64Array): Float64Array {
  const end = z.length;
  const bins = new Float64Array(end + 2);
  bins[0] = (z[0] as number) + (z[1] as number);
  bins[end] = (z[0] as number) - (z[1] as number);
  for (let low = 2, high = end - 2; low <= high; low += 2, high -= 2) {
    const evenR = 0.5 * ((z[low] as number) + (z[high] as number));
    const evenI = 0.5 * ((z[low + 1] as number) - (z[high + 1] as number));
    const oddR = 0.5 * ((z[low + 1] as number) + (z[high + 1] as number));
    const oddI = 0.5 * ((z[high] as number) - (z[low] as number));
    const wr = roots[low] as number;
    const wi = roots[low + 1] as number;
    const turnedR = oddR * wr - oddI * wi;
    const turnedI = oddR * wi + oddI * wr;
    bins[high] = evenR - turnedR;
    bins[high + 1] = turnedI - evenI;
    bins[low] = evenR + turnedR;
    bins[low + 1] = evenI + turnedI;
  }
  return bins;
}

/** An even length: neighbours as the two parts of one complex number, half the work. */
function evenFft(length: number, fft: Fft): RealFft {
  const half = length / 2;
  const roots = new Float64Array(2 * (half + 1));
  for (let k = 0; k <= half; k++) writeRootOfUnity(roots, 2 * k, k, length);
  return {
    length,
    transform: (samples) => {
      fft.transform(samples);
      return samples;
    },
    bins: (x, first, last) => {
      if (last - first > Math.max(MANY, half / 6)) {
        return allBins(inOrder(fft, x), roots).subarray(2 * first, 2 * last + 2);
      }
      const { places } = fft;
      const bins = new Float64Array(2 * (last - first + 1));
      for (let k = first, at = 0; k <= last; k++, at += 2) {
        const low = (places[k === half ? 0 : k] as number) << 1;
        const high = (places[k === 0 ? 0 : half - k] as number) << 1;
        const evenR = 0.5 * ((x[low] as number) + (x[high] as number));
        const evenI = 0.5 * ((x[low + 1] as number) - (x[high + 1] as number));
        const oddR = 0.5 * ((x[low + 1] as number) + (x[high + 1] as number));
        const oddI = 0.5 * ((x[high] as number) - (x[low] as number));
        const wr = roots[k << 1] as number;
        const wi = roots[(k << 1) + 1] as number;
        bins[at] = evenR + (oddR * wr - oddI * wi);
        bins[at + 1] = evenI + (oddR * wi + oddI * wr);
      }
      return bins;
    },
    waveform: (bins, first) => {
      const all = new Float64Array(2 * (half + 1));
      all.set(bins, 2 * first);
      // the ends have no imaginary part: every sample meets a zero of it
      all[1] = 0;
      all[2 * half + 1] = 0;
      const z = new Float64Array(2 * half);
      for (let low = 0, high = 2 * half; low < z.length; low += 2, high -= 2) {
        const evenR = (all[low] as number) + (all[high] as number);
        const evenI = (all[low + 1] as number) - (all[high + 1] as number);
        const difR = (all[low] as number) - (all[high] as number);
        const difI = (all[low + 1] as number) + (all[high + 1] as number);
        const wr = roots[low] as number;
        const wi = roots[low + 1] as number;
        // conjugated, so that the forward transform is the inverse one
        z[low] = (evenR - (difI * wr - difR * wi)) / length;
        z[low + 1] = -(evenI + (difR * wr + difI * wi)) / length;
      }
      fft.transform(z);
      const waveform = inOrder(fft, z);
      for (let i = 1; i < length; i += 2) waveform[i] = -(waveform[i] as number);
      return waveform;
    },
  };
}

/** The transform of real samples of a length; the tables of the lengths last used are kept. */
export const realFftOf: (length: number) => RealFft = /* @__PURE__ */ cached(
  (length) => (length % 2 === 0 ? evenFft(length, fftOf(length / 2)) : oddFft(length, fftOf(length))),
  { room: KEPT, size: (length) => length },
);
