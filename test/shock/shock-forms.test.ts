import { VeladisError } from "veladis";
import {
  detectedLevels,
  type ImmunityOptions,
  type ImmunitySettings,
  shockImmunity,
  shockOnRunning,
  velocityOf,
} from "veladis/protection";
import { describe, expect, it } from "vitest";

const G = 9.80665;

// closed forms worked by hand from the definitions in the docstrings: an exponential average of the square, a peak that
// falls exponentially, a half-sine whose mean square is half that of its peak
describe("what a detector rides through, against closed forms", () => {
  const rms = (tau: number) => ({ kind: "rms", averaging: tau }) as const;
  const peak = (tau: number) => ({ kind: "peak", decay: tau }) as const;
  const base = { threshold: "2 g pk", hysteresis: "50 %", onDelay: 0, timerResets: "below threshold" } as const;
  const shocks = (
    settings: Omit<ImmunitySettings, keyof typeof base> & Partial<ImmunitySettings>,
    running: string,
    milliseconds: number,
  ) => {
    const [found] = shockImmunity({ ...base, ...settings }, running, {
      milliseconds: [milliseconds],
      multiples: [],
    }).shocks;
    return [found?.largest?.value, found?.withoutDelay?.value];
  };
  const bursts = (settings: ImmunitySettings, running: string, multiples: ImmunityOptions["multiples"]) =>
    shockImmunity(settings, running, { milliseconds: [], ...(multiples && { multiples }) }).bursts;

  it("a peak detector: shock and running vibration add up to the threshold, at the worst phase", () => {
    const [largest, withoutDelay] = shocks({ detector: peak(2) }, "0.5 g pk at 10 Hz", 1);
    expect(largest).toBeCloseTo(1.5, 2);
    expect(withoutDelay).toBe(largest);
  });

  it("a peak detector with a delay: the peak has fallen to where the delay starts over by the end of it", () => {
    const delayed = { detector: peak(2), onDelay: 2 } as const;
    const [largest, withoutDelay] = shocks(delayed, "0.5 g pk at 10 Hz", 1);
    expect(largest).toBeCloseTo(2 * Math.E - 0.5, 2);
    expect(withoutDelay).toBeCloseTo(1.5, 2);
    const lenient = shocks({ ...delayed, timerResets: "below reset level" }, "0.5 g pk at 10 Hz", 1)[0];
    expect(lenient).toBeCloseTo(1 * Math.E - 0.5, 2);
  });

  it("RMS: the energy of a short half-sine, spread over the averaging time", () => {
    const threshold = { threshold: "1 g rms" } as const;
    const [largest] = shocks({ ...threshold, detector: rms(1) }, "0.001 g rms at 10 Hz", 1);
    expect((largest as number) / Math.sqrt(2 / 0.001)).toBeCloseTo(1, 3);
    const slower = shocks({ ...threshold, detector: rms(4) }, "0.001 g rms at 10 Hz", 1)[0] as number;
    expect(slower / (largest as number)).toBeCloseTo(2, 2);
    // while the delay runs the square falls by its own time constant
    const delayed = shocks({ ...threshold, detector: rms(1), onDelay: 2 }, "0.001 g rms at 10 Hz", 1)[0] as number;
    expect(delayed / (largest as number)).toBeCloseTo(Math.E, 2);
    const lenient = { ...threshold, detector: rms(1), onDelay: 2, timerResets: "below reset level" } as const;
    expect((shocks(lenient, "0.001 g rms at 10 Hz", 1)[0] as number) / (largest as number)).toBeCloseTo(Math.E / 2, 2);
  });

  it("RMS over running vibration: only what lies above its square falls off", () => {
    // of a short half-sine g and a running peak R at its worst phase: g²T/2 + 2gR 2T/pi, spread over the averaging time
    const [seconds, tau, delay, running] = [0.001, 1, 2, 0.7];
    const settings = { threshold: "1 g rms", detector: rms(tau), onDelay: delay } as const;
    const largest = shocks(settings, `${running} g rms at 10 Hz`, 1000 * seconds)[0] as number;
    const above = (tau / seconds) * (1 - running ** 2) * Math.exp(delay / tau);
    const half = (4 * running * Math.SQRT2) / Math.PI;
    const wanted = -half + Math.sqrt(half ** 2 + 2 * above);
    expect(largest / wanted).toBeCloseTo(1, 2);
  });

  it("beyond 10 000 g there is no largest shock; a reading carries no unit but g", () => {
    expect(shocks({ threshold: "1000 g rms", detector: rms(1) }, "1 g rms at 10 Hz", 1)).toEqual([
      undefined,
      undefined,
    ]);
    const { shocks: found } = shockImmunity({ ...base, detector: peak(1) }, "0.5 g pk at 10 Hz", { multiples: [] });
    expect(found.map(({ milliseconds }) => milliseconds)).toEqual([1, 2, 5, 11]);
    for (const { largest } of found) expect(largest).toMatchObject({ unit: "g", detector: "pk" });
  });

  it("a burst on RMS: until the average has risen to the threshold", () => {
    const settings = { ...base, threshold: "2 g rms", detector: rms(3) } as const;
    const found = bursts(settings, "1 g rms at 10 Hz", [1.5, 3]);
    for (const { level, longest, withoutDelay, timesThreshold } of found) {
      const high = 2 * timesThreshold;
      expect(level).toMatchObject({ value: high, unit: "g", detector: "rms" });
      expect(longest).toBeCloseTo(3 * Math.log((high ** 2 - 1) / (high ** 2 - 4)), 9);
      expect(withoutDelay).toBe(longest);
    }
  });

  it("a burst on RMS with a delay: from the rise to the threshold until the average has fallen to it again", () => {
    const [delay, tau] = [5, 3];
    const settings = { ...base, threshold: "2 g rms", onDelay: delay, detector: rms(tau) } as const;
    for (const { longest, withoutDelay, timesThreshold } of bursts(settings, "1 g rms at 10 Hz", [1.2, 2, 8])) {
      const high = 2 * timesThreshold;
      const rise = tau * Math.log((high ** 2 - 1) / (high ** 2 - 4));
      expect(withoutDelay).toBeCloseTo(rise, 9);
      // squares above the running one: at the end of the burst, and at the threshold
      const top = (high ** 2 - 1) * (1 - Math.exp(-longest / tau));
      const above = longest - rise + tau * Math.log(top / (4 - 1));
      // what is very high outlasts the delay as soon as it reaches the threshold
      if (longest > rise * (1 + 1e-6)) expect(above).toBeCloseTo(delay, 6);
      else expect(above).toBeGreaterThan(delay);
    }
  });

  it("a burst on a peak detector: the delay less the time of the fall, if that is shorter", () => {
    const settings = { ...base, detector: peak(2), onDelay: 3 } as const;
    const found = bursts(settings, "1 g pk at 10 Hz", undefined);
    expect(found.map(({ timesThreshold }) => timesThreshold)).toEqual([1.5, 2, 3, 5, 10]);
    for (const { timesThreshold, longest, withoutDelay } of found) {
      expect(longest).toBeCloseTo(Math.max(0, 3 - 2 * Math.log(timesThreshold)), 6);
      expect(withoutDelay).toBe(0);
    }
  });

  it("running vibration must lie below what the delay starts over at; it may have its frequency from the threshold", () => {
    const settings = { ...base, timerResets: "below reset level", detector: peak(2) } as const;
    const run = (running: string, more: Partial<ImmunitySettings> = {}) =>
      shockImmunity({ ...settings, ...more }, running, { milliseconds: [1], multiples: [] }).shocks;
    expect(() => run("1 g pk at 10 Hz")).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(run("0.99 g pk at 10 Hz")).toHaveLength(1);
    expect(run("0.99 g pk", { threshold: "2 g pk at 10 Hz" })).toEqual(run("0.99 g pk at 10 Hz"));
    expect(run("1.99 g pk at 10 Hz", { timerResets: "below threshold" })).toHaveLength(1);
  });

  it("a device that forms velocity by a higher corner rides through no less", () => {
    const velocity = { ...base, threshold: "20 mm/s pk", detector: peak(1) } as const;
    const largest = (highPass?: number) =>
      shocks({ ...velocity, ...(highPass !== undefined && { highPass }) }, "1 mm/s pk at 25 Hz", 20)[0] as number;
    expect(largest()).toBe(largest(10));
    expect(largest(100)).toBeGreaterThan(largest(10) * 1.3);
    // far below its corner the area of the half-sine: 2 A T / pi, and the running 1 mm/s
    expect(largest(0.2)).toBeCloseTo((0.019 * Math.PI) / (2 * 0.02) / G, 2);
  });
});

