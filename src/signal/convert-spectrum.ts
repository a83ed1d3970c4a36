import { inPlace, withParameters } from "../core/index";
import { sineRatio } from "../detectors/index";
import { type AmplitudeType, linearType } from "../reading/index";
import { derivativeOrder, unitFactor } from "../units/index";
import { convertedLines, lowestFrequency, requireConversion } from "./converted-lines";
import { requireSpectrum } from "./require-lines";
import type { Spectrum } from "./spectrum-type";

/** Options of {@link convertSpectrum}. */
export interface ConvertSpectrumOptions {
  /** Lowest frequency in hertz that is given; needed when the quantity changes. */
  readonly lowest?: number;
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
 * const velocity = convertSpectrum(acceleration, "mm/s pk", { lowest: 10 });
 * velocity.values[25]?.toFixed(4); // => "6.3662"
 * velocity.values[0]; // => 0
 * ```
 */
export function convertSpectrum(spectrum: Spectrum, to: AmplitudeType, options: ConvertSpectrumOptions = {}): Spectrum {
  return withParameters({ options, to, spectrum }, () => {
    const { unit, detector, quantity } = inPlace({ parameter: "to" }, () => linearType(to));
    const { resolution } = requireSpectrum(spectrum);
    const steps = derivativeOrder(spectrum.unit, unit);
    const lowest = Math.max(
      spectrum.lowest,
      inPlace({ parameter: "options" }, () => lowestFrequency(requireConversion(options).lowest, steps, resolution)),
    );
    const factor = unitFactor(spectrum.unit, unit) * sineRatio(spectrum.detector, detector);
    return Object.freeze({
      ...spectrum,
      unit,
      detector,
      quantity,
      derivativeOrder: spectrum.derivativeOrder + steps,
      lowest,
      values: convertedLines(spectrum, factor, steps, lowest),
    });
  });
}
