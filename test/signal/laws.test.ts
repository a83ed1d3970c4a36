import fc from "fast-check";
import { convert, convertAmplitude } from "veladis";
import {
  bandOverall,
  bandWaveform,
  convertDensity,
  convertSpectrum,
  density,
  densityOverall,
  descriptors,
  orderLines,
  overall,
  overallStream,
  spectrum,
  spectrumStream,
  topLines,
  type WindowName,
  windows,
} from "veladis/signal";
import { describe, expect, it } from "vitest";
import { expectClose } from "./close";
import { invented, noise, tones } from "./signals";

const windowNames = Object.keys(windows) as WindowName[];
const lengths = fc.oneof(fc.integer({ min: 16, max: 3000 }), fc.constantFrom(1024, 2048, 1000, 1021, 2039, 2310));

describe("overall", () => {
  it("Parseval: all bins together are the variance of the record, to 1e-12", () => {
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1, max: 1e6 }), (length, rate) => {
        const x = noise(length);
        const level = overall(x, { rate, unit: "g", band: [rate / length, rate / 2], as: "g rms" });
        expectClose(level.value, descriptors(x, { unit: "g" }).rms.value, 1e-12);
      }),
    );
  });

  it("of two tones of acceleration is the root of the sum of squares of their velocities, to 1e-9", () => {
    const tone = fc.record({
      k: fc.integer({ min: 10, max: 900 }),
      size: fc.double({ min: 0.01, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(tone, tone, fc.constantFrom(2048, 2500, 2003), (one, two, rate) => {
        fc.pre(one.k !== two.k);
        const x = tones(rate, rate, [one.size, one.k], [two.size, two.k, 1]);
        const level = overall(x, { rate, unit: "g", band: [5, 1000], as: "mm/s rms" }).value;
        const velocities = [one, two].map(({ k, size }) => convert(size, "g pk", "mm/s rms", { at: { hertz: k } }));
        expectClose(level, Math.hypot(...velocities), 1e-9);
      }),
    );
  });

  it("agrees with convert for one sine, in every quantity and detector", () => {
    const x = tones(8192, 8192, [2, 64]);
    for (const unit of ["g", "in/s", "mil"] as const) {
      for (const to of ["m/s2", "mm/s", "um"] as const) {
        for (const detector of ["rms", "pk", "pp", "avg"] as const) {
          const level = overall(x, { rate: 8192, unit, band: [10, 1000], as: `${to} ${detector}` });
          // 128 samples a period meet the crest, and the average of the rectified sine but for its corners
          const relative = detector === "avg" ? 1e-3 : 1e-9;
          expectClose(level.value, convert(2, `${unit} pk`, `${to} ${detector}`, { at: "64 Hz" }), relative);
        }
      }
    }
  });

  it("a line of least squares and the mean are no vibration; gravity does not matter", () => {
    const x = tones(4096, 4096, [1, 50]);
    const options = { rate: 4096, unit: "g", band: [10, 1000], as: "mm/s rms" } as const;
    const plain = overall(x, options).value;
    expectClose(
      overall(
        x.map((value) => value + 1),
        options,
      ).value,
      plain,
      1e-9,
    );
    const drifting = x.map((value, i) => value + i / 1000);
    expectClose(overall(drifting, { ...options, detrend: "linear" }).value, plain, 2e-2);
    expect(Math.abs(overall(drifting, options).value / plain - 1)).toBeGreaterThan(0.05);
  });

  it("a finer waveform finds the crest between the samples", () => {
    const x = tones(1000, 1000, [1, 250, Math.PI / 4]);
    const options = { rate: 1000, unit: "g", band: [10, 400], as: "g pk" } as const;
    expectClose(overall(x, options).value, Math.SQRT1_2, 1e-9);
    expectClose(overall(x, { ...options, oversample: 16 }).value, 1, 1e-9);
    const alone = Float64Array.from({ length: 64 }, (_, i) => (i % 2 === 0 ? 1 : -1));
    const nyquist = { rate: 64, unit: "g", band: [1, 32], as: "g pk" } as const;
    for (const oversample of [1, 2, 4]) expectClose(overall(alone, { ...nyquist, oversample }).value, 1, 1e-12);
  });

  it("counts a tone on an edge of the band, and none beside it", () => {
    const x = tones(2000, 2000, [1, 10], [1, 500]);
    const read = (band: readonly [number, number]): number =>
      overall(x, { rate: 2000, unit: "g", band, as: "g rms" }).value;
    expectClose(read([10, 500]), 1, 1e-9);
    expectClose(read([11, 500]), Math.SQRT1_2, 1e-9);
    expectClose(read([10, 499]), Math.SQRT1_2, 1e-9);
  });

  it("is the same for every kind of array and leaves it alone", () => {
    const x = Float32Array.from(invented(1500, 5120));
    const options = { rate: 5120, unit: "g", band: [10, 1000], as: "mm/s rms" } as const;
    const level = overall(x, options);
    expect(overall(Float64Array.from(x), options)).toEqual(level);
    expect(overall(Array.from(x), options)).toEqual(level);
    expect(x).toEqual(Float32Array.from(invented(1500, 5120)));
    expect(overall(Int16Array.of(1, -1, 3, -3), { ...options, rate: 4, band: [1, 2] }).count).toBe(4);
  });

  it("is an amplitude that converts to decibels", () => {
    const x = tones(1000, 1000, [1, 100]);
    const level = overall(x, { rate: 1000, unit: "mm/s", band: [10, 400], as: "mm/s rms" });
    expect(convertAmplitude(level, "dB re 1e-9 m/s").level?.decibels.toFixed(3)).toBe("116.990");
  });
});

describe("descriptors", () => {
  it("show a clipped wave by its flat crests", () => {
    const x = tones(1000, 1000, [1, 7]);
    expect(descriptors(x, { unit: "g" }).flatCrest).toBeLessThanOrEqual(2);
    const clipped = x.map((value) => Math.max(-0.9, Math.min(0.9, value)));
    expect(descriptors(clipped, { unit: "g" }).flatCrest).toBeGreaterThan(15);
  });

  it("of a sine are those of a sine", () => {
    const wave = descriptors(tones(10000, 10000, [2, 10]), { unit: "mm/s" });
    expectClose(wave.crestFactor, Math.SQRT2, 1e-9);
    expectClose(wave.kurtosis, 1.5, 1e-9);
    expect(Math.abs(wave.skewness)).toBeLessThan(1e-9);
    expectClose(wave.average.value, 4 / Math.PI, 1e-5);
  });
});

describe("a stream", () => {
  const options = { rate: 5120, unit: "g", band: [10, 1000], as: "mm/s rms" } as const;

  it("gives the same as the whole, to the last bit, in pieces of any size", () => {
    const x = invented(30011, 5120);
    const whole = overallStream(options);
    whole.push(x);
    const level = whole.read();
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9000 }), { minLength: 1, maxLength: 40 }), (sizes) => {
        const pieces = overallStream(options);
        for (let i = 0, n = 0; i < x.length; n++) {
          const end = Math.min(x.length, i + Math.max(1, sizes[n % sizes.length] as number));
          pieces.push(n % 3 === 0 ? Array.from(x.subarray(i, end)) : x.subarray(i, end));
          if (n % 5 === 0 && end > 3000) pieces.read();
          i = end;
        }
        expect(pieces.read()).toEqual(level);
      }),
      { numRuns: 30 },
    );
  });

  it.each(["g rms", "mm/s rms", "um rms", "mm/s pk", "um pp", "mm/s avg"] as const)(
    "agrees with the spectrum of the whole with -3 dB edges for what is steady: %s",
    (as) => {
      const rate = 10240;
      const x = tones(rate * 20, rate, [1, 10], [0.5, 12.5], [0.7, 100, 1], [2, 1000, 2], [0.4, 640]);
      const stream = overallStream({ ...options, rate, as, settlingTime: 2 });
      stream.push(x);
      const whole = overall(x, { ...options, rate, as, edges: "-3 dB" });
      expectClose(stream.read().value, whole.value, as.endsWith("rms") ? 2e-4 : 2e-2);
    },
  );

  it("differentiates too", () => {
    const rate = 10240;
    const x = tones(rate * 10, rate, [1, 20], [0.1, 400]);
    for (const [unit, as] of [
      ["mm/s", "g rms"],
      ["um", "mm/s rms"],
      ["um", "g rms"],
    ] as const) {
      const stream = overallStream({ ...options, rate, unit, as, settlingTime: 2 });
      stream.push(x);
      expectClose(stream.read().value, overall(x, { ...options, rate, unit, as, edges: "-3 dB" }).value, 3e-4);
    }
  });

  it("does not mind gravity, and gives a level for each stretch", () => {
    const rate = 5120;
    const stream = overallStream({ ...options, rate });
    const levels = [1, 2, 4].map((size) => {
      for (let i = 0; i < 10; i++) stream.push(tones(rate, rate, [size, 50]).map((value) => value + 1));
      return stream.take().value;
    });
    expectClose(levels[0], convert(1, "g pk", "mm/s rms", { at: "50 Hz" }), 1e-3);
    expectClose(levels[1], 2 * (levels[0] as number), 2e-2);
    expect(stream.read().count).toBe(30 * rate - Math.round(stream.read().settlingTime * rate));
  });

  it("of a spectrum gives the same as the whole", () => {
    const x = invented(20000, 5120);
    const settings = { rate: 5120, unit: "g", segment: 1000, overlap: 0.6, window: "blackman" } as const;
    const whole = spectrum(x, settings);
    const stream = spectrumStream(settings);
    for (let i = 0; i < x.length; i += 777) stream.push(x.subarray(i, i + 777));
    expect(stream.read()).toEqual(whole);
  });
});

