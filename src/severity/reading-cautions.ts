import type { Amplitude } from "../reading/index";

const CLIPPED = "the reading is above the range of its loop: the vibration may be larger than it says";
const ZERO = "a reading of zero: see that the machine runs and the sensor measures";

const none: readonly string[] = /* @__PURE__ */ Object.freeze([]);

/** What to know of readings that came by a current loop above its range, or are zero; nothing for all others. */
export function readingCautions(readings: readonly Amplitude[]): readonly string[] {
  if (readings.every(({ state, value }) => state === undefined && value !== 0)) return none;
  return [
    ...(readings.some(({ state }) => state === "above range") ? [CLIPPED] : []),
    ...(readings.some(({ value }) => value === 0) ? [ZERO] : []),
  ];
}
