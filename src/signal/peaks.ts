import { type Amplitude, typeOf } from "../reading/index";
import type { Band } from "./band";
import { firstLine } from "./converted-lines";
import { finiteLevel } from "./finite-level";
import { measured } from "./measured";
import type { Spectrum } from "./spectrum-type";
import { toneOffset } from "./tone-offset";
import { windowKernel } from "./window-kernel";

/** A line picked from a spectrum: an amplitude at its own frequency, by which it may be converted. */
export interface SpectrumLine extends Amplitude {
  /** Frequency in hertz, found between the lines of the spectrum. */
  readonly hertz: number;
  /** The highest line of the spectrum there. */
  readonly bin: number;
}

/** The tone of which line `bin` and its neighbours are the picture. */
export function lineAt(
  { values, unit, detector, resolution, window, derivativeOrder }: Spectrum,
  bin: number,
): SpectrumLine {
  // as measured: integration weighs the neighbours by their frequency, which would shift the place
  const sizeAt = (k: number): number => (values[k] as number) * k ** -derivativeOrder;
  const place = bin + toneOffset(window, sizeAt(bin - 1), sizeAt(bin), sizeAt(bin + 1));
  const size = sizeAt(bin) / windowKernel(window, place - bin);
  const hertz = finiteLevel(place * resolution);
  const line = measured(size * place ** derivativeOrder, typeOf(unit, detector), "a line of a spectrum");
  return Object.freeze({ ...line, hertz, bin });
}

/** Lines higher than both neighbours, of those that have two that are given. */
function peaks({ values, lowest: from, resolution }: Spectrum, [low, high]: Band): number[] {
  const first = Math.max(firstLine(from, resolution) + 1, Math.ceil(low / resolution), 2);
  const last = Math.min(values.length - 2, Math.floor(high / resolution));
  const found: number[] = [];
  for (let k = first; k <= last; k++) {
    const value = values[k] as number;
    if (value > (values[k - 1] as number) && value >= (values[k + 1] as number)) found.push(k);
  }
  return found;
}

/** A line counts beside higher ones when it stands this far above what their windows leave at its place. */
const ABOVE_LEAKAGE = 2;

/** Whether line `bin` is more than what the window leaves there of other lines. */
export function standsOut(
  { values, window, resolution }: Spectrum,
  bin: number,
  others: readonly SpectrumLine[],
): boolean {
  const leakage = others.reduce(
    (sum, { value, hertz }) => sum + value * Math.abs(windowKernel(window, bin - hertz / resolution)),
    0,
  );
  return (values[bin] as number) > ABOVE_LEAKAGE * leakage;
}

/** Peaks of a band, highest first. */
export function peaksByHeight(spectrum: Spectrum, band: Band): number[] {
  const { values } = spectrum;
  return peaks(spectrum, band).sort((a, b) => (values[b] as number) - (values[a] as number));
}
