import type { Amplitude, AmplitudeType } from "../reading/index";
import type { UnitSpelling } from "../units/index";
import type { Band, BandEdges } from "./band";
import type { Trend } from "./detrend";
import type { WindowName } from "./windows";

/** What an overall level needs to be told. */
export interface OverallOptions {
  /** Samples a second. */
  readonly rate: number;
  /** Unit of the samples, e.g. `"g"`. */
  readonly unit: UnitSpelling;
  /** Lower and upper edge in hertz, e.g. `[10, 1000]`. */
  readonly band: Band;
  /** What to answer in, e.g. `"mm/s rms"`. */
  readonly as: AmplitudeType;
  /** `"ideal"` if not given; `"-3 dB"` for the edges of an instrument. */
  readonly edges?: BandEdges;
  /** Order of the -3 dB edges, 1 to 12; 3 if not given. */
  readonly order?: number;
  /** What to take off the record first; the mean if not given. */
  readonly detrend?: Trend;
  /** Window over the record; rectangular if not given. Others give RMS values only. */
  readonly window?: WindowName;
  /** For peaks: how many points to compute for each sample, 1 to 64; 1 if not given. */
  readonly oversample?: number;
}

/** An overall level, and what was done to get it. It is an amplitude: convert it, format it, judge it. */
export interface Overall extends Amplitude {
  readonly band: Band;
  readonly edges: BandEdges;
  /** Order of the filter, when the edges are at -3 dB. */
  readonly order?: number;
  /** How it was computed: bin by bin from the spectrum of the whole record, or by a causal filter. */
  readonly method: "spectrum" | "filter";
  /** Samples a second. */
  readonly rate: number;
  /** How many samples it stands on. */
  readonly count: number;
  /** How many seconds it stands on. */
  readonly seconds: number;
}

/** An overall level from the spectrum of a whole record. */
export interface SpectrumOverall extends Overall {
  readonly method: "spectrum";
  readonly detrend: Trend;
  readonly window: WindowName;
  /** Spacing of the bins in hertz. */
  readonly resolution: number;
  /** First and last bin that counted. */
  readonly bins: readonly [first: number, last: number];
}

/** An overall level from the causal filter of a stream. */
export interface FilterOverall extends Overall {
  readonly method: "filter";
  /** Seconds at the start that were not counted, while the filter settled. */
  readonly settlingTime: number;
}
