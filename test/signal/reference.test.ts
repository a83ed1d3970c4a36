import { convert } from "veladis";
import {
  bandOverall,
  bandPassPowerGain,
  decibelsPerOctave,
  gaussianWithin,
  noiseBandwidth,
  pointAlong,
  profileOverall,
  profileSlopes,
  rayleighBeyond,
  slopeExponent,
  spectrum,
  windowWeights,
} from "veladis/signal";
import { describe, expect, it } from "vitest";
import { expectAgreement } from "../references/agreement";
import { profilesInPrint, slopesAndPeaksInPrint } from "../references/random-vibration";
import {
  bandwidthsInPrint,
  bandwidthsRecalled,
  flatnessInPrint,
  uncertaintiesInPrint,
  welchWindowInPrint,
} from "../references/spectrum";
import { expectClose } from "./close";
import { tones } from "./signals";

const LENGTH = 65536;

/** What a tone half a bin from its line reads, over its size: from a spectrum, not from the window's formula. */
function worstReading(window: (typeof flatnessInPrint)[number]["window"]): number {
  const values = Array.from({ length: 51 }, (_, i) => i / 100).map((off) => {
    const x = tones(4096, 4096, [1, 400 + off]);
    return Math.max(...spectrum(x, { rate: 4096, unit: "g", as: "g pk", window }).values);
  });
  return values.reduce((worst, value) => (Math.abs(value - 1) > Math.abs(worst - 1) ? value : worst), 1);
}

describe("windows in print", () => {
  it.each([...bandwidthsInPrint, ...bandwidthsRecalled])("$id $window: $printed", (reference) => {
    expectAgreement(reference, noiseBandwidth(windowWeights(reference.window, LENGTH)));
  });

  it("E01: Welch window from its weights", () => {
    const weights = Float64Array.from({ length: LENGTH }, (_, j) => 1 - (2 * (j / LENGTH) - 1) ** 2);
    expectAgreement(welchWindowInPrint, noiseBandwidth(weights));
  });

  it.each(flatnessInPrint)("$id $window: flat within $printed dB", (reference) => {
    expectAgreement(reference, Math.abs(20 * Math.log10(worstReading(reference.window))));
  });

  it.each(uncertaintiesInPrint)("$id $window: not $printed %", (reference) => {
    expectAgreement(reference, 100 * (1 / worstReading(reference.window) - 1));
  });

  it("E13: HFT116D starts at zero", () => {
    expect(Math.abs(windowWeights("hft116d", 64)[0] as number)).toBeLessThan(1e-15);
  });

  it("E17: lines of 3 and 4 make an overall of 5", () => {
    const x = tones(1000, 1000, [3 * Math.SQRT2, 50], [4 * Math.SQRT2, 120]);
    const lines = spectrum(x, { rate: 1000, unit: "mm/s", window: "rectangular" });
    expectClose(bandOverall(lines, [10, 400]).value, 5, 1e-12);
  });

  // E18: J. D. Peters, Calculating the RMS Energy of the FFT (Vibration Institute); E19: the Hann kernel, analytic
  it("E18, E19: a tone under a Hann window is three lines; the sum of squares over 1.5 is its square", () => {
    const lines = spectrum(tones(1024, 1024, [1, 100]), { rate: 1024, unit: "g", as: "g pk" });
    for (const [k, size] of [
      [99, 0.5],
      [100, 1],
      [101, 0.5],
    ] as const)
      expectClose(lines.values[k], size, 1e-12);
    const raw = Math.hypot(...[99, 100, 101].map((k) => lines.values[k] as number));
    expect(raw.toFixed(4)).toBe("1.2247");
    expectClose(bandOverall(lines, [10, 500]).value, Math.SQRT1_2, 1e-12);
  });
});

