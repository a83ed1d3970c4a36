import * as signal from "veladis/signal";
import { vi } from "vitest";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";
import { noise, tones } from "./signals";

// every detector of the catalogue reads running sums: here the average is one that cannot
vi.mock("../../src/detectors/index", async (original) => {
  const real = await original<typeof import("../../src/detectors/index")>();
  const { ofSums: _, ...avg } = real.detectorFacts.avg;
  return { ...real, detectorFacts: { ...real.detectorFacts, avg } };
});

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const s: Record<string, Loose> = signal;

const rate = 1000;
const options = { rate, unit: "g", band: [10, 400], as: "mm/s rms" };
const wave = tones(1000, rate, [1, 50]);
const overall = (changed: object, samples: unknown = wave) => s.overall(samples, { ...options, ...changed });
const bad = (value: number) => {
  const x = noise(1000);
  x[617] = value;
  return x;
};
const fed = (stream: Loose, samples: unknown) => {
  stream.push(samples);
  return stream.read();
};
const stream = (changed: object, samples: unknown = wave) => fed(s.overallStream({ ...options, ...changed }), samples);
const spectrum = (changed: object) => s.spectrum(wave, { rate, unit: "g", ...changed });
const spectra = (samples: unknown) => fed(s.spectrumStream({ rate, unit: "g", segment: 8 }), samples);
const lines = spectrum({});
const density = s.density(wave, { rate, unit: "g" });
const profile = (points: unknown, changed: object = {}) =>
  s.profileOverall(points, { unit: "g2/Hz", as: "g rms", ...changed });
const flat = [
  [10, 1],
  [100, 1],
];
const filter = (changed: object) => s.butterworth({ kind: "low-pass", order: 2, edges: [100], rate, ...changed });

const listed = (rows: unknown, changed: object = { tones: true }) =>
  s.linesOverall(rows, { type: "mm/s rms", as: "mm/s rms", band: [10, 40], ...changed });
const four = [
  [10, 1],
  [20, 2],
  [30, 1],
  [40, 1],
];
const apart = (first: unknown, second: unknown, changed: object = {}) =>
  s.resolvingSettings(first, second, { highest: "1 kHz", ...changed });

