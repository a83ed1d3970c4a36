import { describe, expect, it } from "vitest";
import { VeladisError } from "../../src/index";
import {
  density,
  overall,
  overallStream,
  type SpectrumOptions,
  spectrum,
  spectrumStream,
  windowWeights,
} from "../../src/signal/index";
import { noise } from "./signals";

const rate = 1000;
const wave = noise(4000);
const options = { rate, unit: "g", band: [10, 400], as: "mm/s rms" } as const;

/** What a function refuses with, or that it answers. */
function refusal(act: () => unknown): string {
  try {
    act();
    return "answers";
  } catch (error) {
    if (error instanceof VeladisError) return `${error.code}: ${error.message}`;
    throw error;
  }
}

/** Bytes of arrays that a call leaves behind or had to take, whatever it throws. */
function taken(act: () => unknown): number {
  const before = process.memoryUsage().arrayBuffers;
  refusal(act);
  return process.memoryUsage().arrayBuffers - before;
}

describe("a stream answers no sooner than a whole record does", () => {
  // one period of 10 Hz at 1000 samples a second is 100 samples
  it.each([2, 14, 50, 99, 100, 101, 250])("%d samples", (count) => {
    const samples = wave.subarray(0, count);
    const stream = overallStream({ ...options, settlingTime: 0 });
    stream.push(samples);
    const own = refusal(() => stream.read());
    expect(own).toBe(refusal(() => overall(samples, options)));
    expect(own.startsWith("out-of-range: expected a band that begins at or above")).toBe(count < 100);
    expect(refusal(() => stream.take())).toBe(own);
  });

  it("counts from where the filter has settled", () => {
    const stream = overallStream({ ...options, settlingTime: 1 });
    stream.push(wave.subarray(0, 1099));
    expect(refusal(() => stream.read())).toMatch(/^out-of-range: .* a longer record \(1\/10 s at the least\)/);
    stream.push(wave.subarray(1099, 1100));
    expect(stream.read().count).toBe(100);
  });

  it("a last block that is too short is refused, and is not lost", () => {
    const stream = overallStream({ ...options, settlingTime: 0 });
    stream.push(wave.subarray(0, 500));
    expect(stream.take().count).toBe(500);
    stream.push(wave.subarray(500, 560));
    expect(refusal(() => stream.take())).toMatch(/^out-of-range/);
    stream.push(wave.subarray(560, 620));
    expect(stream.take().count).toBe(120);
    expect(stream.read().count).toBe(620);
  });

  it("at the same place whatever the lower edge", () => {
    for (const low of [5, 12.5, 40]) {
      const least = Math.ceil(rate / low);
      for (const [count, answers] of [
        [least - 1, false],
        [least, true],
      ] as const) {
        const stream = overallStream({ ...options, band: [low, 400], settlingTime: 0 });
        stream.push(wave.subarray(0, count));
        expect(refusal(() => stream.read()) === "answers", `${count} samples from ${low} Hz`).toBe(answers);
      }
    }
  });
});

describe("no option takes room before it is refused", () => {
  const many = noise(600_000);
  const stream = (segment: number) =>
    spectrumStream({ rate, unit: "g", segment } as SpectrumOptions & { segment: number });

  it.each([
    ["spectrum, a segment of 1e8", "missing-fact", () => spectrum(wave, { rate, unit: "g", segment: 1e8 })],
    ["density, a segment of 1e8", "missing-fact", () => density(wave, { rate, unit: "g", segment: 1e8 })],
    ["spectrum, one sample too long", "missing-fact", () => spectrum(wave, { rate, unit: "g", segment: 4001 })],
    ["stream of spectra, a segment of 1e8", "out-of-range", () => stream(1e8)],
    ["stream of spectra, one sample too long", "out-of-range", () => stream(4_194_305)],
    ["window of 1e9", "out-of-range", () => windowWeights("hann", 1e9)],
    ["window, one sample too long", "out-of-range", () => windowWeights("hann", 2 ** 27 + 1)],
    ["64 points for each of 600 000", "out-of-range", () => overall(many, { ...options, as: "g pk", oversample: 64 })],
  ] as const)("%s", (_, code, act) => {
    expect(refusal(act).split(":")[0]).toBe(code);
    // the record itself is copied and taken to its spectrum first: some 30 MB for the longest here
    expect(taken(act)).toBeLessThan(50e6);
  });

  it("what fits is answered", () => {
    expect(spectrum(wave, { rate, unit: "g", segment: 4000 }).averages).toBe(1);
    expect(stream(2 ** 16)).toBeDefined();
    expect(overall(wave, { ...options, as: "g pk", oversample: 64 }).value).toBeGreaterThan(0);
  });
});
