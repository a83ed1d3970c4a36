import { frozen, type Ratio, type Source } from "../core/index";

/**
 * One detector: how it is written, and what it reads from a sine whose peak is 1:
 * `num / den * pi^pi * sqrt(2)^rootTwo`, kept exact.
 */
export interface DetectorEntry extends Ratio {
  readonly pi: number;
  readonly rootTwo: number;
  /**
   * True where it is read from a waveform of any shape: a ratio that holds for a sine says nothing of it, and only a
   * stated crest factor relates it to the RMS value.
   */
  readonly ofWaveform?: true;
  /** Other spellings, read without regard to case, spaces, dashes, slashes and dots. */
  readonly spoken: readonly string[];
}

/** All detectors, by symbol. To add one, add its row here and below, and nowhere else. */
// biome-ignore format: a row of a table is a line
export const detectors = /* @__PURE__ */ frozen({
  pk: { spoken: ["peak", "0pk", "0p", "0topk"], num: 1, den: 1, pi: 0, rootTwo: 0 },
  pp: { spoken: ["pkpk", "pktopk", "doubleamplitude"], num: 2, den: 1, pi: 0, rootTwo: 0 },
  rms: { spoken: ["rootmeansquare", "effective", "eff"], num: 1, den: 1, pi: 0, rootTwo: -1 },
  avg: { spoken: ["average", "rectifiedaverage", "rectifiedmean"], num: 2, den: 1, pi: -1, rootTwo: 0 },
  "true pk": { spoken: ["truepk", "tpk"], num: 1, den: 1, pi: 0, rootTwo: 0, ofWaveform: true },
} as const satisfies Record<string, DetectorEntry>);

/** The symbol of a detector: `pk`, `pp`, `rms`, `avg` or `true pk`. */
export type Detector = keyof typeof detectors;

/** What is kept of samples that go by without being held. */
export interface RunningSums {
  readonly count: number;
  /** Sum of the squares. */
  readonly squares: number;
  /** Sum of the magnitudes. */
  readonly sizes: number;
  readonly low: number;
  readonly high: number;
}

/** What is known of a detector besides its ratio; apart, so that a bundle that only converts leaves it out. */
export interface DetectorFacts {
  readonly name: string;
  /** Reading of a waveform: samples about their mean, in any one unit. */
  readonly ofSamples: (samples: ArrayLike<number>) => number;
  /** The same from sums, for a signal that is not held; left out where sums do not tell. */
  readonly ofSums?: (sums: RunningSums) => number;
  readonly source: Source;
}

const SINE = {
  title: "W. T. Thomson, Theory of Vibration with Applications",
  where: "section 1.3, page 13",
  provenance: "printed",
  page: "https://digilib.universitaspertamina.ac.id/ebook/Theory%20of%20Vibration%20with%20Applications/files/basic-html/page26.html",
} as const satisfies Source;

const AVERAGE = {
  title: "F. A. Everest, The Master Handbook of Acoustics",
  where: "figure 1-3",
  provenance: "printed",
  page: "page 4",
  note: "average of the rectified wave",
} as const satisfies Source;

const CREST = {
  title: "FTA Transit Noise and Vibration Impact Assessment Manual, 2018",
  where: "section 5.1: crest factor, the ratio of peak particle velocity to RMS",
  provenance: "memory",
} as const satisfies Source;

type Samples = ArrayLike<number>;

/** Largest distance of a sample from zero. */
function peakOf(samples: Samples): number {
  let most = 0;
  for (let i = 0; i < samples.length; i++) most = Math.max(most, Math.abs(samples[i] as number));
  return most;
}

/** The same from sums. */
function highestOf({ low, high }: RunningSums): number {
  return Math.max(Math.abs(low), Math.abs(high));
}

/** Highest sample less the lowest. */
function peakToPeakOf(samples: Samples): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < samples.length; i++) {
    low = Math.min(low, samples[i] as number);
    high = Math.max(high, samples[i] as number);
  }
  return high - low;
}

/** Root of the mean square. */
function rmsOf(samples: Samples): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += (samples[i] as number) ** 2;
  return Math.sqrt(sum / samples.length);
}

/** Mean of the rectified samples. */
function averageOf(samples: Samples): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += Math.abs(samples[i] as number);
  return sum / samples.length;
}

/** Name, function on samples and source of each detector, by symbol. */
// biome-ignore format: a row of a table is a line
export const detectorFacts: Readonly<Record<Detector, DetectorFacts>> = /* @__PURE__ */ frozen({
  pk: { name: "peak", ofSamples: peakOf, ofSums: highestOf, source: SINE },
  pp: { name: "peak-to-peak", ofSamples: peakToPeakOf, ofSums: ({ low, high }) => high - low, source: SINE },
  rms: { name: "root mean square", ofSamples: rmsOf, ofSums: ({ squares, count }) => Math.sqrt(squares / count), source: SINE },
  avg: { name: "rectified average", ofSamples: averageOf, ofSums: ({ sizes, count }) => sizes / count, source: AVERAGE },
  "true pk": { name: "true peak, measured", ofSamples: peakOf, ofSums: highestOf, source: CREST },
});
