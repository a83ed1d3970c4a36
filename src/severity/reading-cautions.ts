import { type Amplitude, isUncertain } from "../reading/index";

const CLIPPED = "the reading is above the range of its loop: the vibration may be larger than it says";
/** What to know of a verdict on a reading of zero. */
export const ZERO_READING = "a reading of zero: see that the machine runs and the sensor measures";

/** What to know of a verdict on a reading with an uncertainty. */
export const BEST_VALUE =
  "the verdict is that of the best value and leaves the uncertainty out: see zonesWithin of veladis/uncertainty";

const none: readonly string[] = /* @__PURE__ */ Object.freeze([]);

/** What to know of readings that came by a current loop above its range, are zero or uncertain; nothing for all others. */
export function readingCautions(readings: readonly Amplitude[]): readonly string[] {
  if (readings.every(({ state, value, history }) => state === undefined && value !== 0 && history === undefined)) {
    return none;
  }
  return [
    ...(readings.some(({ state }) => state === "above range") ? [CLIPPED] : []),
    ...(readings.some(({ value }) => value === 0) ? [ZERO_READING] : []),
    ...(readings.some(({ history }) => history !== undefined && isUncertain(history)) ? [BEST_VALUE] : []),
  ];
}
