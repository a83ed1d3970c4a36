import { finite, given, list, shown, VeladisError } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Amplitude, typeOf } from "../reading/index";
import { type Band, checkedBand } from "./band";
import { firstLine } from "./convert-spectrum";
import { finiteLevel } from "./finite-level";
import { givenSpectrum } from "./given-lines";
import { measured } from "./measured";
import type { Spectrum } from "./spectrum-type";
import { placeOfTone, windowKernel } from "./window-kernel";

/** A line picked from a spectrum: an amplitude at its own frequency, by which it may be converted. */
export interface SpectrumLine extends Amplitude {
  /** Frequency in hertz, found between the lines of the spectrum. */
  readonly hertz: number;
  /** The highest line of the spectrum there. */
  readonly bin: number;
}

/** Options of {@link topLines}. */
export interface TopLinesOptions {
  /** How many at most; 10 if not given. */
  readonly count?: number;
  /** Where to look, in hertz; all that the spectrum gives if not given. */
  readonly band?: Band;
}

/** The tone of which line `bin` and its neighbours are the picture. */
function lineAt({ values, unit, detector, resolution, window, derivations }: Spectrum, bin: number): SpectrumLine {
  // as measured: integration weighs the neighbours by their frequency, which would shift the place
  const sizeAt = (k: number): number => (values[k] as number) * k ** -derivations;
  const place = bin + placeOfTone(window, sizeAt(bin - 1), sizeAt(bin), sizeAt(bin + 1));
  const size = sizeAt(bin) / windowKernel(window, place - bin);
  const hertz = finiteLevel(place * resolution);
  const line = measured(size * place ** derivations, typeOf(unit, detector), "a line of a spectrum");
  return Object.freeze({ ...line, hertz, bin });
}

/** Lines higher than both neighbours, of those that have two that are given. */
function summits({ values, from, resolution }: Spectrum, [low, high]: Band): number[] {
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
function standsOut({ values, window, resolution }: Spectrum, bin: number, others: readonly SpectrumLine[]): boolean {
  const leakage = others.reduce(
    (sum, { value, hertz }) => sum + value * Math.abs(windowKernel(window, bin - hertz / resolution)),
    0,
  );
  return (values[bin] as number) > ABOVE_LEAKAGE * leakage;
}

/** Summits of a band, highest first. */
function summitsByHeight(spectrum: Spectrum, band: Band): number[] {
  const { values } = spectrum;
  return summits(spectrum, band).sort((a, b) => (values[b] as number) - (values[a] as number));
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
  const { count = 10, band } = given(options, "options as an object");
  if (!(Number.isInteger(count) && count >= 1)) {
    throw new VeladisError("out-of-range", { expected: "a number of lines, 1 or more", received: shown(count) });
  }
  const { rate } = givenSpectrum(spectrum);
  const where = band === undefined ? ([0, rate / 2] as const) : checkedBand(band, rate, 0);
  const lines: SpectrumLine[] = [];
  for (const bin of summitsByHeight(spectrum, where)) {
    if (standsOut(spectrum, bin, lines)) lines.push(lineAt(spectrum, bin));
    if (lines.length === count) break;
  }
  // between the lines of the spectrum, the order may be another
  return lines.sort((a, b) => b.value - a.value);
}

/** Options of {@link orderLines}. */
export interface OrderLinesOptions {
  /** Speed of the shaft. */
  readonly speed: Frequency;
  /** Multiples of the shaft speed; 1 to 4 if not given. */
  readonly orders?: readonly number[];
  /** How far a line may lie from its multiple, as part of it; 0.02 if not given, and always 1.5 lines or more. */
  readonly within?: number;
}

/** Lines of the whole spectrum whose leakage is reckoned with. */
const HIGHEST = 20;

/** What stands at a multiple of the shaft speed. */
export interface OrderLine {
  readonly order: number;
  /** The multiple in hertz. */
  readonly expected: number;
  /** The line found there; undefined when nothing stands out. */
  readonly line: SpectrumLine | undefined;
}

/**
 * The lines at 1x, 2x, ... of a shaft speed, each the highest within a few hundredths of its multiple.
 *
 * @throws {@link VeladisError} `out-of-range` for a multiple that the spectrum does not hold, or `within` not between
 *   0 and 0.5; all of `hertz` for the speed
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { orderLines, spectrum } from "veladis/signal";
 *
 * // a boiler-feed pump at 2960 r/min: 1x and 2x
 * const samples = Float64Array.from({ length: 4096 }, (_, i) => {
 *   const t = (2 * Math.PI * i) / 2048;
 *   return 0.5 * Math.sin(49.4 * t) + 0.1 * Math.sin(98.8 * t);
 * });
 * const lines = spectrum(samples, { rate: 2048, unit: "g", as: "mm/s rms", from: 5 });
 * orderLines(lines, { speed: "2960 r/min", orders: [1, 2, 3] }).map(({ order, line }) => {
 *   return `${order}x ${line === undefined ? "nothing" : format(line)}`;
 * });
 * // => ["1x 11.2 mm/s rms", "2x 1.12 mm/s rms", "3x nothing"]
 * ```
 */
export function orderLines(spectrum: Spectrum, options: OrderLinesOptions): OrderLine[] {
  const { within = 0.02, orders = [1, 2, 3, 4] } = given(options, 'options with { speed: "1490 r/min" }');
  const shaft = hertz(options.speed);
  if (!(typeof within === "number" && within >= 0 && within < 0.5)) {
    throw new VeladisError("out-of-range", {
      expected: "a part of an order from 0 to below 0.5",
      received: shown(within),
    });
  }
  const { resolution, rate } = givenSpectrum(spectrum);
  const highest = topLines(spectrum, { count: HIGHEST });
  return list(orders, "orders of the running speed as a list").map((order) => {
    const expected = finite(order, "an order of the running speed") * shaft;
    if (!(expected > spectrum.from && expected < rate / 2)) {
      throw new VeladisError("out-of-range", {
        expected: `multiples between ${spectrum.from} and ${rate / 2} Hz, which the spectrum gives`,
        received: `${order}x, ${expected} Hz`,
      });
    }
    const reach = Math.max(within * expected, 1.5 * resolution);
    const others = highest.filter((line) => Math.abs(line.hertz - expected) > reach);
    const bin = summitsByHeight(spectrum, [expected - reach - resolution, expected + reach + resolution]).find(
      (summit) => Math.abs(summit * resolution - expected) <= reach && standsOut(spectrum, summit, others),
    );
    return Object.freeze({ order, expected, line: bin === undefined ? undefined : lineAt(spectrum, bin) });
  });
}
