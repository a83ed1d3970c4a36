import FFT from "fft.js";
import {
  bandOverall,
  linesOverall,
  resolvingSettings,
  spectrum,
  type WindowName,
  windows,
  windowWeights,
} from "veladis/signal";
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
  const n = 1024;
  const fft = new FFT(n);
  const step = (2 * Math.PI) / n;

  /** Whether a line stands out beside each of two tones, `apart` lines from one another. */
  function showsBoth(weights: Float64Array, at: number, apart: number, ratio: number, phase: number): boolean {
    const wave = Array.from(
      weights,
      (w, i) => w * (Math.cos(at * step * i) + ratio * Math.cos((at + apart) * step * i + phase)),
    );
    const out = fft.createComplexArray();
    fft.realTransform(out, wave);
    const size = (k: number): number => Math.hypot(out[2 * k] as number, out[2 * k + 1] as number);
    const isPeak = (k: number): boolean => size(k) > size(k - 1) && size(k) > size(k + 1);
    const near = (place: number): number[] => [Math.floor(place), Math.ceil(place)];
    const [one, other] = [near(at), near(at + apart)].map((places) => places.filter(isPeak));
    return (one as number[]).length > 0 && (other as number[]).some((k) => !(one as number[]).includes(k));
  }
  const offsets = [0, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9];
  const phases = [0, 0.8, 1.6, 2.4, 3.1, 3.9, 4.7, 5.5];
  const all = offsets.flatMap((offset) => phases.map((phase) => [100 + offset, phase] as const));
  const settings = (window: WindowName) => resolvingSettings("100 Hz", "103 Hz", { highest: "400 Hz", window });

  it.each(Object.keys(windows) as WindowName[])("%s: both show wherever they fall, whatever the phase", (window) => {
    const { apart, smallest } = settings(window);
    const weights = windowWeights(window, n);
    for (const ratio of [1, smallest, 1 / smallest]) {
      for (const [at, phase] of all)
        expect(showsBoth(weights, at, apart, ratio, phase), `${ratio} ${at} ${phase}`).toBe(true);
    }
  });

  it.each(["rectangular", "hann", "hamming"] as const)("%s: one line less hides the smaller at times", (window) => {
    const { apart, smallest } = settings(window);
    const weights = windowWeights(window, n);
    expect(all.every(([at, phase]) => showsBoth(weights, at, apart - 1, smallest, phase))).toBe(false);
  });
});
