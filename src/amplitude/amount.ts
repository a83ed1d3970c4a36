import {
  inPlace,
  numeralAndUnit,
  parseNumeral,
  requireNonNegative,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Amplitude, amplitudeOf } from "../reading/index";
import { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";
import { derivedAmplitude, linearAmplitude, linearTypeOf } from "./derived-amplitude";

const FORM = 'a share such as "5 %" or an amount such as "0.4 mm/s rms"';

/** {@link amountOf} as an amplitude, which keeps what was assumed on the way to it. */
export function amountAmplitude(written: string, of: string | Amplitude): ConvertedAmplitude {
  const whole = inPlace({ parameter: "of" }, () => amplitudeOf(of));
  const [digits, rest] = numeralAndUnit(written, FORM);
  const number = requireNonNegative(parseNumeral(digits), "an amount of zero or more");
  // a difference of levels is a ratio, no amount, and a level is none either
  if (/^dB/i.test(rest)) throw new VeladisError("wrong-type", { expected: FORM, received: shown(written) });
  if (!/^(%|percent|per cent)$/i.test(rest)) {
    return convertAmplitude(
      written,
      linearTypeOf(whole),
      whole.hertz === undefined ? {} : { at: { hertz: whole.hertz } },
    );
  }
  const value = (whole.value * number) / 100;
  return derivedAmplitude([linearAmplitude(whole)], value, {
    does: "scale",
    by: number,
    over: 100,
    note: `${digits} %`,
  });
}

/**
 * An amount stated as a share of a reading or in a unit of its own, in the unit and detector of that reading.
 *
 * A bare number is refused: 5 may be a value or a percentage.
 *
 * @param written - `"5 %"`, or an amplitude such as `"0.4 mm/s rms"`
 * @param of - the reading it is a share of; its frequency serves an amount in another quantity
 * @throws {@link VeladisError} `missing-option`, `missing-unit` for a bare number, `syntax`, `negative`,
 *   `wrong-type` for decibels, and as {@link convertAmplitude}
 * @example
 * ```ts
 * import { amountOf } from "veladis/protection";
 *
 * amountOf("5 %", "10 mm/s rms"); // => 0.5
 * amountOf("2.54 mm/s pk", "0.35 in/s pk").toFixed(3); // => "0.100"
 * amountOf("5", "10 mm/s rms"); // throws missing-unit
 * ```
 */
export function amountOf(written: string, of: string | Amplitude): number {
  return withParameters({ of, written }, () => {
    return amountAmplitude(written, of).value;
  });
}
