import {
  bandWaveform,
  butterworth,
  density,
  densityOverall,
  descriptors,
  detrended,
  noiseBandwidth,
  overall,
  overallStream,
  responseAt,
  spectrum,
  type Trend,
  windowName,
  windows,
  windowWeights,
} from "veladis/signal";
import { describe, expect, it } from "vitest";
import scipyWindows from "../references/scipy-windows.json";
import { expectClose } from "./close";
import { invented, names, results, signals } from "./signals";

// Independent implementation: SciPy (versions in the fixture); test/references/scipy-signal.py made the results.
const RELATIVE = 1e-9;

describe.each(names)("against SciPy: %s", (name) => {
  const x = signals[name]();
  const expected = results.signals[name];
  const { rate } = expected;

  it("descriptors", () => {
    const { time } = expected;
    const wave = descriptors(x, { unit: "m/s2" });
    expect(wave.count).toBe(expected.n);
    expectClose(wave.mean, time.mean, RELATIVE);
    expectClose(wave.rms.value, time.rms, RELATIVE);
    expectClose(wave.peak.value, time.peak, RELATIVE);
    expectClose(wave.peakToPeak.value, time.pp, RELATIVE);
    expectClose(wave.average.value, time.average, RELATIVE);
    expectClose(wave.crestFactor, time.crest, RELATIVE);
    expectClose(wave.skewness, time.skewness, RELATIVE);
    expectClose(wave.kurtosis, time.kurtosis, RELATIVE);
    const straight = descriptors(detrended(x, "linear"), { unit: "m/s2", detrend: "none" });
    expectClose(straight.rms.value, time.rms_without_line, RELATIVE);
  });

  it.each(expected.overall)("overall of band $band", (row) => {
    const [low, high] = row.band as [number, number];
    const options = { rate, unit: "m/s2", band: [low, high] } as const;
    expectClose(overall(x, { ...options, as: "m/s2 rms" }).value, row.a_rms, RELATIVE, "acceleration");
    expectClose(overall(x, { ...options, as: "m/s rms" }).value, row.v_rms, RELATIVE, "velocity");
    expectClose(overall(x, { ...options, as: "m rms" }).value, row.s_rms, RELATIVE, "displacement");
    expectClose(overall(x, { ...options, unit: "m/s", as: "m/s2 rms" }).value, row.j_rms, RELATIVE, "derivative");
    expectClose(overall(x, { ...options, as: "mm/s pk" }).value, 1000 * row.v_peak, RELATIVE, "peak");
    expectClose(overall(x, { ...options, as: "m/s avg" }).value, row.v_average, RELATIVE, "average");
    expectClose(overall(x, { ...options, as: "m pp" }).value, row.s_pp, RELATIVE, "peak-to-peak");
    // a quarter circle turns the bin at half the sampling rate to where every sample meets a zero of it
    const relative = high === rate / 2 ? 1e-7 : RELATIVE;
    const wave = bandWaveform(x, { ...options, as: "mm/s" });
    expectClose(descriptors(wave.values, { unit: "mm/s", detrend: "none" }).rms.value, 1000 * row.v_rms, relative);
  });

  it("overall with -3 dB edges and with a window", () => {
    const { overall_3db: edges, overall_hann: hann } = expected;
    const options = { rate, unit: "m/s2", band: edges.band as [number, number], as: "m/s rms" } as const;
    expectClose(overall(x, { ...options, edges: "-3 dB" }).value, edges.v_rms, RELATIVE);
    expectClose(overall(x, { ...options, window: "hann" }).value, hann.v_rms, RELATIVE);
  });

  it.each(Object.entries(expected.spectra))("spectrum, %s window", (window, { bins, rms, power }) => {
    const lines = spectrum(x, { rate, unit: "m/s2", window: windowName(window) });
    const total = Math.sqrt(lines.values.reduce((sum, value) => sum + value * value, 0));
    expectClose(total, Math.sqrt(power), RELATIVE);
    // what is nothing but rounding (0 Hz) is compared with the whole
    bins.forEach((bin, i) => {
      const off = Math.abs((lines.values[bin] as number) - (rms[i] as number));
      expect(off / Math.max(rms[i] as number, 1e-5 * total)).toBeLessThan(RELATIVE);
    });
  });

  it.each(expected.welch)("Welch density, $window window, $segment samples", (row) => {
    const psd = density(x, {
      rate,
      unit: "m/s2",
      window: windowName(row.window),
      segment: row.segment,
      overlap: row.overlap / row.segment,
      detrend: (row.trend === "constant" ? "mean" : row.trend) as Trend,
    });
    const top = Math.max(...row.density);
    row.bins.forEach((bin, i) => {
      const off = Math.abs((psd.values[bin] as number) - (row.density[i] as number));
      expect(off / Math.max(row.density[i] as number, 1e-9 * top)).toBeLessThan(RELATIVE);
    });
    expectClose(densityOverall(psd, row.band as [number, number]).value, row.rms, RELATIVE);
  });
});

