import { type Amplitude, amplitudeOf } from "../reading/index";
import { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";

/**
 * A reading in another type. One that says its frequency itself keeps it; the frequency of the machine serves a reading
 * that says none.
 */
export function convertedAt(reading: string | Amplitude, to: string, hertz: number | undefined): ConvertedAmplitude {
  const amplitude = amplitudeOf(reading);
  const serves = hertz !== undefined && amplitude.hertz === undefined;
  return convertAmplitude(amplitude, to, serves ? { at: { hertz } } : {});
}
