import { convertAmplitude, linearTypeOf } from "../amplitude/index";
import { type Amplitude, amplitudeIn } from "../reading/index";

/** What a device without an error would show at a known level, in unit and detector of what it shows. */
export function expectedReading({
  known,
  shown,
  expected,
}: {
  readonly known: Amplitude;
  readonly shown: Amplitude;
  /** As it was found before. */
  readonly expected?: Amplitude;
}): Amplitude {
  if (expected !== undefined) return expected;
  const hertz = known.hertz ?? shown.hertz;
  const type = linearTypeOf(shown);
  const at = hertz === undefined ? {} : { at: { hertz } };
  const { value } = convertAmplitude(known, type, at);
  return amplitudeIn(type, value, hertz);
}