describe("windows against SciPy", () => {
  const ours = Object.entries(windows).flatMap(([name, { spoken }]) => [name, ...spoken]);

  it.each(scipyWindows.windows)("$names", ({ names, weights, bandwidth }) => {
    for (const name of names.filter((one) => ours.includes(one))) {
      const window = windowName(name);
      for (const [length, expected] of Object.entries(weights)) {
        const mine = windowWeights(window, Number(length));
        expected.forEach((weight, j) => void expect(mine[j]).toBeCloseTo(weight, 14));
      }
      expectClose(noiseBandwidth(windowWeights(window, 1000)), bandwidth, RELATIVE);
    }
  });

  it("the table has seven of them, and no other name of theirs", () => {
    const theirs = scipyWindows.windows.filter(({ names }) => names.some((name) => ours.includes(name)));
    expect(theirs.map(({ names }) => windowName(names.find((name) => ours.includes(name)) as string)).sort()).toEqual([
      "blackman",
      "blackmanharris",
      "flattop",
      "hamming",
      "hann",
      "nuttall",
      "rectangular",
    ]);
  });
});

describe("measured records against another version of SciPy (1.17.1)", () => {
  it("velocity of the blower's record, taken as m/s2 at 10240 samples a second", () => {
    const level = overall(signals.blower(), { rate: 10240, unit: "m/s2", band: [10, 1000], as: "mm/s rms" });
    expectClose(level.value, 0.8602385771305114, RELATIVE);
  });

  it("velocity and displacement of the fan's record", () => {
    const options = { rate: 50, unit: "g", band: [10, 25] } as const;
    expectClose(overall(signals.fan(), { ...options, as: "mm/s rms" }).value, 3.00797839650078, RELATIVE);
    expectClose(overall(signals.fan(), { ...options, as: "mm/s pk" }).value, 10.500461713820881, RELATIVE);
    expectClose(overall(signals.fan(), { ...options, as: "um pp" }).value, 228.35890103106576, RELATIVE);
  });
});

describe("filters against SciPy", () => {
  const types = { lowpass: "low-pass", highpass: "high-pass", bandpass: "band-pass" } as const;

  it.each(results.butterworth)("$type order $order at $edges Hz, rate $rate", (row) => {
    const { order, edges, rate, hertz, response } = row;
    const sections = butterworth({ kind: types[row.type as keyof typeof types], order, edges, rate });
    hertz.forEach((f, i) => {
      const { gain, phase } = responseAt(sections, f, rate);
      const [re, im] = response[i] as [number, number];
      const off = Math.hypot(gain * Math.cos(phase) - re, gain * Math.sin(phase) - im);
      expect(off / Math.hypot(re, im)).toBeLessThan(1e-7);
    });
  });

  it.each(results.stream)("causal overall of band $band, order $order", (row) => {
    const x = invented(40000, 5120);
    const options = { rate: 5120, unit: "m/s2", band: row.band as [number, number], order: row.order } as const;
    const read = (as: "m/s2 rms" | "m/s rms" | "m rms"): number => {
      const stream = overallStream({ ...options, as, settlingTime: row.settle });
      stream.push(x);
      return stream.read().value;
    };
    expectClose(read("m/s2 rms"), row.a_rms, 1e-7);
    expectClose(read("m/s rms"), row.v_rms, 1e-7);
    expectClose(read("m rms"), row.s_rms, 1e-7);
  });
});
