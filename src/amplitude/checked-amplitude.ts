import { finite, given, nonNegative, positive, shown, text, VeladisError } from "../core/index";
import type { Amplitude } from "./amplitude";
import { kindOf } from "./kind";

const LEVEL = 'the level of a reading such as { decibels: 95, re: "1 nm/s" }';

/**
 * A reading that was taken apart, held against the catalogues: its unit and detector may be written in any of their spellings, and the quantity is the unit's own, whatever the object says.
 *
 * @throws {@link VeladisError} `wrong-type`, `negative`, `not-positive`, `not-a-number`, `not-finite`, and as {@link readingType}
 */
export function checkedAmplitude(reading: Amplitude): Amplitude {
  const { value, hertz: hz, level } = reading;
  const kind = kindOf(
    `${text(reading.unit, "the unit of a reading")} ${text(reading.detector, "the detector of a reading")}`,
  );
  const { unit, detector, quantity } = kind;
  if (kind.reference !== 0) {
    throw new VeladisError("wrong-type", {
      expected: "the linear unit of a reading, with its level apart",
      received: shown(reading.unit),
    });
  }
  nonNegative(value, "an amplitude of zero or more");
  if (hz !== undefined) positive(hz, "the frequency of a reading above zero, in Hz");
  if (level !== undefined) {
    finite(given(level, LEVEL).decibels, LEVEL);
    text(level.re, LEVEL);
  }
  const same = unit === reading.unit && detector === reading.detector && quantity === reading.quantity;
  return same ? reading : { ...reading, unit, detector, quantity };
}
