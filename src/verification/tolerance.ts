import { amountAmplitude } from "../amplitude/index";
import {
  finiteResult,
  numeralAndUnit,
  parseNumeral,
  requireNonNegative,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { type Amplitude, type Assumption, significant } from "../reading/index";
import { divisorOf, statedAlone, statedText } from "../uncertainty/index";

/** A tolerance or an uncertainty: `"5 %"` of the known level, `"0.5 dB"`, or an amount such as `"0.4 mm/s rms"`. */
export type ToleranceText = `${number} %` | `${number}%` | `${number} dB` | (string & {});

const FORM = 'a tolerance such as "5 %", "0.5 dB" or "0.4 mm/s rms"';

const UNCERTAINTY = 'an uncertainty with its unit, such as "2 % (k=2)"';

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
 * @throws {@link VeladisError} `missing-option`, `missing-unit` for a bare number, `negative`, and as {@link amountAmplitude}
 */
export function marginsOf(tolerance: ToleranceText, known: Amplitude): AssumedMargins {
  return timesMargins(tolerance, known, 1);
}

/**
 * Refuses a tolerance as large as the known level, within which a device that shows nothing would pass.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireUseful({ below, above }: Margins, known: Amplitude, received: string): void {
  if (Math.max(below, above) < known.value * (1 - 1e-9)) return;
  throw new VeladisError("out-of-range", {
    expected: `a tolerance of less than 100 % of the known level, ${significant(known.value)} ${known.unit} ${known.detector}: one as large passes a device that shows nothing, or twice the level`,
    received: shown(received),
  });
}

/** The margins of a multiple of what a text states; of decibels, of a multiple of those. */
function timesMargins(tolerance: ToleranceText, known: Amplitude, times: number): AssumedMargins {
  const [digits, unit] = numeralAndUnit(tolerance, FORM, { parameter: "tolerance" });
  if (/^dB$/i.test(unit)) {
    const ratio = 10 ** ((times * requireNonNegative(parseNumeral(digits), "a tolerance of zero or more")) / 20);
    return { below: known.value * (1 - 1 / ratio), above: finiteResult(known.value * (ratio - 1)), assumed: [] };
  }
  const { value, assumed } = amountAmplitude(tolerance, known);
  return { below: times * value, above: finiteResult(times * value), assumed };
}

/** Margins of an expanded uncertainty (k = 2), and how it was stated. */
export interface ExpandedMargins extends AssumedMargins {
  /** In one form: `± 2 % (k=2)`. */
  readonly stated: string;
  /** True for one without a coverage factor, taken as a bound with equal chance within. */
  readonly isBound: boolean;
}

/**
 * The expanded uncertainty (k = 2) that a text states beside a level: `"2 % (k=2)"`, `"± 2 %"`. As behind a reading, one
 * without a coverage factor is a bound, which is the wider.
 *
 * @throws {@link VeladisError} as {@link marginsOf} and {@link parseUncertain}
 */
export function expandedMargins(uncertainty: ToleranceText, known: Amplitude): ExpandedMargins {
  const one = statedAlone(requireText(uncertainty, UNCERTAINTY, { parameter: "uncertainty" }));
  const amount = `${one.digits} ${one.unit}`.trim();
  numeralAndUnit(amount, UNCERTAINTY);
  const margins = timesMargins(amount, known, 2 / divisorOf(one));
  return { ...margins, stated: statedText(one), isBound: one.coverage === undefined };
}
