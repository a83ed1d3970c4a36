import { requireGiven, withParameters } from "../core/index";
import type { Amplitude } from "./amplitude";
import { assumedText } from "./assumptions";
import { FORM } from "./checked-amplitude";
import { format } from "./format";
import type { FormatOptions } from "./format-options";
import { localized } from "./localized";
import { significant } from "./significant";
import { isUncertain } from "./uncertainty";

/** A number without zeros at its end: few digits, and none that say nothing. */
export function plainNumber(value: number, digits = 6): string {
  const [mantissa = "", exponent] = significant(value, digits).split("e");
  const short = mantissa.includes(".") ? mantissa.replace(/\.?0+$/, "") : mantissa;
  return exponent === undefined ? short : `${short}e${exponent}`;
}

/** A frequency behind a reading, as people on the plant say it. */
function atText(hertz: number | undefined, digits: number): string {
  return hertz === undefined ? "" : ` at ${plainNumber(hertz, digits)} Hz (${plainNumber(60 * hertz, digits)} r/min)`;
}

/** {@link readingText} of the best value: what is known of its uncertainty is left out without a word. */
export function bestValueText(reading: Amplitude, options: FormatOptions): string {
  const { hertz, crestFactor, assumed = [] } = reading;
  const { digits, fixed } = options;
  const words = assumedText(reading);
  const text = [
    format(reading, { ...(digits !== undefined && { digits }), ...(fixed !== undefined && { fixed }) }),
    atText(hertz, Math.max(6, digits ?? 6)),
    crestFactor === undefined || assumed.includes("crest-factor") ? "" : `, crest factor ${crestFactor}`,
    words === "" ? "" : `  ${words}`,
  ].join("");
  return localized(text, options);
}

/**
 * A reading with all that it says of itself, so that {@link parseAmplitude} reads it back whole: value and type, its
 * frequency, its crest factor, and in brackets what was assumed on the way to it.
 *
 * Of a reading with an uncertainty it writes the best value and `(± left out)` behind it, and {@link parseAmplitude}
 * refuses that text: `formatUncertain` of `veladis/uncertainty` writes value and uncertainty.
 *
 * @throws {@link VeladisError} as {@link format} and {@link assumedText}
 * @example
 * ```ts
 * import { convertAmplitude, parseAmplitude, readingText } from "veladis";
 *
 * const text = readingText(convertAmplitude("3 mil pp at 1480 r/min", "mm/s rms"));
 * text; // => "4.18 mm/s rms at 24.6667 Hz (1480 r/min)  (one frequency, sine)"
 * parseAmplitude(text).assumed; // => ["one-frequency", "sine"]
 * readingText(parseAmplitude("2 g rms, crest factor 4")); // => "2.00 g rms, crest factor 4"
 * readingText(parseAmplitude("2 mm/s rms at 25.5 Hz"), { locale: "fr-FR" }); // => "2,00 mm/s rms at 25,5 Hz (1530 r/min)"
 * ```
 */
export function readingText(reading: Amplitude, options: FormatOptions = {}): string {
  return withParameters({ options, reading }, () => {
    requireGiven(reading, FORM);
    requireGiven(options, "how a reading is written, such as { digits: 4 }", { parameter: "options" });
    const text = bestValueText(reading, options);
    return isUncertain(reading.history ?? []) ? `${text}  (± left out)` : text;
  });
}
