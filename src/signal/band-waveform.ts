import { requireKnownOptions, shown, VeladisError, withParameters } from "../core/index";
import { derivativeOrder, type Quantity, type UnitSpelling, type UnitSymbol, unitFactor, units } from "../units/index";
import { finiteLevels } from "./finite-level";
import type { OverallOptions } from "./overall-type";
import { realFftOf } from "./real-fft";
import { type RecordBins, recordBins, turnedBins } from "./record-bins";
import { sampleUnit } from "./sample-unit";
import type { Samples } from "./samples";

/** Points to a sample, if it is a number of them. */
export function requireOversampling(over: number): number {
  if (Number.isInteger(over) && over >= 1 && over <= 64) return over;
  throw new VeladisError("out-of-range", {
    expected: "1 to 64 points for each sample",
    received: shown(over),
    option: "oversample",
  });
}

/** Points of the longest waveform that is made finer than its record. */
const MOST_POINTS = 33_554_432;

/** The waveform of a record's bins, `over` points to a sample. */
export function waveformOfBins(record: RecordBins, steps: number, over: number, scale = 1): Float64Array {
  const { first, done } = record;
  if (over > 1 && over * done.count > MOST_POINTS) {
    throw new VeladisError("out-of-range", {
      expected: `at most ${MOST_POINTS} points in all when a record is filled in`,
      received: `${over} points for each of ${done.count} samples`,
    });
  }
  const turned = turnedBins(record, steps, over * scale);
  if (over > 1 && 2 * done.bins[1] === done.count) {
    // alone at half the sampling rate, it is two mirror images with half the size each
    turned[turned.length - 2] = (turned[turned.length - 2] as number) / 2;
    turned[turned.length - 1] = (turned[turned.length - 1] as number) / 2;
  }
  return realFftOf(done.count * over).waveform(turned, first);
}

/** What a band-limited waveform needs to be told. */
export interface BandWaveformOptions
  extends Pick<OverallOptions, "rate" | "unit" | "band" | "edges" | "order" | "detrend" | "oversample"> {
  /** Unit of the waveform asked for, e.g. `"mm/s"`. */
  readonly as: UnitSpelling;
}

/** A waveform within a band. */
export interface BandWaveform extends Pick<RecordBins["done"], "band" | "edges" | "order" | "detrend" | "bins"> {
  readonly unit: UnitSymbol;
  readonly quantity: Quantity;
  /** Points a second. */
  readonly rate: number;
  readonly values: Float64Array;
}

const keys: Readonly<Record<keyof BandWaveformOptions, true>> = /* @__PURE__ */ Object.freeze({
  rate: true,
  unit: true,
  band: true,
  as: true,
  edges: true,
  order: true,
  detrend: true,
  oversample: true,
});

/**
 * The waveform of a record within a band, integrated or differentiated to another quantity: velocity or displacement
 * from acceleration, bin by bin, without drift.
 *
 * The record is taken as one period of something that repeats; where it does not, the waveform is wrong for a few
 * periods of the lowest frequency at both ends.
 *
 * @throws {@link VeladisError} as {@link overall}
 * @example
 * ```ts
 * import { bandWaveform, descriptors } from "veladis/signal";
 *
 * const rate = 2048;
 * const samples = Float64Array.from({ length: rate }, (_, i) => 1 + Math.cos((2 * Math.PI * 25 * i) / rate));
 * const velocity = bandWaveform(samples, { rate, unit: "g", band: [10, 500], as: "mm/s" });
 * velocity.values.length; // => 2048
 * descriptors(velocity.values, { unit: velocity.unit }).peak.value.toFixed(1); // => "62.4"
 * ```
 */
export function bandWaveform(samples: Samples, options: BandWaveformOptions): BandWaveform {
  return withParameters({ samples, options }, () => {
    requireKnownOptions(options, keys, {
      what: "an option of a waveform",
      form: "options with rate, unit, band and as",
    });
    const from = sampleUnit(options.unit);
    const unit = sampleUnit(options.as, "as");
    const over = requireOversampling(options.oversample ?? 1);
    const steps = derivativeOrder(from, unit);
    const { rate, band, edges, order, detrend } = options;
    const record = recordBins(
      samples,
      {
        rate,
        band,
        ...(edges !== undefined && { edges }),
        ...(order !== undefined && { order }),
        ...(detrend !== undefined && { detrend }),
      },
      steps,
    );
    const { done } = record;
    return Object.freeze({
      unit,
      quantity: units[unit].quantity,
      rate: rate * over,
      band: done.band,
      edges: done.edges,
      ...(done.order !== undefined && { order: done.order }),
      detrend: done.detrend,
      bins: done.bins,
      values: finiteLevels(waveformOfBins(record, steps, over, unitFactor(from, unit))),
    });
  });
}