describe("spectrum", () => {
  it("HFT248D: a sine anywhere between the bins reads its size within 0.02 %", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (hertz, phase) => {
          const x = tones(2048, 2048, [1, hertz, phase]);
          const lines = spectrum(x, { rate: 2048, unit: "g", as: "g pk", window: "hft248d" });
          expectClose(Math.max(...lines.values), 1, 2e-4);
        },
      ),
    );
  });

  it.each(windowNames)("%s: picking finds frequency and size of a sine anywhere between the bins", (window) => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (hertz, phase) => {
          const x = tones(4096, 2048, [1, hertz, phase]);
          const [line] = topLines(spectrum(x, { rate: 2048, unit: "g", as: "g pk", window }), { count: 1 });
          // the mirror image of the sine disturbs windows with high side lobes, most of all none
          const relative = window === "rectangular" ? 2e-2 : window === "hamming" ? 3e-4 : 1e-4;
          expectClose(line?.value, 1, relative);
          expect(Math.abs((line?.hertz as number) - hertz)).toBeLessThan(relative);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("of an integrated spectrum, picking finds the same frequency, and the size there", () => {
    const x = tones(4096, 2048, [1, 20.3], [0.3, 333.3]);
    const velocity = spectrum(x, { rate: 2048, unit: "g", as: "mm/s pk", lowest: 5 });
    const [low, high] = topLines(velocity, { count: 2 });
    expectClose(low?.hertz, 20.3, 1e-5);
    expectClose(low?.value, convert(1, "g pk", "mm/s pk", { at: { hertz: 20.3 } }), 1e-4);
    expectClose(high?.value, convert(0.3, "g pk", "mm/s pk", { at: { hertz: 333.3 } }), 1e-4);
    expect(velocity.values.subarray(0, 10).every((value) => value === 0)).toBe(true);
  });

  it("side lobes are no lines", () => {
    const x = tones(4096, 2048, [1, 100.2]);
    expect(topLines(spectrum(x, { rate: 2048, unit: "g" })).length).toBeLessThanOrEqual(2);
  });

  it("orders are found beside a higher neighbour, and not invented", () => {
    const x = tones(8192, 2048, [0.05, 49.4], [1, 53.9], [0.1, 98.9]);
    const lines = spectrum(x, { rate: 2048, unit: "g", as: "g pk" });
    const [one, two, three] = orderLines(lines, { speed: "2964 r/min", orders: [1, 2, 3] });
    expectClose(one?.line?.value, 0.05, 1e-3);
    expectClose(two?.line?.value, 0.1, 1e-3);
    expect(three?.line).toBeUndefined();
  });

  it.each(windowNames)(
    "%s: the band overall of noise and tones is that of the record within its main lobe",
    (window) => {
      const x = noise(1 << 16).map((value, i) => value + Math.sin((2 * Math.PI * 1000 * i) / 8192));
      const lines = spectrum(x, { rate: 8192, unit: "g", window });
      const whole = overall(x, { rate: 8192, unit: "g", band: [100, 3000], as: "g rms" });
      expectClose(bandOverall(lines, [100, 3000]).value, whole.value, 2e-3);
    },
  );

  it("converted there and back is itself", () => {
    const lines = spectrum(invented(4096, 5120), { rate: 5120, unit: "g" });
    const back = convertSpectrum(convertSpectrum(lines, "um pp", { lowest: 10 }), "g rms", { lowest: 10 });
    for (let k = 8; k < 2048; k++) expectClose(back.values[k], lines.values[k] as number, 1e-12);
    expect(back.derivativeOrder).toBe(0);
  });
});