describe("a shock on running vibration", () => {
  const shock = { peak: "10 g pk", milliseconds: 10, time: 0.5 } as const;
  const wave = (more: object = {}) =>
    shockOnRunning({ running: "1 g pk at 25 Hz", shock, rate: 1000, seconds: 1, ...more });

  it("is one sine at its phase, and a half-sine from its beginning to its end", () => {
    const found = wave({ phase: Math.PI / 2 });
    expect(found).toHaveLength(1000);
    const running = (i: number) => G * Math.cos((2 * Math.PI * 25 * i) / 1000);
    for (const i of [0, 3, 250, 499, 500, 510, 511, 999]) expect(found[i]).toBeCloseTo(running(i), 9);
    for (let i = 501; i < 510; i++) {
      expect(found[i]).toBeCloseTo(running(i) + 10 * G * Math.sin((Math.PI * (i - 500)) / 10), 9);
    }
    expect(wave()[10]).toBeCloseTo(G * Math.sin((2 * Math.PI * 25 * 10) / 1000), 9);
  });

  it("may be given in any unit, and at the very beginning", () => {
    const other = {
      running: "386.08858267716535 in/s2 pk at 1500 r/min",
      shock: { ...shock, peak: "98.0665 m/s2 pk" },
    };
    const [plain, converted] = [wave(), wave(other)];
    expect(Math.max(...converted.map((value, i) => Math.abs(value - (plain[i] as number))))).toBeLessThan(1e-9);
    expect(wave({ shock: { ...shock, time: 0 } })[5]).toBeCloseTo(10 * G + G * Math.sin(Math.PI / 4), 9);
    expect(wave({ seconds: 0.0006 })).toHaveLength(1);
  });

  it("is no shock in RMS, nor in velocity", () => {
    for (const peak of ["10 g rms", "10 mm/s pk"]) {
      expect(() => wave({ shock: { ...shock, peak } })).toThrow(expect.objectContaining({ code: "wrong-quantity" }));
    }
  });
});

