import { convertAmplitude, linearTypeOf } from "../amplitude/index";
import { type Amplitude, amplitudeIn } from "../reading/index";

/** What a device without an error would show at a known level, in unit and detector of what it shows. */
export function expectedReading(known: Amplitude, shown: Amplitude): Amplitude {
  const hertz = known.hertz ?? shown.hertz;
  const type = linearTypeOf(shown);
  const at = hertz === undefined ? {} : { at: { hertz } };
  const { value } = convertAmplitude(known, type, at);
  return amplitudeIn(type, value, hertz);
}
