import { given, nonNegative, shown, VeladisError } from "../core/index";
import { type AmplitudeType, linearType } from "../reading/index";
import { finiteLevels } from "./finite-level";
import { givenSpectrum } from "./given-lines";
import type { Spectrum } from "./spectrum-type";
import { derivations, sineRatio, unitFactor } from "./unit-factor";

/** Options of {@link convertSpectrum}. */
export interface ConvertSpectrumOptions {
  /** Lowest frequency in hertz that is given; needed when the quantity changes. */
  readonly from?: number;
}

/**
 * The lowest frequency that a converted spectrum or density gives.
 *
 * @throws {@link VeladisError} `missing-frequency` when the quantity changes without one, `out-of-range` when it is
 *   below the resolution
 */
export function lowestOf(from: number | undefined, steps: number, resolution: number): number {
  if (from === undefined) {
    if (steps === 0) return 0;
    throw new VeladisError("missing-frequency", {
      expected: "a lowest frequency, as in { from: 10 }, since the quantity changes line by line",
      received: "nothing",
    });
  }
  const lowest = nonNegative(from, "a lowest frequency of zero or more, in Hz");
  if (steps < 0 && lowest < resolution) {
    throw new VeladisError("out-of-range", {
      expected: `a lowest frequency of ${resolution} Hz, the resolution, or more, since integration divides by it`,
      received: shown(from),
    });
  }
  return lowest;
}

/** First line at or above a frequency. */
export function firstLine(from: number, resolution: number): number {
  return Math.ceil((from / resolution) * (1 - 1e-9));
}

/**
 * A whole spectrum in another unit, detector or quantity: each line at its own frequency.
 *
 * Lines below `from` are set to 0 and not given; a band may not reach below.
 *
 * @throws {@link VeladisError} `missing-frequency` when the quantity changes without `from`, `out-of-range` for a
 *   `from` below the resolution, `unknown-unit`, `unknown-detector`, `missing-detector`, `out-of-range` for a level
 * @example
 * ```ts
 * import { convertSpectrum, spectrum } from "veladis/signal";
 *
 * const samples = Float64Array.from({ length: 2048 }, (_, i) => Math.sin((2 * Math.PI * 25 * i) / 2048));
 * const acceleration = spectrum(samples, { rate: 2048, unit: "m/s2", window: "rectangular" });
 * const velocity = convertSpectrum(acceleration, "mm/s pk", { from: 10 });
 * velocity.values[25]?.toFixed(4); // => "6.3662"
 * velocity.values[0]; // => 0
 * ```
 */
export function convertSpectrum(spectrum: Spectrum, as: AmplitudeType, options: ConvertSpectrumOptions = {}): Spectrum {
  const { unit, detector, quantity } = linearType(as);
  const { resolution } = givenSpectrum(spectrum);
  const steps = derivations(spectrum.unit, unit);
  const from = Math.max(spectrum.from, lowestOf(given(options, "options as an object").from, steps, resolution));
  const factor = unitFactor(spectrum.unit, unit) * sineRatio(spectrum.detector, detector);
  const first = firstLine(from, resolution);
  const values = finiteLevels(
    spectrum.values.map((value, k) =>
      k < first ? 0 : value * factor * (steps === 0 ? 1 : (2 * Math.PI * k * resolution) ** steps),
    ),
  );
  return Object.freeze({
    ...spectrum,
    unit,
    detector,
    quantity,
    derivations: spectrum.derivations + steps,
    from,
    values,
  });
}
