import fc from "fast-check";
import { type BreakPoint, profileDensity, profileOverall, profileSlopes } from "veladis/signal";
import { describe, expect, it } from "vitest";
import { expectClose } from "./close";

/** The same integral by the trapezoidal rule on a fine logarithmic grid, with `(2 pi f)^-2` for each integration. */
function byGrid(points: readonly BreakPoint[], integrations: number): number {
  let sum = 0;
  for (let i = 1; i < points.length; i++) {
    const [f1, f2] = [(points[i - 1] as BreakPoint)[0], (points[i] as BreakPoint)[0]];
    const steps = 4000;
    const at = (k: number): number => (k === steps ? f2 : f1 * (f2 / f1) ** (k / steps));
    const y = (f: number): number => (f * profileDensity(points, f)) / (2 * Math.PI * f) ** (2 * integrations);
    for (let k = 0; k < steps; k++) sum += ((y(at(k)) + y(at(k + 1))) / 2) * Math.log(at(k + 1) / at(k));
  }
  return Math.sqrt(sum);
}

const profile = fc
  .array(fc.tuple(fc.double({ min: 1.05, max: 4, noNaN: true }), fc.double({ min: -6, max: 1, noNaN: true })), {
    minLength: 2,
    maxLength: 5,
  })
  .map((rows) => {
    let f = 5;
    return rows.map(([ratio, exponent]): BreakPoint => {
      f *= ratio;
      return [f, 10 ** exponent];
    });
  });

describe("level of a profile", () => {
  it.each([
    ["m/s2 rms", 0],
    ["m/s rms", 1],
    ["m rms", 2],
  ] as const)("%s is the integral of its density over the power of 2 pi f", (as, integrations) => {
    fc.assert(
      fc.property(profile, (points) => {
        const { value } = profileOverall(points, { unit: "(m/s2)2/Hz", as });
        expectClose(value, byGrid(points, integrations), 1e-5);
      }),
      { numRuns: 15 },
    );
  });

  it("closed forms: flat, slope -1 exactly, and velocity of a flat acceleration density", () => {
    const unit = "(m/s2)2/Hz";
    expectClose(
      profileOverall(
        [
          [10, 2],
          [1010, 2],
        ],
        { unit, as: "m/s2 rms" },
      ).value,
      Math.sqrt(2000),
      1e-14,
    );
    expectClose(
      profileOverall(
        [
          [10, 1],
          [1000, 0.01],
        ],
        { unit, as: "m/s2 rms" },
      ).value,
      Math.sqrt(10 * Math.log(100)),
      1e-14,
    );
    // integral of S / (2 pi f)^2 from 10 to 100 Hz
    const velocity = Math.sqrt((1 / 10 - 1 / 100) / (4 * Math.PI ** 2));
    expectClose(
      profileOverall(
        [
          [10, 1],
          [100, 1],
        ],
        { unit, as: "m/s rms" },
      ).value,
      velocity,
      1e-14,
    );
    // a density that rises with f is one of slope -1 when integrated once: S / (2 pi f)^2 = 1 / (4 pi^2 f)
    const log = Math.sqrt(Math.log(10) / (4 * Math.PI ** 2));
    expectClose(
      profileOverall(
        [
          [10, 10],
          [100, 100],
        ],
        { unit, as: "m/s rms" },
      ).value,
      log,
      1e-14,
    );
  });

  it("is smooth through a slope of -1", () => {
    const level = (exponent: number): number =>
      profileOverall(
        [
          [10, 1],
          [100, 10 ** exponent],
        ],
        { unit: "g2/Hz", as: "g rms" },
      ).value;
    const exact = level(-1);
    for (const off of [1e-15, 1e-12, 1e-9, 1e-6]) {
      expect(Math.abs(level(-1 + off) / exact - 1)).toBeLessThan(2 * off + 1e-14);
      expect(Math.abs(level(-1 - off) / exact - 1)).toBeLessThan(2 * off + 1e-14);
    }
  });

  it("steep segments do not overflow", () => {
    for (const [low, high] of [
      [1e-300, 1e3],
      [1e3, 1e-300],
    ] as const) {
      const { value } = profileOverall(
        [
          [78, low],
          [79, high],
        ],
        { unit: "g2/Hz", as: "g rms" },
      );
      // an exponential from end to end: height times width over the logarithm of the ratio, nearly
      expectClose(value, Math.sqrt(1e3 / (Math.log(1e303) + 1)), 0.02);
    }
    expect(
      profileSlopes([
        [78, 1e-5],
        [79, 1],
      ])[0],
    ).toBeGreaterThan(2700);
  });

  it("adds up: a point on a segment changes nothing", () => {
    const ends: BreakPoint[] = [
      [20, 0.0053],
      [150, 0.04],
    ];
    const middle: BreakPoint = [70, profileDensity(ends, 70)];
    for (const as of ["g rms", "in/s rms", "mil rms"] as const) {
      const whole = profileOverall(ends, { unit: "g2/Hz", as }).value;
      expectClose(
        profileOverall([ends[0] as BreakPoint, middle, ends[1] as BreakPoint], { unit: "g2/Hz", as }).value,
        whole,
        1e-13,
      );
    }
  });
});
