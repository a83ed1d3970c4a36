import fc from "fast-check";
import { TripLogic } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";
import { settings } from "./trip-settings";

const run = (levels: ArrayLike<number>, nan?: "sensor fault") => {
  const logic = new TripLogic(settings);
  return logic.run(levels, 1, nan === undefined ? {} : { nan });
};
const BAD = [
  [-1, "negative"],
  [Number.NaN, "not-a-number"],
  [Number.POSITIVE_INFINITY, "not-finite"],
  [Number.NEGATIVE_INFINITY, "negative"],
] as const;

describe("levels that are no amplitudes", () => {
  it("are found wherever they stand, however long the history", () => {
    const places = fc.record({ length: fc.integer({ min: 1, max: 40 }), at: fc.nat(), bad: fc.constantFrom(...BAD) });
    fc.assert(
      fc.property(places, ({ length, at, bad: [level, code] }) => {
        const levels = new Float64Array(length).fill(0.1);
        levels[at % length] = level;
        for (const given of [levels, Array.from(levels)]) {
          const refusal = refusalOf(() => run(given));
          expect(refusal.code).toBe(code);
          expect(refusal.expected).toContain(`at index ${at % length};`);
        }
      }),
    );
  });

  it("are found in pairs too: no two make up for one another", () => {
    for (const [level, code] of BAD) {
      for (let first = 0; first < 20; first++) {
        for (let second = first + 1; second < 20; second++) {
          const levels = new Float64Array(20).fill(0.1);
          levels[first] = level;
          levels[second] = level;
          const refusal = refusalOf(() => run(levels));
          expect([refusal.code, refusal.expected.includes(`at index ${first};`)]).toEqual([code, true]);
        }
      }
    }
  });

  it("are all that is refused: zero of either sign and the largest number are levels, beside a failed sensor also", () => {
    const { MAX_VALUE, NaN: fault } = Number;
    expect(run([0, -0, MAX_VALUE, MAX_VALUE]).map(({ event }) => event)).toEqual(["trip"]);
    expect(run([0, fault, fault, -0, MAX_VALUE], "sensor fault").map(({ event }) => event)).toEqual([
      "fault",
      "trip",
      "fault over",
    ]);
  });
});
