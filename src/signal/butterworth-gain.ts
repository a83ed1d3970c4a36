import { requirePositive, shown, VeladisError, withParameters } from "../core/index";
import { type Band, requireBand } from "./band";
import { finiteLevel } from "./finite-level";

/**
 * The order if nothing is said: the third, as of the pair of filters in ISO 2954:2012 (as a literature survey reports
 * that standard; the clause itself was not read).
 */
export const DEFAULT_ORDER = 3;

/**
 * The order of a filter, if it is one.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireFilterOrder(order: number, least = 1): number {
  if (Number.isInteger(order) && order >= least && order <= 12) return order;
  throw new VeladisError(typeof order === "number" ? "out-of-range" : "wrong-type", {
    expected: `a filter order from ${least} to 12`,
    received: shown(order),
    parameter: "order",
  });
}

/**
 * Power gain of an ideal (analogue) Butterworth band-pass: one half at both edges.
 *
 * Order n means slopes of 6 n dB an octave on either side.
 *
 * @throws {@link VeladisError} `out-of-range` for band or order, `not-positive` for the frequency
 * @example
 * ```ts
 * import { bandPassPowerGain } from "veladis/signal";
 *
 * bandPassPowerGain([10, 1000], 3, 10); // => 0.5
 * Math.sqrt(bandPassPowerGain([10, 1000], 3, 12.6)).toFixed(3); // => "0.898"
 * ```
 */
export function bandPassPowerGain(band: Band, order: number, hertz: number): number {
  return withParameters({ band, order, hertz }, () => {
    const [low, high] = requireBand(band, Number.POSITIVE_INFINITY, 0);
    return finiteLevel(
      powerGain(
        low,
        high,
        requireFilterOrder(order),
        requirePositive(hertz, "a frequency above zero", { parameter: "hertz" }),
      ),
    );
  });
}

/** The same of what is checked: it is asked for every bin. */
export function powerGain(low: number, high: number, order: number, hertz: number): number {
  const off = (hertz * hertz - low * high) / ((high - low) * hertz);
  // products, since a power costs ten times as much and this is asked for every bin
  let power = 1;
  for (let n = 0; n < order; n++) power *= off * off;
  return 1 / (1 + power);
}
