import { amplitudeIn, convertAmplitude, parsedType } from "../amplitude/index";
import { shown, VeladisError } from "../core/index";
import type { TripRules } from "../device/index";
import type { RunOptions } from "./run-options";

/** Factor from levels as they are written to the unit of the threshold. */
export function factorTo({ threshold, type }: TripRules, { as, at }: RunOptions): number {
  if (as === undefined) return 1;
  const frequency = at ?? (threshold.hertz === undefined ? undefined : { hertz: threshold.hertz });
  const from = parsedType(as);
  if (from.reference !== 0) {
    throw new VeladisError("out-of-range", {
      expected: 'a linear unit for the levels, such as "mm/s rms"',
      received: shown(as),
    });
  }
  return convertAmplitude(amplitudeIn(from, 1), type, frequency === undefined ? {} : { at: frequency }).value;
}
