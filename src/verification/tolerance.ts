import { amountAmplitude } from "../amplitude/index";
import { finiteResult, numeralAndUnit, parseNumeral, requireNonNegative } from "../core/index";
import type { Amplitude, Assumption } from "../reading/index";

/** A tolerance or an uncertainty: `"5 %"` of the known level, `"0.5 dB"`, or an amount such as `"0.4 mm/s rms"`. */
export type ToleranceText = `${number} %` | `${number}%` | `${number} dB` | (string & {});

const FORM = 'a tolerance such as "5 %", "0.5 dB" or "0.4 mm/s rms"';

/** How far a level may lie below and above the known one, in its unit. */
export interface Margins {
  readonly below: number;
  readonly above: number;
}

/** Margins, and what was assumed in stating them in the unit of the known level. */
export interface AssumedMargins extends Margins {
  readonly assumed: readonly Assumption[];
}

/**
 * The margins that a tolerance states; in decibels they differ a little.
 *
 * @throws {@link VeladisError} `missing-fact`, `missing-unit` for a bare number, `negative`, and as {@link amountAmplitude}
 */
export function marginsOf(tolerance: ToleranceText, known: Amplitude): AssumedMargins {
  const [digits, unit] = numeralAndUnit(tolerance, FORM);
  if (/^dB$/i.test(unit)) {
    const ratio = 10 ** (requireNonNegative(parseNumeral(digits), "a tolerance of zero or more") / 20);
    return { below: known.value * (1 - 1 / ratio), above: finiteResult(known.value * (ratio - 1)), assumed: [] };
  }
  const { value, assumed } = amountAmplitude(tolerance, known);
  return { below: value, above: value, assumed };
}
