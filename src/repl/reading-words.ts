import { type Amplitude, bestValueText, format, isUncertain, readingText, significant } from "../reading/index";
import { formatUncertain } from "../uncertainty/index";

/** A reading as it is printed: with its expanded uncertainty where one is known. */
export function numberText(reading: Amplitude, digits?: number): string {
  if (isUncertain(reading.history ?? [])) return formatUncertain(reading);
  return format(reading, digits === undefined ? {} : { digits });
}

/** The frequency of a reading with its tolerance, where one was given. */
function toleranceText({ hertz, history = [] }: Amplitude): string | undefined {
  const known = history.find((step) => step.hertzUncertainty !== undefined && step.hertz === hertz);
  if (hertz === undefined || known?.hertzUncertainty === undefined) return undefined;
  return ` at ${Number(hertz.toPrecision(6))} ± ${significant(2 * known.hertzUncertainty.standard, 2)} Hz (k=2)`;
}

/** A reading with all that stands behind it, in a form that is read back. */
export function wholeText(reading: Amplitude, digits?: number): string {
  const options = digits === undefined ? {} : { digits };
  if (!isUncertain(reading.history ?? [])) return readingText(reading, options);
  const rest = bestValueText(reading, options).slice(format(reading, options).length);
  const tolerance = toleranceText(reading);
  const told = tolerance === undefined ? rest : rest.replace(/^ at \S+ Hz(?: \([^()]* r\/min\))?/, tolerance);
  return numberText(reading) + told;
}
