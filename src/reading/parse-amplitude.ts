import {
  inPlace,
  type NumeralOptions,
  parseNumeral,
  plainNumerals,
  requireNonNegative,
  requireText,
  shown,
  splitNumeral,
  VeladisError,
  withParameters,
} from "../core/index";
import type { Amplitude, LoopState } from "./amplitude";
import { type Behind, behindReading, frequencyTwice, stateBehind } from "./behind-reading";
import { checkedAmplitude, FORM } from "./checked-amplitude";
import { writtenIn } from "./history";
import { ownHistory } from "./own-history";
import { parsedType } from "./parsed-type";
import { requireNoPlusMinus } from "./plus-minus";
import { linearOf } from "./scaled";
import { writtenValue } from "./written-value";

/** Beyond any reading a person writes; keeps junk from being searched. */
const LONGEST = 200;

function refuse(code: "syntax" | "missing-unit" | "out-of-range", reading: string, expected = FORM): never {
  throw new VeladisError(code, { expected, received: shown(reading) });
}

/** The reading with what stands behind it; what was assumed stands in its history too, as it was given. */
function withBehind(reading: Amplitude, { crestFactor, assumed, note }: Behind, state?: LoopState): Amplitude {
  if (crestFactor === undefined && assumed === undefined && state === undefined) return Object.freeze(reading);
  const { hertz } = reading;
  const crest = crestFactor !== undefined && { crestFactor };
  const step = { does: "given", value: writtenValue(reading), type: writtenIn(reading) } as const;
  return Object.freeze({
    ...reading,
    ...crest,
    ...(state !== undefined && { state }),
    ...(assumed !== undefined &&
      note !== undefined && {
        assumed,
        history: ownHistory([
          Object.freeze({ ...step, ...(hertz !== undefined && { hertz }), ...crest, assumed, note }),
        ]),
      }),
  });
}

/**
 * The reading that a text says: a value, a unit, a detector, a frequency after `at` if there is one, and behind them the
 * crest factor and what was assumed, as {@link readingText} writes them.
 *
 * @param reading - e.g. `"0.25 in/s pk at 1500 r/min"`, `"95 dB re 1e-9 m/s"`, `"2 g rms, crest factor 4"`, `"4.49 mm/s rms (sine)"`
 * @param options - `{ decimal: "," }` for numbers with a decimal comma, which is refused without it
 * @returns the reading taken apart, frozen; a level gives its linear RMS value in the unit of its reference
 * @throws {@link VeladisError} `syntax`, also for a reading with ±, `not-a-number`, `negative`, and all of {@link readingType} and
 *   {@link hertz}
 * @example
 * ```ts
 * import { parseAmplitude } from "veladis";
 *
 * parseAmplitude("0.25 in/s pk at 1500 r/min");
 * // => { value: 0.25, unit: "in/s", detector: "pk", quantity: "velocity", hertz: 25 }
 * parseAmplitude("4.49 mm/s rms (sine)").assumed; // => ["sine"]
 * parseAmplitude("7,1 µm pp", { decimal: "," }).value; // => 7.1
 * parseAmplitude("7,1 µm pp"); // throws not-a-number
 * ```
 */
export function parseAmplitude(reading: string, options?: NumeralOptions): Amplitude {
  return withParameters({ options, reading }, () => parsedReading(reading, options));
}

function parsedReading(reading: string, options?: NumeralOptions): Amplitude {
  const text = requireText(reading, FORM).trim();
  if (text.length > LONGEST) refuse("syntax", reading);
  const written = plainNumerals(text, options);
  requireNoPlusMinus(written);
  const [told, behind] = behindReading(written);
  const [before, at, ...more] = told.split(/\sat(?:\s|$)|@/i);
  const [subject, state] = stateBehind(before as string);
  const [digits, type] = splitNumeral(subject);
  if (digits === "" || more.length > 0) refuse("syntax", reading);
  const value = parseNumeral(digits, "a finite value");
  // one that is too small to be held would be read as nothing at all
  if (value === 0 && /^[^e]*[1-9]/i.test(digits)) refuse("out-of-range", reading, "a value of zero, or beyond 5e-324");
  if (type === "") {
    refuse("missing-unit", reading, `a unit and a detector after the value, as in "${digits} mm/s rms"`);
  }
  const { unit, detector, quantity, reference } = parsedType(type);
  const known = at === undefined ? undefined : frequencyTwice(at);
  if (reference === 0) {
    requireNonNegative(value, "an amplitude of zero or more");
    return withBehind({ value, unit, detector, quantity, hertz: known }, behind, state);
  }
  const level = Object.freeze({ decibels: value, re: `${reference} ${unit}` });
  const linear = linearOf(value, reference);
  return withBehind({ value: linear, unit, detector, quantity, hertz: known, level }, behind, state);
}

/**
 * The reading itself, read if it is a text, held against the catalogues if it is taken apart.
 *
 * @throws {@link VeladisError} all of {@link parseAmplitude}
 */
export function amplitudeOf(reading: string | Amplitude): Amplitude {
  return inPlace({ parameter: "reading" }, () =>
    typeof reading === "object" && reading !== null ? checkedAmplitude(reading) : parsedReading(reading),
  );
}
