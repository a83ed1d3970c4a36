import { finite, given, nonNegative, positive, shown, text, VeladisError } from "../core/index";
import { FREQUENCY_FORM } from "../frequency/index";
import type { Amplitude } from "./amplitude";
import { kindOf } from "./kind";

/** What a reading looks like, for messages. */
export const FORM = 'a reading such as "0.25 in/s pk at 1500 r/min"';

/**
 * A reading that was taken apart, held against the catalogues: its unit and detector may be written in any of their
 * spellings, and the quantity is the unit's own, whatever the object says.
 *
 * @throws {@link VeladisError} `wrong-type`, `negative`, `not-positive`, `not-a-number`, `not-finite`, and as
 *   {@link readingType}
 */
export function checkedAmplitude(reading: Amplitude): Amplitude {
  const { value, hertz, level } = reading;
  const kind = kindOf(`${text(reading.unit, FORM)} ${text(reading.detector, FORM)}`);
  const { unit, detector, quantity } = kind;
  if (kind.reference !== 0) {
    throw new VeladisError("wrong-type", {
      expected: FORM,
      received: shown(reading.unit),
    });
  }
  nonNegative(value, "an amplitude of zero or more");
  if (hertz !== undefined) positive(hertz, FREQUENCY_FORM);
  if (level !== undefined) {
    finite(given(level, FORM).decibels, FORM);
    text(level.re, FORM);
  }
  const same = unit === reading.unit && detector === reading.detector && quantity === reading.quantity;
  return same ? reading : { ...reading, unit, detector, quantity };
}
