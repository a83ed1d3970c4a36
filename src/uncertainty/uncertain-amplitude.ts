import { type Amplitude, amplitudeOf } from "../reading/index";
import { parseUncertain } from "./parse-uncertain";

/** The reading itself, read with its uncertainty if it is a text, held against the catalogues if it is taken apart. */
export function uncertainAmplitude(reading: string | Amplitude): Amplitude {
  return typeof reading === "string" ? parseUncertain(reading) : amplitudeOf(reading);
}
