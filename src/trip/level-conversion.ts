import { convertAmplitude } from "../amplitude/index";
import { inPlace, shown, VeladisError } from "../core/index";
import type { TripRules } from "../device/index";
import { type Assumption, agreedHertz, amplitudeIn, parsedType, type Step } from "../reading/index";
import { requireLevels } from "./require-levels";
import type { RunOptions } from "./run-options";

/** How levels become levels in unit and detector of the threshold. */
export interface LevelConversion {
  /** What every level is multiplied with. */
  readonly factor: number;
  readonly assumed: readonly Assumption[];
  /** The steps of a level of 1; none where levels are in the unit of the threshold. */
  readonly ofOne: readonly Step[];
}

const AS = { parameter: "options", option: "as" };

/** The conversion from levels as they are written to the unit of the threshold. */
export function levelConversion(
  { threshold, type }: TripRules,
  { as, at }: Pick<RunOptions, "as" | "at">,
): LevelConversion {
  if (as === undefined) return { factor: 1, assumed: [], ofOne: [] };
  const from = inPlace(AS, () => parsedType(as));
  if (from.reference !== 0) {
    throw new VeladisError("out-of-range", {
      expected: 'a linear unit for the levels, such as "mm/s rms"',
      received: shown(as),
      ...AS,
    });
  }
  const hertz = agreedHertz(threshold.hertz, at);
  // what is missing then is the frequency, of which the conversion tells
  const one = inPlace(hertz === undefined ? { parameter: "options" } : AS, () =>
    convertAmplitude(amplitudeIn(from, 1), type, hertz === undefined ? {} : { at: { hertz } }),
  );
  return { factor: one.value, assumed: one.assumed, ofOne: one.value === 1 ? [] : (one.history as readonly Step[]) };
}

/**
 * Levels in unit and detector of the threshold, every one checked, and what their conversion assumed.
 *
 * @param faults - whether NaN stands for a sensor fault
 */
export function scaledLevels(
  levels: ArrayLike<number>,
  conversion: LevelConversion,
  faults: boolean,
): LevelConversion & { readonly levels: Float64Array } {
  const checked = requireLevels(levels, faults);
  const { factor } = conversion;
  if (factor === 1) return { levels: checked, ...conversion };
  const scaled = checked.map((level) => level * factor);
  return { levels: requireLevels(scaled, faults), ...conversion };
}
