import { requireKnownOptions, shown, VeladisError, withParameters } from "../core/index";
import { type Band, requireBand } from "./band";
import { lineAt, peaksByHeight, type SpectrumLine, standsOut } from "./peaks";
import { requireSpectrum } from "./require-lines";
import type { Spectrum } from "./spectrum-type";

/** Options of {@link topLines}. */
export interface TopLinesOptions {
  /** How many at most; 10 if not given. */
  readonly count?: number;
  /** Where to look, in hertz; all that the spectrum gives if not given. */
  readonly band?: Band;
}

/**
 * The highest lines of a spectrum, highest first: single tones, at their own frequency and size.
 *
 * Frequency and size are interpolated by the parabola through the logarithms of three neighbouring lines, less the
 * error that the window's shape gives it: exact for a tone alone, whatever its place between the lines. What is no
 * more than the window's side lobes of a higher line is left out.
 *
 * @throws {@link VeladisError} `out-of-range` for a band the spectrum does not hold, or a count that is none
 * @example
 * ```ts
 * import { spectrum, topLines } from "veladis/signal";
 *
 * // 1 g pk at 24.6 Hz and 0.2 g pk at 100.3 Hz, two seconds
 * const samples = Float64Array.from({ length: 4096 }, (_, i) => {
 *   const t = (2 * Math.PI * i) / 2048;
 *   return Math.sin(24.6 * t) + 0.2 * Math.sin(100.3 * t);
 * });
 * const lines = topLines(spectrum(samples, { rate: 2048, unit: "g", as: "g pk" }), { count: 2 });
 * lines.map(({ hertz, value }) => `${hertz.toFixed(2)} Hz ${value.toFixed(3)}`);
 * // => ["24.60 Hz 1.000", "100.30 Hz 0.200"]
 * ```
 */
export function topLines(spectrum: Spectrum, options: TopLinesOptions = {}): SpectrumLine[] {
  return withParameters({ options, spectrum }, () => {
    const { count = 10, band } = requireKnownOptions(
      options,
      { count: true, band: true },
      { what: "an option of a list of lines", form: "options such as { count: 5 }" },
    );
    if (!(Number.isInteger(count) && count >= 1)) {
      throw new VeladisError("out-of-range", {
        expected: "a number of lines, 1 or more",
        received: shown(count),
        option: "count",
      });
    }
    const { rate } = requireSpectrum(spectrum);
    const where = band === undefined ? ([0, rate / 2] as const) : requireBand(band, rate, 0);
    const lines: SpectrumLine[] = [];
    for (const bin of peaksByHeight(spectrum, where)) {
      if (standsOut(spectrum, bin, lines)) lines.push(lineAt(spectrum, bin));
      if (lines.length === count) break;
    }
    // between the lines of the spectrum, the order may be another
    return lines.sort((a, b) => b.value - a.value);
  });
}
