import {
  inPlace,
  requireFinite,
  requireKnownOptions,
  requireList,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { lineAt, peaksByHeight, type SpectrumLine, standsOut } from "./peaks";
import { requireSpectrum } from "./require-lines";
import type { Spectrum } from "./spectrum-type";
import { topLines } from "./top-lines";

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
 * const lines = spectrum(samples, { rate: 2048, unit: "g", as: "mm/s rms", lowest: 5 });
 * orderLines(lines, { speed: "2960 r/min", orders: [1, 2, 3] }).map(({ order, line }) => {
 *   return `${order}x ${line === undefined ? "nothing" : format(line)}`;
 * });
 * // => ["1x 11.2 mm/s rms", "2x 1.12 mm/s rms", "3x nothing"]
 * ```
 */
export function orderLines(spectrum: Spectrum, options: OrderLinesOptions): OrderLine[] {
  return withParameters({ spectrum, options }, () => {
    const { within = 0.02, orders = [1, 2, 3, 4] } = requireKnownOptions(
      options,
      { speed: true, orders: true, within: true },
      { what: "an option of lines at orders", form: 'options with { speed: "1490 r/min" }' },
    );
    const shaft = inPlace({ parameter: "options", option: "speed" }, () => hertz(options.speed));
    if (!(typeof within === "number" && within >= 0 && within < 0.5)) {
      throw new VeladisError("out-of-range", {
        expected: "a part of an order from 0 to below 0.5",
        received: shown(within),
        option: "within",
      });
    }
    const { resolution, rate } = requireSpectrum(spectrum);
    const highest = topLines(spectrum, { count: HIGHEST });
    return requireList(orders, "orders of the running speed as a list", { option: "orders" }).map((order, index) => {
      const place = { option: "orders", index };
      const expected = requireFinite(order, "an order of the running speed", place) * shaft;
      if (!(expected > spectrum.lowest && expected < rate / 2)) {
        throw new VeladisError("out-of-range", {
          expected: `multiples between ${spectrum.lowest} and ${rate / 2} Hz, which the spectrum gives`,
          received: `${order}x, ${expected} Hz`,
          ...place,
        });
      }
      const reach = Math.max(within * expected, 1.5 * resolution);
      const others = highest.filter((line) => Math.abs(line.hertz - expected) > reach);
      const bin = peaksByHeight(spectrum, [expected - reach - resolution, expected + reach + resolution]).find(
        (peak) => Math.abs(peak * resolution - expected) <= reach && standsOut(spectrum, peak, others),
      );
      return Object.freeze({ order, expected, line: bin === undefined ? undefined : lineAt(spectrum, bin) });
    });
  });
}
