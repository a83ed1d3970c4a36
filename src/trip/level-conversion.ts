import { convertAmplitude } from "../amplitude/index";
import { shown, VeladisError } from "../core/index";
import type { TripRules } from "../device/index";
import { type Assumption, agreedHertz, amplitudeIn, parsedType } from "../reading/index";
import { requireLevels } from "./require-levels";
import type { RunOptions } from "./run-options";

/** How levels become levels in unit and detector of the threshold. */
export interface LevelConversion {
  /** What every level is multiplied with. */
  readonly factor: number;
  readonly assumed: readonly Assumption[];
}

/** The conversion from levels as they are written to the unit of the threshold. */
export function levelConversion(
  { threshold, type }: TripRules,
  { as, at }: Pick<RunOptions, "as" | "at">,
): LevelConversion {
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

/**
 * Levels in unit and detector of the threshold, every one checked, and what their conversion assumed.
 *
 * @param faults - whether NaN stands for a sensor fault
 */
export function scaledLevels(
  levels: ArrayLike<number>,
  rules: TripRules,
  written: Pick<RunOptions, "as" | "at">,
  faults: boolean,
): { levels: Float64Array; assumed: readonly Assumption[] } {
  const checked = requireLevels(levels, faults);
  const { factor, assumed } = levelConversion(rules, written);
  if (factor === 1) return { levels: checked, assumed };
  const scaled = checked.map((level) => level * factor);
  return { levels: requireLevels(scaled, faults), assumed };
}
