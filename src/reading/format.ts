import { inPlace, requireGiven, shown, VeladisError, withParameters } from "../core/index";
import { type Amplitude, isClipped } from "./amplitude";
import { checkedAmplitude, FORM } from "./checked-amplitude";
import type { FormatOptions } from "./format-options";
import { localized } from "./localized";
import { parsedType } from "./parsed-type";
import { significant } from "./significant";
import type { ReadingType } from "./types";

/** A level to a tenth of a decibel, finer when more than three digits are asked for. */
function decibelText(decibels: number, digits = 3): string {
  significant(decibels, digits);
  // a level a hair below its reference is at it
  return unsignedZero(decibels.toFixed(Math.max(1, digits - 2)));
}

const unsignedZero = (text: string): string => text.replace(/^-(?=[0.]*$)/, "");

/** The number of a reading, a level or a linear one, by the digits that are asked for. */
function numberText(value: number, isLevel: boolean, { digits, fixed }: FormatOptions): string {
  if (fixed === undefined) return isLevel ? decibelText(value, digits) : significant(value, digits);
  significant(value);
  if (digits === undefined && Number.isInteger(fixed) && fixed >= 0 && fixed <= 20) {
    return unsignedZero(value.toFixed(fixed)).replace("e+", "e");
  }
  throw new VeladisError("out-of-range", {
    expected: "0 to 20 digits behind the point, and no significant digits beside them",
    received: shown(digits ?? fixed),
    parameter: "options",
    option: "fixed",
  });
}

/**
 * A reading as an engineer writes it: few digits, then unit and detector. One that came by a loop out of its range says
 * so behind them, since the true one is unknown. An uncertainty is not written: this is the best value, and
 * `formatUncertain` of `veladis/uncertainty` writes both.
 *
 * @param reading - an amplitude, or a value followed by its reading type
 * @throws {@link VeladisError} `not-a-number`, `not-finite`, `out-of-range` for the digits, `unknown-option` for a locale that
 *   is not known
 * @example
 * ```ts
 * import { convertAmplitude, format } from "veladis";
 * import { currentLoop } from "veladis/sensor";
 *
 * format(7.184205000001, "mm/s rms"); // => "7.18 mm/s rms"
 * format(7.184205000001, "mm/s rms", { digits: 5 }); // => "7.1842 mm/s rms"
 * format(convertAmplitude("0.25 in/s pk", "mm/s rms")); // => "4.49 mm/s rms"
 * format(94.97, "dB re 1 nm/s"); // => "95.0 dB re 1 nm/s"
 * format(1234.5, "um/s2 pk", { fixed: 1, locale: "de-DE", symbols: "typographic" }); // => "1234,5 µm/s² pk"
 * format(currentLoop("0 to 16 mm/s rms").reading(20.9)); // => "16.5 mm/s rms (above range)"
 * ```
 */
export function format(reading: Amplitude, options?: FormatOptions): string;
export function format(value: number, type: ReadingType, options?: FormatOptions): string;
export function format(
  reading: Amplitude | number,
  typeOrOptions?: ReadingType | FormatOptions,
  options?: FormatOptions,
): string {
  if (typeof reading === "number") {
    const type = typeOrOptions as string;
    return withParameters({ options, type, value: reading }, () => {
      const { reference, type: plain } = inPlace({ parameter: "type" }, () => parsedType(type));
      return localized(`${numberText(reading, reference !== 0, options ?? {})} ${plain}`, options ?? {});
    });
  }
  const asked = (typeOrOptions ?? {}) as FormatOptions;
  return withParameters({ options: asked, reading }, () => {
    const { value, unit, detector, level, state } = checkedAmplitude(requireGiven(reading, FORM));
    const clipped = isClipped(state) ? ` (${state})` : "";
    const type = level ? `dB re ${level.re}` : `${unit} ${detector}`;
    return localized(`${numberText(level?.decibels ?? value, level !== undefined, asked)} ${type}${clipped}`, asked);
  });
}
