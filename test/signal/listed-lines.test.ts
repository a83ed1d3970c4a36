import FFT from "fft.js";
import { bandOverall, linesOverall, resolvingSettings, spectrum, type WindowName } from "veladis/signal";
import { describe, expect, it } from "vitest";
import { noise } from "./signals";

const rate = 2048;
const x = noise(rate);

describe("the level of listed lines", () => {
  it.each(["rectangular", "hann", "flattop", "blackmanharris"] as WindowName[])(
    "is that of the spectrum they are taken from: %s",
    (window) => {
      const lines = spectrum(x, { rate, unit: "mm/s", window });
      const listed = [...lines.values].map((size, k) => [k * lines.resolution, size] as const);
      const { value } = linesOverall(listed, { type: "mm/s rms", as: "mm/s rms", band: [10, 1000], window });
      expect(value / bandOverall(lines, [10, 1000]).value).toBeCloseTo(1, 9);
    },
  );

  it("of tones in peak is the root of the sum of squares over sqrt 2 (Parseval)", () => {
    const options = { type: "in/s pk", as: "in/s rms", band: [10, 100], tones: true } as const;
    expect(
      linesOverall(
        [
          [20, 0.3],
          [40, 0.4],
        ],
        options,
      ).value,
    ).toBeCloseTo(0.5 / Math.SQRT2, 12);
  });
});

describe("settings that resolve two lines, by another library's transform (fft.js)", () => {
  // Hann weights as in every textbook: 0.5 - 0.5 cos
  const lines = (apart: number, ratio: number, phase: number): number[] => {
    const n = 1024;
    const fft = new FFT(n);
    const out = fft.createComplexArray();
    const at = 100.3;
    const wave = Array.from({ length: n }, (_, i) => {
      const t = (2 * Math.PI * i) / n;
      return (0.5 - 0.5 * Math.cos(t)) * (Math.cos(at * t) + ratio * Math.cos((at + apart) * t + phase));
    });
    fft.realTransform(out, wave);
    return Array.from({ length: n / 2 }, (_, k) => Math.hypot(out[2 * k] as number, out[2 * k + 1] as number));
  };
  const peaks = (values: number[]): number =>
    values.filter(
      (v, k) => k > 90 && k < 115 && v > 60 && v > (values[k - 1] as number) && v > (values[k + 1] as number),
    ).length;

  it("shows two peaks at as many lines apart, whatever the phase", () => {
    const { apart } = resolvingSettings("100 Hz", "103 Hz", { highest: "400 Hz" });
    for (const phase of [0, 1, 2, 3, 4, 5]) expect(peaks(lines(apart, 1, phase)), `${phase}`).toBe(2);
  });
});
