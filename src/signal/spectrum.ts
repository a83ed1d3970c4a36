import { inPlace, requireKnownOptions, withParameters } from "../core/index";
import { linearType } from "../reading/index";
import { derivativeOrder, units } from "../units/index";
import { convertSpectrum } from "./convert-spectrum";
import { lowestFrequency } from "./converted-lines";
import { sampleUnit } from "./sample-unit";
import { deadChannel, finiteSamples, requireSamplingRate, type Samples, vibrationSamples } from "./samples";
import type { Spectrum, SpectrumOptions } from "./spectrum-type";
import { welchAverager } from "./welch";

/** A spectrum in the making, in constant memory. */
export interface SpectrumStream {
  /**
   * Takes the next samples, any number of them.
   *
   * @throws {@link VeladisError} `not-a-number` or `not-finite` with the index of the sample in the whole signal
   */
  push(chunk: Samples): void;
  /**
   * The average of all segments so far.
   *
   * @throws {@link VeladisError} `missing-fact` before the first segment is full, `sensor-fault` when all samples were
   *   equal
   */
  read(): Spectrum;
}

const keys: Readonly<Record<keyof SpectrumOptions, true>> = /* @__PURE__ */ Object.freeze({
  rate: true,
  unit: true,
  segment: true,
  overlap: true,
  window: true,
  detrend: true,
  as: true,
  lowest: true,
});

/** Refuses options that no spectrum has. */
function requireSpectrumOptions<Options extends SpectrumOptions>(options: Options): Options {
  return requireKnownOptions(options, keys, { what: "an option of a spectrum", form: "options with rate and unit" });
}

/**
 * The spectrum of a signal that comes in pieces, averaged over segments; pieces of any size give the same answer.
 *
 * @param options - as for {@link spectrum}; `segment` must be given
 * @throws {@link VeladisError} as {@link spectrum}
 * @example
 * ```ts
 * import { spectrumStream, topLines } from "veladis/signal";
 *
 * const rate = 5120;
 * const stream = spectrumStream({ rate, unit: "g", segment: 5120 });
 * for (let piece = 0; piece < 40; piece++) {
 *   stream.push(Float64Array.from({ length: 512 }, (_, i) => Math.sin((2 * Math.PI * 25 * (512 * piece + i)) / rate)));
 * }
 * stream.read().averages; // => 7
 * topLines(stream.read(), { count: 1 }).map(({ hertz }) => hertz.toFixed(3)); // => ["25.000"]
 * ```
 */
export function spectrumStream(options: SpectrumOptions & { readonly segment: number }): SpectrumStream {
  return withParameters({ options }, () => {
    return spectrumOf(requireSpectrumOptions(options), undefined);
  });
}

/** The stream for a signal, or for a record that is available whole. */
function spectrumOf(
  options: SpectrumOptions & { readonly segment: number },
  available: number | undefined,
): SpectrumStream {
  const rate = requireSamplingRate(options.rate);
  const unit = sampleUnit(options.unit);
  const averager = welchAverager(options, available);
  // refused before a long signal has gone by, not after
  const steps =
    options.as === undefined
      ? 0
      : derivativeOrder(unit, linearType(options.as, { parameter: "options", option: "as" }).unit);
  lowestFrequency(options.lowest, steps, rate / options.segment);
  let taken = 0;
  let first: number | undefined;
  let moved = false;
  return Object.freeze({
    push: (chunk: Samples) => {
      const x = inPlace({ parameter: "chunk" }, () => finiteSamples(chunk, taken));
      first ??= x[0];
      moved ||= x.some((value) => value !== first);
      taken += x.length;
      averager.push(x);
    },
    read: () => {
      const power = averager.power();
      if (!moved) throw deadChannel(taken, first);
      const plain: Spectrum = Object.freeze({
        unit,
        detector: "rms",
        quantity: units[unit].quantity,
        rate,
        resolution: rate / options.segment,
        derivativeOrder: 0,
        lowest: 0,
        ...averager.averaging(),
        values: power.map((sum) => Math.sqrt(sum) / averager.weightSum),
      });
      if (options.as === undefined && options.lowest === undefined) return plain;
      return convertSpectrum(
        plain,
        options.as ?? `${unit} rms`,
        options.lowest === undefined ? {} : { lowest: options.lowest },
      );
    },
  });
}

/**
 * The one-sided amplitude spectrum of a record, averaged over overlapping segments if `segment` is given.
 *
 * Lines are scaled by the window's coherent gain, so that a tone on a line reads its own size; between lines it reads
 * less, by window (rectangular 36 %, Hann 15 %, HFT248D 0.01 % at worst). {@link topLines} and {@link orderLines}
 * mend that. Power is averaged, RMS over segments. For an overall take {@link bandOverall}, which divides by the noise
 * bandwidth of the window.
 *
 * @param options - `rate`, `unit`, and as needed `as`, `from`, `window`, `segment`, `overlap`, `detrend`
 * @throws {@link VeladisError} `not-a-number` or `not-finite` with the index of the sample, `not-positive` for the
 *   rate, `missing-fact` for fewer than two samples or less than a segment, `sensor-fault` when all are equal,
 *   `missing-frequency` when the quantity changes without `from`, `out-of-range`, `unknown-option`
 * @example
 * ```ts
 * import { spectrum } from "veladis/signal";
 *
 * // 1 g pk at 25 Hz, one second
 * const samples = Float64Array.from({ length: 2048 }, (_, i) => Math.sin((2 * Math.PI * 25 * i) / 2048));
 * const lines = spectrum(samples, { rate: 2048, unit: "g", as: "g pk" });
 * lines.resolution; // => 1
 * lines.noiseBandwidth.toFixed(3); // => "1.500"
 * lines.coherentGain.toFixed(3); // => "0.500"
 * [24, 25, 26].map((k) => lines.values[k]?.toFixed(6)); // => ["0.500000", "1.000000", "0.500000"]
 * ```
 */
export function spectrum(samples: Samples, options: SpectrumOptions): Spectrum {
  return withParameters({ samples, options }, () => {
    const x = vibrationSamples(samples);
    const segment = requireSpectrumOptions(options).segment ?? x.length;
    const stream = spectrumOf({ ...options, segment }, x.length);
    stream.push(x);
    return stream.read();
  });
}