const cases: Cases = {
  "listed lines, none": () => listed([]),
  "listed lines, no list": () => listed("10 Hz"),
  "listed lines, one of three": () => listed([[10, 1, 2]]),
  "listed lines, one a number": () => listed([10]),
  "listed lines, below 0 Hz": () => listed([[-10, 1]]),
  "listed lines, of a size below zero": () => listed([[10, -1]]),
  "listed lines, that fall": () => listed([...four].reverse()),
  "listed lines, of zero": () => listed([[10, 0]]),
  "listed lines, of which nothing is told": () => listed(four, {}),
  "listed lines, of which two things are told": () => listed(four, { tones: true, window: "hann" }),
  "listed lines, tones as a word": () => listed(four, { tones: "yes" }),
  "listed lines, of no window": () => listed(four, { window: "round" }),
  "listed lines, of a noise bandwidth in words": () => listed(four, { noiseBandwidth: "wide" }),
  "listed lines, of a noise bandwidth of none": () => listed(four, { noiseBandwidth: 0.5 }),
  "listed lines, too few for a window": () => listed(four.slice(0, 2), { window: "hann" }),
  "listed lines, uneven": () =>
    listed(
      [
        [10, 1],
        [20, 1],
        [37, 1],
        [40, 1],
      ],
      { window: "hann" },
    ),
  "listed lines, band beyond": () => listed(four, { window: "hann", band: [10, 400] }),
  "listed lines, band without one": () => listed(four, { tones: true, band: [11, 12] }),
  "listed lines, as a peak": () => listed(four, { tones: true, as: "mm/s pk" }),
  "listed lines, in no type": () => listed(four, { tones: true, type: "mm/s" }),
  "listed lines, of no options": () => s.linesOverall(four),
  "settings that resolve, one frequency twice": () => apart("25 Hz", "25 Hz"),
  "settings that resolve, above the highest": () => apart("25 Hz", "2 kHz"),
  "settings that resolve, too many lines": () => apart("25 Hz", { hertz: 25.000001 }),
  "settings that resolve, no average": () => apart("25 Hz", "26 Hz", { averages: 0 }),
  "settings that resolve, whole overlap": () => apart("25 Hz", "26 Hz", { overlap: 1 }),
  "settings that resolve, of no window": () => apart("25 Hz", "26 Hz", { window: "round" }),
  "settings that resolve, of no options": () => s.resolvingSettings("25 Hz", "26 Hz"),
  "samples, none": () => overall({}, null),
  "samples, a text among them": () => overall({}, ["1", 2]),
  "samples, not a number": () => overall({}, bad(Number.NaN)),
  "samples, infinite": () => overall({}, bad(Number.POSITIVE_INFINITY)),
  "samples, no more than one": () => overall({}, [1]),
  "samples, an empty list": () => overall({}, []),
  "samples, all the same": () => overall({}, new Float64Array(1000).fill(0.3)),
  "samples, beyond what squares hold": () =>
    overall(
      {},
      wave.map((x: number) => x * 1e300),
    ),
  "samples, with a detector": () => overall({ unit: "g rms" }),
  "samples, without unit": () => overall({ unit: undefined }),
  "samples, in a unit near one": () => overall({ unit: "mn/s2" }),
  "sampling rate, zero": () => overall({ rate: 0 }),
  "sampling rate, none": () => overall({ rate: undefined }),
  "answer, none": () => overall({ as: undefined }),
  "answer, without detector": () => overall({ as: "mm/s" }),
  "answer, a detector that is none": () => overall({ as: "mm/s quasi" }),
  "answer, as a level": () => overall({ as: "dB re 1e-9 m/s" }),
  "band, none": () => overall({ band: 10 }),
  "band, a lower edge not a number": () => overall({ band: [Number.NaN, 400] }),
  "band, an upper edge not a number": () => overall({ band: [10, Number.NaN] }),
  "band, upside down": () => overall({ band: [400, 10] }),
  "band, above half the rate": () => overall({ band: [10, 501] }),
  "band, below the resolution": () => overall({ band: [0.9, 400] }),
  "band, without a bin": () => overall({ band: [10.2, 10.8] }),
  "band, edges that are none": () => overall({ edges: "-3dB" }),
  "band, of a spectrum below its lowest line": () =>
    s.bandOverall(s.convertSpectrum(lines, "mm/s rms", { lowest: 20 }), [10, 100]),
  "trend, near one": () => overall({ detrend: "liner" }),
  "trend, a number": () => overall({ detrend: 3 }),
  "filter order, zero": () => overall({ edges: "-3 dB", order: 0 }),
  "window, for a peak": () => overall({ as: "mm/s pk", window: "hann" }),
  "window, near one": () => spectrum({ window: "haning" }),
  "window, near none": () => spectrum({ window: "kaiser" }),
  "window, of no samples": () => s.windowWeights("hann", 0),
  "window, longer than any record": () => s.windowWeights("hann", 2 ** 30),
  "window, of half a sample": () => s.windowWeights("hann", 2.5),
  "points between samples, half of one": () => overall({ as: "mm/s pk", oversample: 0.5 }),
  "points between samples, more than there is room for": () =>
    s.overall(
      Float64Array.from({ length: 600_000 }, (_, i) => i % 3),
      { ...options, as: "mm/s pk", oversample: 64 },
    ),
  "stream, less than a period of the lower edge": () => stream({ settlingTime: 0 }, wave.subarray(0, 99)),
  "stream, not settled": () => stream({}, wave.subarray(0, 100)),
  "stream, all the same": () => stream({}, new Float64Array(2000).fill(1)),
  "stream, a settling time below zero": () => stream({ settlingTime: -1 }),
  "stream, a detector that needs the whole signal": () => stream({ as: "mm/s avg" }),
  "spectrum stream, no whole segment": () => spectra([1, 2]),
  "spectrum stream, all the same": () => spectra(new Float64Array(9).fill(0.1)),
  "segment, longer than the record": () => spectrum({ segment: 1e8 }),
  "segment, of a stream, longer than its room": () => s.spectrumStream({ rate, unit: "g", segment: 1e8 }),
  "segment, half a sample": () => spectrum({ segment: 10.5 }),
  "segment, overlapping whole": () => spectrum({ segment: 100, overlap: 1 }),
  "spectrum, another quantity from no frequency": () => spectrum({ as: "mm/s rms" }),
  "spectrum, another quantity from below zero": () => s.convertSpectrum(lines, "mm/s rms", { lowest: -1 }),
  "spectrum, another quantity from below the resolution": () => s.convertSpectrum(lines, "mm/s rms", { lowest: 0.5 }),
  "lines, none asked for": () => s.topLines(lines, { count: 0 }),
  "lines, within half an order": () => s.orderLines(lines, { speed: "25 Hz", within: 0.5 }),
  "lines, beyond the spectrum": () => s.orderLines(lines, { speed: "25 Hz", orders: [21] }),
  "density unit, none": () => s.densityUnit(undefined),
  "density unit, without square": () => s.densityUnit("g/Hz"),
  "density unit, a unit of amplitude": () => s.densityUnit("g"),
  "density, as another quantity": () => s.densityOverall(density, [20, 100], "mm/s rms"),
  "profile, none": () => profile(7),
  "profile, points that are none": () => profile([1, 2]),
  "profile, one point": () => profile([[10, 1]]),
  "profile, from zero": () =>
    profile([
      [0, 1],
      [20, 1],
    ]),
  "profile, a density of zero": () =>
    profile([
      [10, 0],
      [20, 1],
    ]),
  "profile, frequencies that fall": () =>
    profile([
      [10, 1],
      [5, 1],
    ]),
  "profile, as a peak": () => profile(flat, { as: "g pk" }),
  "profile, zero deviations": () => profile(flat, { sigmas: 0 }),
  "profile density, at zero": () => s.profileDensity(flat, 0),
  "profile density, outside": () => s.profileDensity(flat, 250),
  "point along a slope, at zero": () => s.pointAlong([10, 1], 3, 0),
  "point along a slope, from zero": () => s.pointAlong([0, 1], 3, 20),
  "point along a slope, from a density of zero": () => s.pointAlong([10, 0], 3, 20),
  "point along a slope, to nothing": () => s.pointAlong([1, 1e-300], -1e4, 1e3),
  "slope, not a number": () => s.slopeExponent(Number.NaN),
  "exponent, not a number": () => s.decibelsPerOctave(Number.NaN),
  "deviations, below zero": () => s.gaussianWithin(-1),
  "deviations of peaks, below zero": () => s.rayleighBeyond(-1),
  "filter, a type that is none": () => filter({ kind: "notch" }),
  "filter, a type near one": () => filter({ kind: "lowpass" }),
  "filter, an edge at half the rate": () => filter({ edges: [500] }),
  "filter, one edge too few": () => filter({ kind: "band-pass" }),
  "filter, no edges": () => filter({ edges: [] }),
  "filter, edges that are none": () => filter({ edges: 100 }),
  "filter, an edge too low to be told from zero": () => filter({ kind: "band-pass", edges: [1e-320, 100] }),
  "filter, of no options": () => s.butterworth(null),
  "band filter, at zero": () => s.bandPassPowerGain([10, 100], 2, 0),
  "response, above half the rate": () => s.responseAt([], rate, rate),
  "response, at no frequency": () => s.responseAt([], Number.NaN, rate),
  "response, of no sections": () => s.responseAt(undefined, 25, rate),
  "response, of a section without b": () => s.responseAt([{ a: [0, 0] }], 25, rate),
  "response, of a section without a": () => s.responseAt([{ b: [1, 0, 0] }], 25, rate),
  "response, of a coefficient that is none": () => s.responseAt([{ b: [1, 0, Number.NaN], a: [0, 0] }], 25, rate),
  "point along a slope, from nothing": () => s.pointAlong(undefined, 3, 20),
  "exponent, beyond decibels": () => s.decibelsPerOctave(1e308),
  "samples, nothing but a line": () => s.descriptors([1, 2, 3, 4], { unit: "g", detrend: "linear" }),
  "density, of no options": () => s.density(wave),
  "descriptors, of no options": () => s.descriptors(wave),
  "overall, of no options": () => s.overall(wave),
  "waveform of a band, of no options": () => s.bandWaveform(wave),
  "stream of overalls, of no options": () => s.overallStream(),
  "spectrum, of no options": () => s.spectrum(wave),
  "stream of spectra, of no options": () => s.spectrumStream(),
  "profile, of no options": () => s.profileOverall(flat),
  "spectrum, converted by nothing": () => s.convertSpectrum(lines, "g rms", null),
  "density, converted by nothing": () => s.convertDensity(density, "g2/Hz", null),
  "lines, by nothing": () => s.topLines(lines, null),
  "lines of orders, by nothing": () => s.orderLines(lines),
  "lines of orders, of no list": () => s.orderLines(lines, { speed: "25 Hz", orders: 2 }),
  "lines of orders, not a number": () => s.orderLines(lines, { speed: "25 Hz", orders: [Number.NaN] }),
  "lines, of no spectrum": () => s.topLines(undefined),
  "lines, of no density": () => s.densityOverall(undefined, [20, 100]),
  "lines, of a density in no unit": () => s.densityOverall({ ...density, squared: "toString" }, [20, 100], "g rms"),
  ...Object.fromEntries(
    Object.entries({
      unit: "constructor",
      detector: "max",
      quantity: "jerk",
      window: "box",
      detrend: "all",
      noiseBandwidth: 0,
      coherentGain: 0,
      segment: 0,
      averages: 0,
      overlap: -1,
      derivativeOrder: 3,
      rate: 0,
      resolution: 0,
      lowest: -1,
      values: [1, 2],
    }).map(([name, value]) => [`lines, a wrong ${name}`, () => s.topLines({ ...lines, [name]: value })]),
  ),
  "lines, not a number among them": () => s.topLines({ ...lines, values: Float64Array.of(1, Number.NaN, 2) }),
};

holdWording("signal", cases);
