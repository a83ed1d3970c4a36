import { shown, VeladisError, withParameters } from "../core/index";
import { sineRatio } from "../detectors/index";
import { type Amplitude, typeOf } from "../reading/index";
import { type Band, binsOf, requireBand } from "./band";
import { finiteLevel } from "./finite-level";
import { bandNote, measured } from "./measured";
import { requireSpectrum } from "./require-lines";
import type { Spectrum } from "./spectrum-type";

/** The RMS level of a band, from a spectrum or a density. */
export interface BandOverall extends Amplitude {
  readonly band: Band;
  /** First and last line that counted. */
  readonly bins: readonly [first: number, last: number];
}

/**
 * The band, if the lines of a spectrum or density reach so far down.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireBandOf(
  band: Band,
  { rate, resolution, lowest }: Pick<Spectrum, "rate" | "resolution" | "lowest">,
): Band {
  const checked = requireBand(band, rate, resolution);
  if (checked[0] >= lowest * (1 - 1e-9)) return checked;
  throw new VeladisError("out-of-range", {
    expected: `a band that begins at ${lowest} Hz or above, from where on lines are given`,
    received: `${shown(checked[0])} Hz`,
    parameter: "band",
  });
}

/**
 * The RMS level of a band of a spectrum: root of the sum of squares of its lines, divided by the noise bandwidth of
 * the window.
 *
 * Without that division a Hann window over-reads by 22.5 %. A line counts when `low <= frequency <= high`; what a
 * window spreads over an edge is lost or gained there, within the main lobe of the window (2 lines for Hann).
 *
 * @throws {@link VeladisError} `out-of-range` for a band beyond half the sampling rate, below the resolution or below
 *   what the spectrum gives
 * @example
 * ```ts
 * import { bandOverall, spectrum } from "veladis/signal";
 *
 * const samples = Float64Array.from({ length: 2048 }, (_, i) => Math.sin((2 * Math.PI * 25 * i) / 2048));
 * bandOverall(spectrum(samples, { rate: 2048, unit: "g" }), [10, 1000]).value.toFixed(6); // => "0.707107"
 * ```
 */
export function bandOverall(spectrum: Spectrum, band: Band): BandOverall {
  return withParameters({ spectrum, band }, () => {
    const { unit, detector, resolution, values, noiseBandwidth } = requireSpectrum(spectrum);
    const given = requireBandOf(band, spectrum);
    const [first, end] = binsOf(given, resolution);
    const last = Math.min(end, values.length - 1);
    let squares = 0;
    for (let k = first; k <= last; k++) squares += (values[k] as number) ** 2;
    const rms = sineRatio(detector, "rms") * Math.sqrt(squares / noiseBandwidth);
    return Object.freeze({
      ...measured(finiteLevel(rms), typeOf(unit, "rms"), bandNote(given)),
      band: given,
      bins: [first, last] as const,
    });
  });
}
