import type { Amplitude, LoopState } from "../reading/index";

const words: Readonly<Partial<Record<LoopState, string>>> = {
  "above range": "the reading is above the range of its loop: the vibration may be larger than it says",
  "below range":
    "the reading is below the range of its loop and stands for its start: see that the sensor still measures",
};

const none: readonly string[] = /* @__PURE__ */ Object.freeze([]);

/** What to know of readings that came by a current loop and lay outside its range; nothing for all others. */
export function loopCautions(readings: readonly Amplitude[]): readonly string[] {
  if (readings.every(({ state }) => state === undefined)) return none;
  return [...new Set(readings.flatMap(({ state }) => (state && words[state]) ?? []))];
}
