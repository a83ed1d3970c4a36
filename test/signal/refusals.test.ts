import type { VeladisErrorCode } from "veladis";
import {
  bandOverall,
  butterworth,
  convertDensity,
  convertSpectrum,
  density,
  densityOverall,
  densityUnit,
  descriptors,
  detrended,
  orderLines,
  overall,
  overallStream,
  profileDensity,
  profileOverall,
  type Spectrum,
  spectrum,
  spectrumStream,
  topLines,
  windowName,
  windowWeights,
} from "veladis/signal";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";
import { noise, tones } from "./signals";

const options = { rate: 1000, unit: "g", band: [10, 400], as: "mm/s rms" } as const;
const wave = tones(1000, 1000, [1, 50]);
const withBad = (value: number): Float64Array => {
  const x = noise(1000);
  x[617] = value;
  return x;
};
const lines: Spectrum = spectrum(wave, { rate: 1000, unit: "g" });

type Case = readonly [what: string, code: VeladisErrorCode, act: () => unknown, says?: RegExp];

// biome-ignore format: a row of a table is a line
const cases: readonly Case[] = [
  ["NaN sample", "not-a-number", () => overall(withBad(Number.NaN), options), /index 617/],
  ["infinite sample", "not-finite", () => overall(withBad(Number.POSITIVE_INFINITY), options), /index 617/],
  ["opposite infinities", "not-finite", () => { const x = withBad(Number.POSITIVE_INFINITY); x[700] = Number.NEGATIVE_INFINITY; return overall(x, options); }, /index 617/],
  ["a text among the samples", "wrong-type", () => overall(["1", 2] as unknown as number[], options), /index 0/],
  ["a hole among the samples", "missing-option", () => overall(new Array(3) as number[], options), /index 0/],
  ["no array", "wrong-type", () => overall(7 as unknown as number[], options)],
  ["a text for samples", "wrong-type", () => overall("123" as unknown as number[], options)],
  ["big integers", "wrong-type", () => overall(BigInt64Array.of(1n, 2n) as unknown as number[], options)],
  ["a view of bytes", "wrong-type", () => overall(new DataView(new ArrayBuffer(8)) as unknown as number[], options)],
  ["no samples", "missing-fact", () => overall([], options), /0 samples/],
  ["one sample", "missing-fact", () => overall([1], options), /one sample/],
  ["a constant signal", "sensor-fault", () => overall(new Float64Array(1000).fill(0.3), options), /dead/],
  ["samples beyond squares", "not-finite", () => overall(wave.map((x) => x * 1e300), options)],
  ["rate zero", "not-positive", () => overall(wave, { ...options, rate: 0 })],
  ["negative rate", "not-positive", () => overall(wave, { ...options, rate: -1 })],
  ["rate NaN", "not-a-number", () => overall(wave, { ...options, rate: Number.NaN })],
  ["band above half the rate", "out-of-range", () => overall(wave, { ...options, band: [10, 501] }), /500 Hz/],
  ["band below the resolution", "out-of-range", () => overall(wave, { ...options, band: [0.9, 400] }), /resolution/],
  ["band from zero", "out-of-range", () => overall(wave, { ...options, band: [0, 400] })],
  ["band upside down", "out-of-range", () => overall(wave, { ...options, band: [400, 10] })],
  ["band without a bin", "out-of-range", () => overall(wave, { ...options, band: [10.2, 10.8] }), /holds a bin/],
  ["band that is none", "wrong-type", () => overall(wave, { ...options, band: 10 as unknown as [number, number] })],
  ["band of NaN", "not-a-number", () => overall(wave, { ...options, band: [Number.NaN, 10] })],
  ["unknown edges", "unknown-option", () => overall(wave, { ...options, edges: "soft" as "ideal" })],
  ["unknown trend", "unknown-option", () => overall(wave, { ...options, detrend: "cubic" as "mean" })],
  ["order zero", "out-of-range", () => overall(wave, { ...options, edges: "-3 dB", order: 0 })],
  ["a window for a peak", "unknown-option", () => overall(wave, { ...options, as: "mm/s pk", window: "hann" })],
  ["oversampling by half", "out-of-range", () => overall(wave, { ...options, oversample: 0.5 })],
  ["answer without detector", "missing-detector", () => overall(wave, { ...options, as: "mm/s" as "mm/s rms" })],
  ["answer with a frequency", "unknown-unit", () => overall(wave, { ...options, as: "mm/s rms at 25 Hz" as "mm/s rms" })],
  ["answer in decibels", "out-of-range", () => overall(wave, { ...options, as: "dB re 1e-9 m/s" as "mm/s rms" }), /convert the answer/],
  ["answer by an unknown detector", "unknown-detector", () => overall(wave, { ...options, as: "mm/s quasi" as "mm/s rms" })],
  ["answer in an unknown unit", "unknown-unit", () => overall(wave, { ...options, as: "furlong rms" as "mm/s rms" })],
  ["samples with a detector", "unknown-unit", () => overall(wave, { ...options, unit: "g rms" as "g" }), /without a detector/],
  ["unknown unit", "unknown-unit", () => overall(wave, { ...options, unit: "gee-whiz" as "g" })],

  ["stream: NaN", "not-a-number", () => { const s = overallStream(options); s.push(wave); s.push([1, Number.NaN]); }, /index 1001/],
  ["stream: NaN far in a long chunk", "not-a-number", () => { const x = noise(20000); x[15000] = Number.NaN; overallStream(options).push(x); }, /index 15000/],
  ["stream: not settled", "missing-fact", () => { const s = overallStream(options); s.push(wave.subarray(0, 100)); s.read(); }, /settles/],
  ["stream: nothing yet", "missing-fact", () => overallStream(options).read()],
  ["stream: nothing since", "missing-fact", () => { const s = overallStream(options); s.push(wave); s.take(); s.take(); }],
  ["stream: constant", "sensor-fault", () => { const s = overallStream(options); s.push(new Float64Array(2000).fill(1)); s.read(); }],
  ["stream: constant since", "sensor-fault", () => { const s = overallStream(options); s.push(wave); s.take(); s.push(new Float64Array(500).fill(wave[999] as number)); s.take(); }],
  ["stream: no array", "missing-option", () => overallStream(options).push(undefined as unknown as number[])],
  ["stream: order that leaves no slope", "out-of-range", () => overallStream({ ...options, order: 1 })],
  ["stream: order for two integrations", "out-of-range", () => overallStream({ ...options, as: "um rms", order: 2 })],
  ["stream: band to half the rate", "out-of-range", () => overallStream({ ...options, band: [10, 500] })],
  ["stream: negative settling", "negative", () => overallStream({ ...options, settlingTime: -1 })],
  ["spectrum stream: no segment full", "missing-fact", () => { const s = spectrumStream({ rate: 1, unit: "g", segment: 8 }); s.push([1, 2]); s.read(); }],
  ["spectrum stream: constant", "sensor-fault", () => { const s = spectrumStream({ rate: 1, unit: "g", segment: 8 }); s.push(new Float64Array(9).fill(0.1)); s.read(); }],

  ["spectrum: quantity without lowest frequency", "missing-frequency", () => spectrum(wave, { rate: 1000, unit: "g", as: "mm/s rms" })],
  ["spectrum stream: the same, before any sample", "missing-frequency", () => spectrumStream({ rate: 1000, unit: "g", as: "mm/s rms", segment: 8 })],
  ["spectrum: lowest frequency below resolution", "out-of-range", () => convertSpectrum(lines, "mm/s rms", { lowest: 0.5 })],
  ["spectrum: as a level", "out-of-range", () => convertSpectrum(lines, "dB re 1 um/s2" as "g rms")],
  ["spectrum: segment longer than the record", "missing-fact", () => spectrum(wave, { rate: 1000, unit: "g", segment: 2000 })],
  ["spectrum: segment of a half", "out-of-range", () => spectrum(wave, { rate: 1000, unit: "g", segment: 10.5 })],
  ["spectrum: whole overlap", "out-of-range", () => spectrum(wave, { rate: 1000, unit: "g", segment: 100, overlap: 1 })],
  ["spectrum: unknown window", "unknown-option", () => spectrum(wave, { rate: 1000, unit: "g", window: "kaiser" as "hann" })],
  ["band of a spectrum below its lowest line", "out-of-range", () => bandOverall(convertSpectrum(lines, "mm/s rms", { lowest: 20 }), [10, 100])],
  ["band of a spectrum above half the rate", "out-of-range", () => bandOverall(lines, [10, 600])],
  ["no lines asked for", "out-of-range", () => topLines(lines, { count: 0 })],
  ["order beyond the spectrum", "out-of-range", () => orderLines(lines, { speed: "25 Hz", orders: [21] })],
  ["reach of half an order", "out-of-range", () => orderLines(lines, { speed: "25 Hz", within: 0.5 })],

  ["density: one segment too few", "missing-fact", () => density(wave.subarray(0, 15), { rate: 1000, unit: "g" })],
  ["density unit without its square", "syntax", () => densityUnit("g/Hz")],
  ["density unit of a stroke without brackets", "syntax", () => densityUnit("m/s2/Hz")],
  ["density unit of nothing known", "unknown-unit", () => densityUnit("furlong2/Hz")],
  ["density: quantity without lowest frequency", "missing-frequency", () => convertDensity(density(wave, { rate: 1000, unit: "g" }), "(mm/s)2/Hz")],
  ["density overall of another quantity", "wrong-quantity", () => densityOverall(density(wave, { rate: 1000, unit: "g" }), [20, 100], "mm/s rms")],
  ["density overall as a peak", "wrong-quantity", () => densityOverall(density(wave, { rate: 1000, unit: "g" }), [20, 100], "g pk")],

  ["profile of one point", "missing-fact", () => profileOverall([[10, 1]], { unit: "g2/Hz", as: "g rms" })],
  ["profile that turns back", "out-of-range", () => profileOverall([[10, 1], [5, 1]], { unit: "g2/Hz", as: "g rms" })],
  ["profile that stands still", "out-of-range", () => profileOverall([[10, 1], [10, 2]], { unit: "g2/Hz", as: "g rms" })],
  ["profile with a density of zero", "not-positive", () => profileOverall([[10, 0], [20, 1]], { unit: "g2/Hz", as: "g rms" }), /break point 0/],
  ["profile with a negative density", "not-positive", () => profileOverall([[10, 1], [20, -1]], { unit: "g2/Hz", as: "g rms" })],
  ["profile from 0 Hz", "not-positive", () => profileOverall([[0, 1], [20, 1]], { unit: "g2/Hz", as: "g rms" })],
  ["profile that is none", "wrong-type", () => profileOverall([1, 2] as unknown as [[number, number]], { unit: "g2/Hz", as: "g rms" })],
  ["profile as a peak", "unknown-detector", () => profileOverall([[10, 1], [20, 1]], { unit: "g2/Hz", as: "g pk" })],
  ["density outside a profile", "out-of-range", () => profileDensity([[10, 1], [20, 1]], 25)],

  ["descriptors of a constant", "sensor-fault", () => descriptors([1, 1, 1], { unit: "g" })],
  ["descriptors of one sample", "missing-fact", () => descriptors([1], { unit: "g" })],
  ["descriptors with NaN", "not-a-number", () => descriptors([1, Number.NaN], { unit: "g" }), /index 1/],
  ["detrending NaN", "not-a-number", () => detrended([Number.NaN])],
  ["window without a name", "unknown-option", () => windowName("")],
  ["window of no samples", "not-positive", () => windowWeights("hann", 0)],
  ["window of half a sample", "out-of-range", () => windowWeights("hann", 2.5)],
  ["filter edge at half the rate", "out-of-range", () => butterworth({ kind: "low-pass", order: 2, edges: [500], rate: 1000 })],
  ["filter with one edge too few", "out-of-range", () => butterworth({ kind: "band-pass", order: 2, edges: [100], rate: 1000 })],
  ["filter of an unknown type", "unknown-option", () => butterworth({ kind: "notch" as "low-pass", order: 2, edges: [100], rate: 1000 })],
];

describe("refused, and nothing invented", () => {
  it.each(cases.map(([what, code, act, says]) => ({ what, code, act, says })))(
    "$what: $code",
    ({ code, act, says }) => {
      const refusal = refusalOf(act);
      expect(refusal.code, refusal.message).toBe(code);
      if (says !== undefined) expect(refusal.message).toMatch(says);
    },
  );

  it("a refused chunk leaves the stream as it was", () => {
    const [plain, disturbed] = [overallStream(options), overallStream(options)];
    for (const stream of [plain, disturbed]) stream.push(wave);
    const long = new Float64Array(10000).fill(3);
    long[9999] = Number.NaN;
    refusalOf(() => disturbed.push(long));
    for (const stream of [plain, disturbed]) stream.push(wave);
    expect(disturbed.read()).toEqual(plain.read());
  });
});
