import { parseNumeral, requireNonNegative, requireText, shown, splitNumeral, VeladisError } from "../core/index";
import { type FrequencyText, hertz } from "../frequency/index";
import type { Amplitude } from "./amplitude";
import { checkedAmplitude, FORM } from "./checked-amplitude";
import { parsedType } from "./parsed-type";
import { linearOf } from "./scaled";

/** Beyond any reading a person writes; keeps junk from being searched. */
const LONGEST = 200;

function refuse(code: "syntax" | "missing-unit", reading: string, expected = FORM): never {
  throw new VeladisError(code, { expected, received: shown(reading) });
}

/**
 * The reading that a text says: a value, a unit, a detector, and a frequency after `at` if there is one.
 *
 * @param reading - e.g. `"0.25 in/s pk at 1500 r/min"`, `"95 dB re 1e-9 m/s"`
 * @returns the reading taken apart, frozen; a level gives its linear RMS value in the unit of its reference
 * @throws {@link VeladisError} `syntax`, `not-a-number`, `negative`, and all of {@link readingType} and
 *   {@link hertz}
 * @example
 * ```ts
 * import { parseAmplitude } from "veladis";
 *
 * parseAmplitude("0.25 in/s pk at 1500 r/min");
 * // => { value: 0.25, unit: "in/s", detector: "pk", quantity: "velocity", hertz: 25 }
 * ```
 */
export function parseAmplitude(reading: string): Amplitude {
  const written = requireText(reading, FORM).trim();
  if (written.length > LONGEST) refuse("syntax", reading);
  const [subject, at, ...more] = written.split(/\sat(?:\s|$)|@/i);
  const [digits, type] = splitNumeral(subject as string);
  if (digits === "" || more.length > 0) refuse("syntax", reading);
  const value = parseNumeral(digits, "a finite value");
  if (type === "") {
    refuse("missing-unit", reading, `a unit and a detector after the value, as in "${digits} mm/s rms"`);
  }
  if (/^(?:±|\+\/?[-\u2212])/.test(type)) {
    refuse("syntax", reading, 'a reading without "±": here no uncertainty is carried');
  }
  const { unit, detector, quantity, reference } = parsedType(type);
  const known = at === undefined ? undefined : hertz(at as FrequencyText);
  if (reference === 0) {
    requireNonNegative(value, "an amplitude of zero or more");
    return Object.freeze({ value, unit, detector, quantity, hertz: known });
  }
  const level = Object.freeze({ decibels: value, re: `${reference} ${unit}` });
  return Object.freeze({ value: linearOf(value, reference), unit, detector, quantity, hertz: known, level });
}

/**
 * The reading itself, read if it is a text, held against the catalogues if it is taken apart.
 *
 * @throws {@link VeladisError} all of {@link parseAmplitude}
 */
export function amplitudeOf(reading: string | Amplitude): Amplitude {
  return typeof reading === "object" && reading !== null ? checkedAmplitude(reading) : parseAmplitude(reading);
}
