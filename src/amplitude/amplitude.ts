import { nonNegative, numeral, shown, splitNumeral, text, VeladisError } from "../core/index";
import type { Detector } from "../detectors/index";
import { type FrequencyText, hertz } from "../frequency/index";
import type { Quantity, UnitSymbol } from "../units/index";
import { checkedAmplitude, FORM } from "./checked-amplitude";
import { kindOf } from "./kind";
import { linearOf } from "./scaled";

/** A level in decibels and the RMS value it refers to, e.g. `{ decibels: 95, re: "1 nm/s" }`. */
export interface Level {
  readonly decibels: number;
  readonly re: string;
}

/** One reading with all that its meaning needs. */
export interface Amplitude {
  /** Zero or more, in `unit`, by `detector`; linear also where the reading was a level. */
  readonly value: number;
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  readonly quantity: Quantity;
  /** Frequency in hertz, if it is known. */
  readonly hertz: number | undefined;
  /** The level, if the reading was written as one. */
  readonly level?: Level;
}

/** Beyond any reading a person writes; keeps junk from being searched. */
const LONGEST = 200;

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
  const written = text(reading, FORM).trim();
  if (written.length > LONGEST)
    throw new VeladisError("syntax", {
      expected: FORM,
      received: shown(reading),
    });
  const [subject, at, ...more] = written.split(/\sat(?:\s|$)|@/i);
  const [value, type] = splitNumeral(subject as string);
  if (value === "" || more.length > 0) {
    throw new VeladisError("syntax", {
      expected: FORM,
      received: shown(reading),
    });
  }
  const number = numeral(value, "a finite value");
  if (type === "") {
    throw new VeladisError("missing-unit", {
      expected: `a unit and a detector after the value, as in "${value} mm/s rms"`,
      received: shown(reading),
    });
  }
  const { unit, detector, quantity, reference } = kindOf(type);
  const common = {
    unit,
    detector,
    quantity,
    hertz: at === undefined ? undefined : hertz(at as FrequencyText),
  };
  if (reference === 0)
    return Object.freeze({
      value: nonNegative(number, "an amplitude of zero or more"),
      ...common,
    });
  const level = Object.freeze({ decibels: number, re: `${reference} ${unit}` });
  return Object.freeze({
    value: linearOf(number, reference),
    ...common,
    level,
  });
}

/**
 * The reading itself, read if it is a text, held against the catalogues if it is taken apart.
 *
 * @throws {@link VeladisError} all of {@link parseAmplitude}
 */
export function amplitudeOf(reading: string | Amplitude): Amplitude {
  return typeof reading === "object" && reading !== null ? checkedAmplitude(reading) : parseAmplitude(reading);
}
