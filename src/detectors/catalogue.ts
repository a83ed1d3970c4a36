import { frozen, type Ratio, type Source } from "../core/index";
import { averageOf, peakOf, peakToPeakOf, rmsOf } from "./of-samples";

/** One detector: what it reads from a sine of peak 1, and what it reads from samples. */
export interface DetectorEntry {
  readonly name: string;
  /** Other spellings, read without regard to case. */
  readonly spoken: readonly string[];
  /** Reading of a sine whose peak is 1: `num / den * pi^pi * sqrt(2)^rootTwo`, kept exact. */
  readonly sine: Ratio & { readonly pi: number; readonly rootTwo: number };
  /** Reading of a waveform: samples about their mean, in any one unit. */
  readonly ofSamples: (samples: ArrayLike<number>) => number;
  readonly source: Source;
}

const SINE = {
  title: "W. T. Thomson, Theory of Vibration with Applications",
  where: "section 1.3, page 13",
  provenance: "published",
  page: "https://digilib.universitaspertamina.ac.id/ebook/Theory%20of%20Vibration%20with%20Applications/files/basic-html/page26.html",
} as const satisfies Source;

const AVERAGE = {
  title: "F. A. Everest, The Master Handbook of Acoustics",
  where: "figure 1-3, page 4",
  provenance: "published",
  note: "average of the rectified wave",
} as const satisfies Source;

/** All detectors, by symbol. To add one, add its row here and nowhere else. */
// biome-ignore format: a row of a table is a line
export const detectors = /* @__PURE__ */ frozen({
  pk: { name: "peak", spoken: ["peak", "0-pk", "0-p", "0-peak", "zero-pk", "zero-peak", "zero-to-peak", "zero to peak", "0 to peak", "true peak"], sine: { num: 1, den: 1, pi: 0, rootTwo: 0 }, ofSamples: peakOf, source: SINE },
  pp: { name: "peak-to-peak", spoken: ["pk-pk", "p-p", "p/p", "pkpk", "pk pk", "p p", "peak-peak", "peak-to-peak", "peak to peak", "pk to pk", "pk-to-pk", "double amplitude"], sine: { num: 2, den: 1, pi: 0, rootTwo: 0 }, ofSamples: peakToPeakOf, source: SINE },
  rms: { name: "root mean square", spoken: ["r.m.s.", "r.m.s", "root mean square", "effective", "eff"], sine: { num: 1, den: 1, pi: 0, rootTwo: -1 }, ofSamples: rmsOf, source: SINE },
  avg: { name: "rectified average", spoken: ["average", "rectified average", "rectified mean"], sine: { num: 2, den: 1, pi: -1, rootTwo: 0 }, ofSamples: averageOf, source: AVERAGE },
} as const satisfies Record<string, DetectorEntry>);

/** The symbol of a detector: `pk`, `pp`, `rms` or `avg`. */
export type Detector = keyof typeof detectors;
