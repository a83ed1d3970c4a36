import { inPlace, requireKnownOptions, shown, VeladisError, withParameters } from "../core/index";
import { type AmplitudeType, linearType } from "../reading/index";
import { derivativeOrder, type UnitSpelling, unitFactor, units } from "../units/index";
import { type Band, binsOf } from "./band";
import { type BandOverall, requireBandOf } from "./band-overall";
import { convertedLines, lowestFrequency, requireConversion } from "./converted-lines";
import type { Density } from "./density-type";
import { type DensityUnit, densityText, densityUnit } from "./density-unit";
import { finiteLevel, finiteLevels } from "./finite-level";
import { bandNote, measured } from "./measured";
import { requireDensity } from "./require-lines";
import { sampleUnit } from "./sample-unit";
import { requireSamplingRate, type Samples, vibrationSamples } from "./samples";
import { type AveragingOptions, welchAverager } from "./welch";

/** What a density needs to be told. */
export interface DensityOptions extends AveragingOptions {
  /** Samples a second. */
  readonly rate: number;
  /** Unit of the samples. */
  readonly unit: UnitSpelling;
}

/** Segments that a record is cut into, if nothing is said: half overlapping, 15 of them. */
const SEGMENTS = 8;

const keys: Readonly<Record<keyof DensityOptions, true>> = /* @__PURE__ */ Object.freeze({
  rate: true,
  unit: true,
  segment: true,
  overlap: true,
  window: true,
  detrend: true,
});

/**
 * The one-sided power spectral density of a record, by averaging overlapping segments (Welch).
 *
 * Without `segment`, a segment is an eighth of the record: 15 of them overlap by half, and each value is within some
 * 30 % of its expectation two times out of three.
 *
 * @throws {@link VeladisError} as {@link spectrum}
 * @example
 * ```ts
 * import { density, densityOverall } from "veladis/signal";
 *
 * const samples = Float64Array.from({ length: 8192 }, (_, i) => Math.sin((2 * Math.PI * 64 * i) / 2048));
 * const psd = density(samples, { rate: 2048, unit: "g", segment: 2048 });
 * psd.unit; // => "g2/Hz"
 * psd.averages; // => 7
 * densityOverall(psd, [10, 1000]).value.toFixed(6); // => "0.707107"
 * ```
 */
export function density(samples: Samples, options: DensityOptions): Density {
  return withParameters({ samples, options }, () => {
    requireKnownOptions(options, keys, { what: "an option of a density", form: "options with rate and unit" });
    const rate = requireSamplingRate(options.rate);
    const squared = sampleUnit(options.unit);
    const x = vibrationSamples(samples, 2 * SEGMENTS);
    const segment = options.segment ?? Math.floor(x.length / SEGMENTS);
    const averager = welchAverager({ ...options, segment }, x.length);
    averager.push(x);
    const scale = 1 / (rate * averager.weightSquares);
    return Object.freeze({
      unit: densityText(squared),
      squared,
      quantity: units[squared].quantity,
      rate,
      resolution: rate / segment,
      lowest: 0,
      ...averager.averaging(),
      values: finiteLevels(averager.power().map((power) => power * scale)),
    });
  });
}

/**
 * A density in another unit or quantity: divided by `(2 pi f)^2` for each integration, value by value.
 *
 * @param options - `from`, the lowest frequency given; needed when the quantity changes
 * @throws {@link VeladisError} `missing-frequency`, `out-of-range`, and all of {@link densityUnit}
 * @example
 * ```ts
 * import { convertDensity, density, densityOverall } from "veladis/signal";
 *
 * const samples = Float64Array.from({ length: 8192 }, (_, i) => Math.sin((2 * Math.PI * 64 * i) / 2048));
 * const velocity = convertDensity(density(samples, { rate: 2048, unit: "g", segment: 2048 }), "(mm/s)2/Hz", { lowest: 10 });
 * densityOverall(velocity, [10, 1000]).value.toFixed(2); // => "17.25"
 * ```
 */
export function convertDensity(
  density: Density,
  unit: DensityUnit,
  options: { readonly lowest?: number } = {},
): Density {
  return withParameters({ options, unit, density }, () => {
    const squared = inPlace({ parameter: "unit" }, () => densityUnit(unit));
    const steps = derivativeOrder(requireDensity(density).squared, squared);
    const { resolution } = density;
    const lowest = Math.max(
      density.lowest,
      inPlace({ parameter: "options" }, () => lowestFrequency(requireConversion(options).lowest, steps, resolution)),
    );
    const factor = unitFactor(density.squared, squared) ** 2;
    return Object.freeze({
      ...density,
      unit: densityText(squared),
      squared,
      quantity: units[squared].quantity,
      lowest,
      values: convertedLines(density, factor, 2 * steps, lowest),
    });
  });
}

/**
 * The RMS level of a band of a density: root of the sum of values times their spacing.
 *
 * @param as - what to answer in, of the density's own quantity; RMS of its unit if not given
 * @throws {@link VeladisError} `out-of-range` for a band the density does not hold, `wrong-quantity`
 * @example
 * ```ts
 * import { density, densityOverall } from "veladis/signal";
 *
 * const samples = Float64Array.from({ length: 8192 }, (_, i) => Math.sin((2 * Math.PI * 64 * i) / 2048));
 * const psd = density(samples, { rate: 2048, unit: "g", segment: 2048 });
 * densityOverall(psd, [10, 1000], "m/s2 rms").value.toFixed(3); // => "6.934"
 * densityOverall(psd, [10, 1000], "mm/s rms"); // throws wrong-quantity
 * ```
 */
export function densityOverall(density: Density, band: Band, as?: AmplitudeType): BandOverall {
  return withParameters({ density, band, as }, () => {
    const { squared, quantity, resolution, values } = requireDensity(density);
    const answer = linearType(as ?? `${squared} rms`);
    if (answer.quantity !== quantity || answer.detector !== "rms") {
      throw new VeladisError("wrong-quantity", {
        expected: `an RMS value of ${quantity}; use convertDensity for another quantity`,
        received: shown(as),
        parameter: "as",
      });
    }
    const inside = requireBandOf(band, density);
    const [first, end] = binsOf(inside, resolution);
    const last = Math.min(end, values.length - 1);
    let sum = 0;
    for (let k = first; k <= last; k++) sum += values[k] as number;
    const rms = finiteLevel(unitFactor(squared, answer.unit) * Math.sqrt(sum * resolution));
    return Object.freeze({ ...measured(rms, answer, bandNote(inside)), band: inside, bins: [first, last] as const });
  });
}
