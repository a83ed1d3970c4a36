import { convert } from "veladis";
import { type PulseShape, pulseShapes, shockImmunity, shockResponse } from "veladis/protection";
import { describe, expect, it } from "vitest";

const settings = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  timerResets: "below threshold",
  onDelay: 8,
  detector: { kind: "rms", averaging: 1 },
} as const;
const running = "2.6 mm/s rms at 1485 r/min";

describe("the response to a shock", () => {
  // source: IEC 60068-2-27, velocity change of each pulse of peak A and length D (from memory); they are the integrals of
  // the shapes, so the fault of memory would show
  it.each([
    ["half-sine", 2 / Math.PI],
    ["final-peak saw-tooth", 0.5],
    ["trapezoidal", 0.9],
  ] as const)("a peak detector of velocity shows the velocity change of a %s, A D times %d", (shape, share) => {
    const { highest } = shockResponse(
      { ...settings, threshold: "9 mm/s pk", detector: { kind: "peak", decay: 2 }, highPass: 0.5 },
      "0 mm/s pk at 25 Hz",
      { peak: "3 g pk", milliseconds: 4, shape },
    );
    // mm/s: 9806.65 mm/s2 each g
    const change = 3 * 9806.65 * 0.004 * share;
    expect(highest.value / change).toBeGreaterThan(0.97);
    expect(highest.value / change).toBeLessThan(1.01);
  });

  it("trips just above the largest shock that is ridden out, and not just below", () => {
    for (const onDelay of [0, 8]) {
      const [limit] = shockImmunity({ ...settings, onDelay }, running, { milliseconds: [11] }).shocks;
      const largest = limit?.largest?.value as number;
      const response = (times: number) =>
        shockResponse({ ...settings, onDelay }, running, { peak: `${largest * times} g pk`, milliseconds: 11 });
      expect([response(0.999).trips, response(1.001).trips]).toEqual([false, true]);
    }
  });

  it("an acceleration peak detector without running vibration shows the peak, for as long as it decays to the threshold", () => {
    const peak = { ...settings, threshold: "2 g pk", onDelay: 3, detector: { kind: "peak", decay: 2 } } as const;
    const { highest, above, trips, margin } = shockResponse(peak, "0 g pk at 25 Hz", {
      peak: "6 g pk",
      milliseconds: 11,
    });
    expect(highest.value).toBeCloseTo(6, 2);
    // an exponential decay from 6 to 2 with a time constant of 2 s
    expect(above).toBeCloseTo(2 * Math.log(3), 1);
    expect(trips).toBe(false);
    expect(margin).toBeCloseTo(3 - 2 * Math.log(3), 1);
  });

  it("a shock that does not reach the threshold leaves all of the delay", () => {
    const found = shockResponse(settings, running, { peak: "0.5 g pk", milliseconds: 5 });
    expect(found).toMatchObject({ above: 0, trips: false, margin: 8 });
    expect(found.highest.value).toBeGreaterThan(convert(2.6, "mm/s rms", "mm/s rms"));
    expect(found.highest.value).toBeLessThan(9);
  });

  it("shapes begin and end at rest or at their peak, and never leave 0 to 1", () => {
    for (const shape of Object.keys(pulseShapes) as PulseShape[]) {
      const values = Array.from({ length: 101 }, (_, i) => pulseShapes[shape](i / 100));
      expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...values)).toBe(1);
    }
  });

  /** Highest velocity behind a second-order high-pass, in mm/s of a peak of 1 g, by Runge-Kutta in 4000 steps a pulse. */
  function integrated(shape: PulseShape, seconds: number, corner: number): number {
    const omega = 2 * Math.PI * corner;
    const slope = (a: number, [x, y]: readonly [number, number]): [number, number] => [
      a - Math.SQRT2 * omega * x - omega * omega * y,
      x,
    ];
    const step = seconds / 4000;
    let state: [number, number] = [0, 0];
    let highest = 0;
    for (let i = 0; i < 4000; i++) {
      const at = (share: number): number => pulseShapes[shape](Math.min(1, (i + share) / 4000));
      const add = (by: number, k: readonly [number, number]): [number, number] => [
        state[0] + by * step * k[0],
        state[1] + by * step * k[1],
      ];
      const k1 = slope(at(0), state);
      const k2 = slope(at(0.5), add(0.5, k1));
      const k3 = slope(at(0.5), add(0.5, k2));
      const k4 = slope(at(1), add(1, k3));
      state = [0, 1].map(
        (n) =>
          (state[n] as number) +
          (step / 6) * [k1, k2, k3, k4].reduce((sum, k, m) => sum + ([1, 2, 2, 1][m] as number) * (k[n] as number), 0),
      ) as [number, number];
      highest = Math.max(highest, Math.abs(state[0]));
    }
    return highest * 9806.65;
  }

  // independent model: the differential equation of the high-pass, not its samples
  it.each(
    (Object.keys(pulseShapes) as PulseShape[]).flatMap((shape) =>
      [
        [1, 10],
        [6, 2],
        [11, 10],
        [30, 10],
      ].map(([milliseconds = 0, corner = 0]) => ({ shape, milliseconds, corner })),
    ),
  )("a $shape of $milliseconds ms behind $corner Hz is what its differential equation gives", (asked) => {
    const { shape, milliseconds, corner } = asked;
    const { highest } = shockResponse(
      { ...settings, threshold: "9 mm/s pk", detector: { kind: "peak", decay: 2 }, highPass: corner },
      "0 mm/s pk at 25 Hz",
      { peak: "3 g pk", milliseconds, shape },
    );
    const ratio = highest.value / (3 * integrated(shape, milliseconds / 1000, corner));
    // samples of a fall at once have half a step too much behind it, on the safe side
    expect(ratio).toBeGreaterThan(0.9985);
    expect(ratio).toBeLessThan(shape === "final-peak saw-tooth" ? 1.005 : 1.0015);
  });

  it("a saw-tooth is seen up to its peak", () => {
    const { highest, trips } = shockResponse(
      { ...settings, threshold: "4.95 g pk", onDelay: 0, detector: { kind: "peak", decay: 2 } },
      "0 g pk at 1485 r/min",
      { peak: "5 g pk", milliseconds: 11, shape: "final-peak saw-tooth" },
    );
    expect(highest.value).toBeCloseTo(5, 12);
    expect(trips).toBe(true);
  });
});