describe("profiles in print", () => {
  it.each(profilesInPrint)("$id: $printed g rms, $source", (reference) => {
    const { value } = profileOverall(reference.points, { unit: "g2/Hz", as: "g rms" });
    expectAgreement(reference, value);
    // nine digits were kept of the other computation
    expectClose(value, reference.computed, 5e-9);
  });

  it("D30: ASTM D4169 levels I, II and III are in the ratio of root two, as printed 0.73, 0.52, 0.37", () => {
    const [second, third] = ["D26", "D27"].map((id) => {
      const { points } = profilesInPrint.find((row) => row.id === id) as (typeof profilesInPrint)[number];
      return profileOverall(points, { unit: "g2/Hz", as: "g rms" }).value;
    }) as [number, number];
    expectClose(second / third, Math.SQRT2, 1e-9);
  });

  it("D05, D33, D34: slopes", () => {
    const { gevsSlope, tenTimesExponent, doubledDensity } = slopesAndPeaksInPrint;
    const [gevs] = profileSlopes([
      [20, 0.026],
      [50, 0.16],
    ]);
    expectAgreement(gevsSlope, gevs as number);
    expectAgreement(tenTimesExponent, decibelsPerOctave(1));
    expectAgreement(
      doubledDensity,
      profileSlopes([
        [10, 1],
        [20, 2],
      ])[0] as number,
    );
    expect(slopeExponent(3).toFixed(4)).toBe("0.9966");
  });

  it("D31: MIL-STD-202H method 214: +40 % and -30 % of a density are 1.5 dB, +100 % and -50 % are 3 dB", () => {
    const overOneOctave = (ratio: number): number =>
      profileSlopes([
        [1, 1],
        [2, ratio],
      ])[0] as number;
    [1.4, 0.7, 2, 0.5].forEach((ratio, i) => {
      expect(Math.abs(overOneOctave(ratio) - ([1.5, -1.5, 3, -3][i] as number))).toBeLessThan(0.05);
    });
  });

  it("the Navy profile built from its slopes (D01) is the one of its break points", () => {
    const [low, high] = [pointAlong([80, 0.04], 3, 20), pointAlong([350, 0.04], -3, 2000)];
    expectClose(low[1], 0.010047545726038321, 1e-12);
    expectClose(high[1], 0.007041870586699741, 1e-12);
  });

  it("D38: Thomson's 53.85 g = 528.3 m/s2 takes g = 9.81; by the standard value it is 528.09", () => {
    expect(convert(53.85, "g rms", "m/s2 rms").toFixed(2)).toBe("528.09");
  });
});

describe("Gaussian and Rayleigh in print", () => {
  const { within, beyond, gaussianTable, gaussianMisprints, threeSigma } = slopesAndPeaksInPrint;

  it.each(within)("$id: $printed %", (reference) => {
    expectAgreement(reference, 100 * gaussianWithin(reference.sigmas));
  });

  it.each(beyond)("$id: $printed %", (reference) => {
    expectAgreement(reference, 100 * rayleighBeyond(reference.sigmas));
  });

  it.each(gaussianTable.map((printed, i) => [i / 5, printed, i] as const))(
    "D37: within %d sigma",
    (sigmas, printed, i) => {
      const off = Math.abs(gaussianWithin(sigmas) - printed);
      expect(off <= 0.00005).toBe(!(gaussianMisprints as readonly number[]).includes(i));
    },
  );

  it("D40: three times 14.1 g", () => {
    // a flat density of 14.1^2 / 1000 g2/Hz over 1000 Hz
    const level = profileOverall(
      [
        [1000, 14.1 ** 2 / 1000],
        [2000, 14.1 ** 2 / 1000],
      ],
      { unit: "g2/Hz", as: "g rms" },
    );
    expectAgreement(threeSigma, level.peak.value);
    expect(level.peak).toMatchObject({ sigmas: 3, assumed: ["gaussian"], detector: "pk", unit: "g" });
  });
});

describe("edges of an instrument's band in print", () => {
  // ISO 2954:2012 Table 2, as a public literature survey reports it: 0.707 at the 10 Hz edge; third-order pair
  it("H16: -3.01 dB at the edges", () => {
    for (const edge of [10, 1000]) expectClose(bandPassPowerGain([10, 1000], 3, edge), 0.5, 1e-12);
  });

  it("H17: -0.97 dB at 12.6 Hz (memory; a high-pass alone, the band-pass differs by 0.03 dB)", () => {
    expect(Math.abs(10 * Math.log10(bandPassPowerGain([10, 1000], 3, 12.6)) + 0.97)).toBeLessThan(0.06);
  });
});