describe("density", () => {
  it("over its band is the mean square, in every unit; noise is flat at its variance over half the rate", () => {
    const x = noise(1 << 17);
    const psd = density(x, { rate: 2048, unit: "g", segment: 2048 });
    expectClose(densityOverall(psd, [1, 1024]).value, Math.sqrt(1 / 12), 5e-3);
    expectClose(psd.values.subarray(10, 1000).reduce((sum, value) => sum + value, 0) / 990, 1 / 12 / 1024, 5e-3);
    const metric = convertDensity(psd, "(m/s2)2/Hz");
    expectClose(metric.values[100], (psd.values[100] as number) * 9.80665 ** 2, 1e-12);
    expectClose(densityOverall(metric, [10, 100], "g rms").value, densityOverall(psd, [10, 100]).value, 1e-12);
    const velocity = convertDensity(psd, "(mm/s)2/Hz", { lowest: 10 });
    expectClose(velocity.values[50], (psd.values[50] as number) * (9806.65 / (2 * Math.PI * 50)) ** 2, 1e-12);
  });
});

describe("band-limited waveform", () => {
  it("is the integral: its differences over time are the acceleration", () => {
    const rate = 4096;
    const x = tones(rate, rate, [1, 30], [0.5, 90, 1]);
    const velocity = bandWaveform(x, { rate, unit: "m/s2", band: [5, 500], as: "m/s" }).values;
    for (let i = 1; i < 100; i++) {
      const slope = (((velocity[i + 1] as number) - (velocity[i - 1] as number)) * rate) / 2;
      expect(Math.abs(slope - (x[i] as number))).toBeLessThan(5e-3);
    }
  });
});
