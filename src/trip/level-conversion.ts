import { convertAmplitude } from "../amplitude/index";
import { shown, VeladisError } from "../core/index";
import type { TripRules } from "../device/index";
import { type Assumption, agreedHertz, amplitudeIn, parsedType } from "../reading/index";
import type { RunOptions } from "./run-options";

/** How levels become levels in unit and detector of the threshold. */
export interface LevelConversion {
  /** What every level is multiplied with. */
  readonly factor: number;
  readonly assumed: readonly Assumption[];
}

/** The conversion from levels as they are written to the unit of the threshold. */
export function levelConversion({ threshold, type }: TripRules, { as, at }: RunOptions): LevelConversion {
  if (as === undefined) return { factor: 1, assumed: [] };
  const from = parsedType(as);
  if (from.reference !== 0) {
    throw new VeladisError("out-of-range", {
      expected: 'a linear unit for the levels, such as "mm/s rms"',
      received: shown(as),
    });
  }
  const hertz = agreedHertz(threshold.hertz, at);
  const { value, assumed } = convertAmplitude(amplitudeIn(from, 1), type, hertz === undefined ? {} : { at: { hertz } });
  return { factor: value, assumed };
}
