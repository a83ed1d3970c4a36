import type { ConvertedAmplitude } from "../amplitude/index";
import { type Amplitude, amplitudeIn, ownHistory, type Step, typeOf } from "../reading/index";

/** What readings had in common, beside their values. */
export type Likeness = Pick<Amplitude, "unit" | "detector" | "hertz" | "assumed" | "crestFactor" | "state">;

/**
 * A statistic of several readings as an amplitude. Its history is one step, with what was assumed for any of them:
 * the histories of thousands would tell nobody anything.
 */
export function statisticAmplitude(value: number, name: string, readings: Likeness): ConvertedAmplitude {
  const { unit, detector, hertz, assumed = [], crestFactor, state } = readings;
  const type = typeOf(unit, detector);
  const step: Step = Object.freeze({
    does: "statistic",
    value,
    type: type.type,
    note: assumed.length === 0 ? name : `${name}; assumed: ${assumed.join(", ")}`,
    ...(assumed.length > 0 && { assumed }),
  });
  return Object.freeze({
    ...amplitudeIn(type, value, hertz),
    assumed,
    ...(crestFactor !== undefined && { crestFactor }),
    ...(state !== undefined && { state }),
    history: ownHistory([step]),
  });
}
