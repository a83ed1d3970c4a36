import { VeladisError } from "../../core/index";
import type { AmplitudeType } from "../../reading/index";
import {
  type Band,
  type BandEdges,
  type Descriptors,
  descriptors,
  type FilterOverall,
  type OverallStream,
  overall,
  overallStream,
  type Spectrum,
  type SpectrumOverall,
  type SpectrumStream,
  spectrum,
  spectrumStream,
  type Trend,
  type WindowName,
} from "../../signal/index";
import type { UnitSymbol } from "../../units/index";

/** What is asked of a record. */
export interface AnalysisSettings {
  readonly rate: number;
  readonly unit: UnitSymbol;
  readonly band: Band;
  readonly edges: BandEdges | undefined;
  readonly order: number | undefined;
  readonly detrend: Trend | undefined;
  readonly window: WindowName | undefined;
  /** What to answer in, one level each. */
  readonly targets: readonly AmplitudeType[];
  /** By the causal filter, whatever the length. */
  readonly causal: boolean;
}

/** What was found in a record. */
export interface Analysis {
  readonly count: number;
  readonly levels: readonly (SpectrumOverall | FilterOverall)[];
  readonly spectrum: Spectrum;
  /** Of the record as sampled; undefined when it was too long to be held. */
  readonly descriptors: Descriptors | undefined;
}

/** An analysis in the making. */
export interface Analyser {
  push(samples: Float64Array): void;
  finish(): Analysis;
}

/** The longest record that is held whole, in samples; a longer one goes through the causal filter. */
const LONGEST_HELD = 2 ** 22;

/** Samples of a segment for the lines: about one second, so that lines are about 1 Hz apart. */
function segmentFor(rate: number): number {
  return 2 ** Math.min(20, Math.max(4, Math.round(Math.log2(rate))));
}

/**
 * The analyser of a record that comes in pieces: held and taken whole as long as it fits, else by the causal filter in
 * constant memory, from the first sample on.
 */
export function recordAnalyser(settings: AnalysisSettings): Analyser {
  const { rate, unit, band, edges, order, detrend, window, targets, causal } = settings;
  const segment = segmentFor(rate);
  const trend = detrend !== undefined && { detrend };
  let pieces: Float64Array[] = [];
  let count = 0;
  let streams: { levels: OverallStream[]; lines: SpectrumStream } | undefined;

  const start = (): void => {
    if (edges === "ideal" || (window !== undefined && window !== "rectangular")) {
      throw new VeladisError("out-of-range", {
        expected: `a record that can be held (${LONGEST_HELD} samples, and not --causal) for ideal edges or a window`,
        received: causal ? "--causal" : `more than ${LONGEST_HELD} samples`,
      });
    }
    const common = { rate, unit, band, ...(order !== undefined && { order }) };
    streams = {
      levels: targets.map((as) => overallStream({ ...common, as })),
      lines: spectrumStream({ rate, unit, segment, ...trend }),
    };
    for (const samples of pieces) feed(samples);
    pieces = [];
  };
  const feed = (samples: Float64Array): void => {
    for (const level of streams?.levels ?? []) level.push(samples);
    streams?.lines.push(samples);
  };
  const whole = (): Analysis => {
    const samples = new Float64Array(count);
    let at = 0;
    for (const piece of pieces) {
      samples.set(piece, at);
      at += piece.length;
    }
    pieces = [];
    const options = {
      rate,
      unit,
      band,
      ...trend,
      ...(edges !== undefined && { edges }),
      ...(order !== undefined && { order }),
    };
    const levels = targets.map((as) => overall(samples, { ...options, as, ...(window !== undefined && { window }) }));
    return {
      count,
      levels,
      spectrum: spectrum(samples, { rate, unit, segment: Math.min(segment, count), ...trend }),
      descriptors: descriptors(samples, { unit }),
    };
  };

  if (causal) start();
  return {
    push: (samples) => {
      count += samples.length;
      if (streams !== undefined) feed(samples);
      else {
        pieces.push(samples);
        if (count > LONGEST_HELD) start();
      }
    },
    finish: () => {
      if (streams === undefined) return whole();
      const levels = streams.levels.map((level) => level.read());
      return { count, levels, spectrum: streams.lines.read(), descriptors: undefined };
    },
  };
}
