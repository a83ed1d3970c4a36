import type { Amplitude } from "./amplitude";
import { format } from "./format";
import { amplitudeOf } from "./parse-amplitude";
import { lostPlusMinus } from "./plus-minus";
import { isUncertain } from "./uncertainty";

/**
 * As {@link amplitudeOf}, where an uncertainty would be lost: an object that has one is refused as a text with ± is.
 *
 * @throws {@link VeladisError} `syntax`, and all of {@link parseAmplitude}
 */
export function exactAmplitude(reading: string | Amplitude): Amplitude {
  const amplitude = amplitudeOf(reading);
  if (!isUncertain(amplitude.history ?? [])) return amplitude;
  throw lostPlusMinus(`${format(amplitude)} with its uncertainty`);
}