describe("levels and velocities of a waveform", () => {
  it("begin at the level that was there", () => {
    const silence = new Float64Array(3);
    const rms = detectedLevels(silence, { rate: 1, detector: { kind: "rms", averaging: 2 }, initial: 3 });
    const peak = detectedLevels(silence, { rate: 1, detector: { kind: "peak", decay: 2 }, initial: 3 });
    for (let i = 0; i < 3; i++) {
      expect(rms[i]).toBeCloseTo(3 * Math.exp(-(i + 1) / 4), 12);
      expect(peak[i]).toBeCloseTo(3 * Math.exp(-(i + 1) / 2), 12);
    }
    expect(detectedLevels([], { rate: 1, detector: { kind: "peak", decay: 2 } })).toHaveLength(0);
    expect(() => detectedLevels([1], { rate: 1, detector: { kind: "peak", decay: 2 }, initial: -1 })).toThrow(
      expect.objectContaining({ code: "negative" }),
    );
    expect([...detectedLevels([-2, 0], { rate: 1, detector: { kind: "peak", decay: 1 } })][0]).toBe(2);
  });

  it("are refused once they have left the range of numbers", () => {
    const detector = { kind: "rms", averaging: 1 } as const;
    expect(() => detectedLevels([1e200, 1], { rate: 1, detector })).toThrow(VeladisError);
    expect(() => velocityOf([1e308, 1e308, -1e308, -1e308], 1, 0.1)).toThrow(VeladisError);
  });

  it("come down to nothing after a step of acceleration, as behind a second-order high-pass", () => {
    expect(velocityOf([], 1000, 10)).toHaveLength(0);
    // the step's response is exp(-a t) sin(a t) / a with a = 2 pi 10 / sqrt(2): H(s) / s from the docstring, by tables
    const a = (2 * Math.PI * 10) / Math.SQRT2;
    const found = velocityOf(new Float64Array(50_000).fill(1), 100_000, 10);
    for (const i of [100, 1000, 5000, 20_000, 49_999]) {
      const t = (i + 0.5) / 100_000;
      expect(found[i]).toBeCloseTo((Math.exp(-a * t) * Math.sin(a * t)) / a, 5);
    }
  });
});
