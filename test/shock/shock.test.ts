import {
  detectedLevels,
  type ImmunitySettings,
  shockImmunity,
  shockOnRunning,
  TripLogic,
  velocityOf,
} from "veladis/protection";
import { describe, expect, it } from "vitest";

const settings = {
  threshold: "0.35 in/s pk",
  hysteresis: "10 %",
  onDelay: 0,
  timerResets: "below threshold",
  detector: { kind: "rms", averaging: 1 },
} as const satisfies ImmunitySettings;
const running = "0.12 in/s pk at 1180 r/min";
const relay = { sensorFault: "alarm", latching: false, contact: "normally open", coil: "normally energised" } as const;

/** Whether the device trips on a shock, the long way: waveform, velocity, detector, trip logic. */
function tripsOn(device: ImmunitySettings, peak: number, milliseconds: number, seconds: number): boolean {
  const rate = 10_000;
  return [0, 1, 2, 3, 4, 5].some((sixth) => {
    const wave = shockOnRunning({
      running,
      shock: { peak: `${peak} g pk`, milliseconds, time: 1 },
      rate,
      seconds,
      phase: (sixth * Math.PI) / 3,
    });
    const velocity = velocityOf(wave, rate, 10);
    const rms = device.detector.kind === "rms";
    const mmPerSecond = 25.4 * 0.12;
    const levels = detectedLevels(velocity.subarray(rate / 2), {
      rate,
      detector: device.detector,
      initial: (mmPerSecond / 1000) * (rms ? Math.SQRT1_2 : 1),
    });
    const logic = new TripLogic({ ...device, ...relay });
    const events = logic.run(levels, 1 / rate, { as: rms ? "m/s rms" : "m/s pk" });
    return events.some(({ event }) => event === "trip");
  });
}

describe("detectors", () => {
  it("RMS follows a step to 1 - 1/e of its square in one time constant", () => {
    const levels = detectedLevels(new Float64Array(3000).fill(2), {
      rate: 1000,
      detector: { kind: "rms", averaging: 1 },
    });
    expect((levels[999] as number) ** 2).toBeCloseTo(4 * (1 - Math.exp(-1)), 12);
  });

  it("peak holds and falls to 1/e in one time constant", () => {
    const wave = new Float64Array(2001);
    wave[0] = 5;
    const levels = detectedLevels(wave, { rate: 1000, detector: { kind: "peak", decay: 2 } });
    expect(levels[2000]).toBeCloseTo(5 / Math.E, 12);
  });

  it("of a sine read its RMS and its peak", () => {
    const sine = Float64Array.from({ length: 50_000 }, (_, i) => 3 * Math.sin((2 * Math.PI * 30 * i) / 5000));
    const rms = detectedLevels(sine, { rate: 5000, detector: { kind: "rms", averaging: 1 } });
    expect(rms[49_999]).toBeCloseTo(3 / Math.SQRT2, 2);
    const peak = detectedLevels(sine, { rate: 5000, detector: { kind: "peak", decay: 1 } });
    expect(peak[49_999]).toBeGreaterThan(2.9);
  });

  it("refuse what is no waveform and no detector", () => {
    const detector = { kind: "rms", averaging: 1 } as const;
    expect(() => detectedLevels([1, Number.NaN, 1], { rate: 1, detector })).toThrow(/index 1/);
    expect(() => detectedLevels([1], { rate: 0, detector })).toThrow(expect.objectContaining({ code: "not-positive" }));
    expect(() => detectedLevels([1], { rate: 1, detector: { kind: "mean" } as never })).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    );
  });
});

describe("velocity of a shock", () => {
  it("steps by 2 A T / pi, the area of a half-sine, where the high-pass is far below", () => {
    const rate = 100_000;
    const wave = shockOnRunning({
      running: "0 mm/s rms at 30 Hz",
      shock: { peak: "10 g pk", milliseconds: 2, time: 0.01 },
      rate,
      seconds: 0.02,
    });
    const velocity = velocityOf(wave, rate, 0.1);
    expect(velocity[1300]).toBeCloseTo((2 * 98.0665 * 0.002) / Math.PI, 3);
  });

  it("reads 0.707 of a sine at the corner", () => {
    const rate = 20_000;
    const omega = 2 * Math.PI * 10;
    const wave = Float64Array.from({ length: 5 * rate }, (_, i) => omega * Math.cos((omega * i) / rate));
    const last = velocityOf(wave, rate, 10).slice(-rate);
    expect(Math.max(...last)).toBeCloseTo(Math.SQRT1_2, 4);
  });
});

describe("shock immunity", () => {
  const devices: [string, ImmunitySettings, number, number][] = [
    ["RMS of 1 s, no delay", settings, 11, 1.5],
    ["RMS of 0.1 s, delay of 0.2 s", { ...settings, onDelay: 0.2, detector: { kind: "rms", averaging: 0.1 } }, 11, 2],
    ["peak falling in 2 s, delay of 3 s", { ...settings, onDelay: 3, detector: { kind: "peak", decay: 2 } }, 5, 6],
  ];

  it.each(devices)(
    "%s: the largest shock does not trip the whole chain, a little more does",
    (_, device, length, seconds) => {
      const [shock] = shockImmunity(device, running, { milliseconds: [length], multiples: [] }).shocks;
      const largest = shock?.largest?.value as number;
      expect(tripsOn(device, largest * 0.97, length, seconds)).toBe(false);
      expect(tripsOn(device, largest * 1.05, length, seconds)).toBe(true);
    },
  );

  it("RMS averaging rides out more than a peak detector, and a delay more than none", () => {
    const of = (device: ImmunitySettings) =>
      shockImmunity(device, running, { milliseconds: [5], multiples: [] }).shocks[0]?.largest?.value as number;
    const peak = { kind: "peak", decay: 2 } as const;
    expect(of({ ...settings, detector: peak })).toBeLessThan(of(settings));
    expect(of(settings)).toBeLessThan(of({ ...settings, onDelay: 3 }));
    // a peak that falls slowly outlasts the delay
    expect(of({ ...settings, onDelay: 3, detector: peak })).toBeLessThan(of({ ...settings, onDelay: 3 }));
  });

  it("the longest burst does not trip the detector and the logic, a little longer does", () => {
    const device = { ...settings, onDelay: 2 };
    const rate = 1000;
    for (const { level, longest } of shockImmunity(device, running, { milliseconds: [], multiples: [1.5, 3] }).bursts) {
      const trips = (seconds: number) => {
        const square = Float64Array.from({ length: 20 * rate }, (_, i) => (i < seconds * rate ? level.value : 0.12));
        const levels = detectedLevels(square, { rate, detector: device.detector, initial: 0.12 });
        return new TripLogic({ ...device, ...relay }).run(levels, 1 / rate).some(({ event }) => event === "trip");
      };
      expect(trips(longest - 0.01)).toBe(false);
      expect(trips(longest + 0.01)).toBe(true);
    }
  });

  it("refuses running above the threshold, without a frequency, and a threshold in displacement", () => {
    const refused = (device: ImmunitySettings, at: string) => () => shockImmunity(device, at);
    expect(refused(settings, "0.4 in/s pk at 1180 r/min")).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(refused(settings, "0.12 in/s pk")).toThrow(expect.objectContaining({ code: "missing-frequency" }));
    expect(refused({ ...settings, threshold: "100 um pp" }, "20 um pp at 1180 r/min")).toThrow(
      expect.objectContaining({ code: "wrong-quantity" }),
    );
  });
});
