import { requireGiven } from "../core/index";
import { type Amplitude, isClipped } from "./amplitude";
import { checkedAmplitude } from "./checked-amplitude";
import { parsedType } from "./parsed-type";
import { significant } from "./significant";
import type { ReadingType } from "./types";

/** How a reading is written. */
export interface FormatOptions {
  /** Significant digits, 1 to 17; 3 if not given. A level has the same number of digits to 0.1 dB at the least. */
  readonly digits?: number;
}

/** A level to a tenth of a decibel, finer when more than three digits are asked for. */
function decibelText(decibels: number, digits = 3): string {
  significant(decibels, digits);
  // a level a hair below its reference is at it
  return decibels.toFixed(Math.max(1, digits - 2)).replace(/^-(?=[0.]*$)/, "");
}

/**
 * A reading as an engineer writes it: few digits, then unit and detector. One that came by a loop out of its range says
 * so behind them, since the true one is unknown. An uncertainty is not written: this is the best value, and
 * `formatUncertain` of `veladis/uncertainty` writes both.
 *
 * @param reading - an amplitude, or a value followed by its reading type
 * @throws {@link VeladisError} `not-a-number`, `not-finite`, `out-of-range` for the digits
 * @example
 * ```ts
 * import { convertAmplitude, format } from "veladis";
 * import { currentLoop } from "veladis/sensor";
 *
 * format(7.184205000001, "mm/s rms"); // => "7.18 mm/s rms"
 * format(7.184205000001, "mm/s rms", { digits: 5 }); // => "7.1842 mm/s rms"
 * format(convertAmplitude("0.25 in/s pk", "mm/s rms")); // => "4.49 mm/s rms"
 * format(94.97, "dB re 1 nm/s"); // => "95.0 dB re 1 nm/s"
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
    const { reference, type } = parsedType(typeOrOptions as string);
    const number = reference === 0 ? significant : decibelText;
    return `${number(reading, options?.digits)} ${type}`;
  }
  const { digits } = (typeOrOptions ?? {}) as FormatOptions;
  const { value, unit, detector, level, state } = checkedAmplitude(
    requireGiven(reading, 'a reading such as "0.25 in/s pk at 1500 r/min"', { parameter: "reading" }),
  );
  const clipped = isClipped(state) ? ` (${state})` : "";
  if (level) return `${decibelText(level.decibels, digits)} dB re ${level.re}${clipped}`;
  return `${significant(value, digits)} ${unit} ${detector}${clipped}`;
}
