import { type ConvertedAmplitude, convertAmplitude } from "../amplitude/index";
import { type Amplitude, type Assumption, BOUND_NOTE, ownHistory, type Step } from "../reading/index";

/** True for what a bound by the running frequency assumes too: not that this is the only frequency. */
export const isAssumedOfBound = (one: Assumption): boolean => one !== "one-frequency";

/**
 * A reading carried to another quantity by the running frequency, as the least or the most that it can be there. That
 * takes no vibration of one frequency, as a conversion does: only that nothing lies below.
 */
export function carriedAsBound(reading: Amplitude, as: string, hertz: number): ConvertedAmplitude {
  const carried = convertAmplitude(reading, as, { at: { hertz } });
  if (reading.assumed?.includes("one-frequency")) return carried;
  const history = carried.history as readonly Step[];
  const { assumed = [], ...last } = history.at(-1) as Step;
  const own = Object.freeze(assumed.filter(isAssumedOfBound));
  const step: Step = { ...last, ...(own.length > 0 && { assumed: own }), note: BOUND_NOTE };
  return Object.freeze({
    ...carried,
    assumed: Object.freeze(carried.assumed.filter(isAssumedOfBound)),
    history: ownHistory([...history.slice(0, -1), Object.freeze(step)]),
  });
}
