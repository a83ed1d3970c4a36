import { type BenchSettings, benchPlan, type Shaker, shakerReach } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeAndExpectedOf } from "../refusals/refusal-of";

const settings = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  onDelay: 8,
  latching: true,
} as const satisfies BenchSettings;

// 100, 500 and 1000 rad/s, reference frequencies of ISO 16063-21 and ISO 8042 (from memory)
const fixed = {
  lowest: "15.92 Hz",
  highest: "159.2 Hz",
  frequencies: ["15.92 Hz", "79.58 Hz", "159.2 Hz"],
} as const satisfies Shaker;

const hertzOf = (given: BenchSettings, shaker: Shaker) =>
  new Set(benchPlan(given, shaker).steps.map(({ hertz }) => hertz));

describe("a shaker of fixed frequencies", () => {
  it("is used at the one that is nearest to the reference of ISO 2954, 79.4 Hz", () => {
    expect(hertzOf(settings, fixed)).toEqual(new Set([79.58]));
  });

  it("is used at another where the device does not read that one", () => {
    const band = { lowest: "10 Hz", highest: "50 Hz" } as const;
    expect(hertzOf({ ...settings, band }, fixed)).toEqual(new Set([15.92]));
  });

  it("does nothing between them", () => {
    expect(shakerReach("9 mm/s rms at 80 Hz", fixed, "0 kg").limitedBy).toEqual(["frequency"]);
    expect(shakerReach("9 mm/s rms at 159.2 Hz", fixed, "0 kg").possible).toBe(true);
    const { before, steps } = benchPlan({ ...settings, frequencies: ["40 Hz"] }, fixed);
    expect(steps.filter(({ level, possible }) => level !== null && possible)).toEqual([]);
    expect(before[0]).toMatch(/can do none of the \d+ steps .* or inject a signal in place of the sensor/);
  });

  it("which steps it can do is told, and which it cannot", () => {
    // 9 mm/s rms and more at 15.92 Hz are over 0.25 mm pp: 2 x root 2 x 9 / 100 rad/s = 0.2546 mm (relation of a sine)
    const weak = { ...fixed, displacement: "0.2 mm pp" } as const;
    const { before, steps } = benchPlan({ ...settings, frequencies: ["15.92 Hz"] }, weak);
    const can = steps.filter(({ level, possible }) => level !== null && possible).map(({ number }) => number);
    expect(can).toEqual([1, 2, 3]);
    expect(before[0]).toMatch(/^this shaker can do steps 1 to 3; it cannot do steps 4 to \d+: .* no trip is proven/);
  });

  it("is named with them, and without any is refused", () => {
    expect(benchPlan(settings, fixed).notes.join()).toContain(
      "frequencies that the shaker has: 15.92 Hz (955.2 r/min)",
    );
    expect(codeAndExpectedOf(() => benchPlan(settings, { ...fixed, frequencies: [] }))).toMatch(
      /^missing-option: at least one/,
    );
  });
});
