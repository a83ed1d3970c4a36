// Overall levels: the whole record against the bare transform of fft.js, the causal stream, and its memory.
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import FFT from "fft.js";
import { bestOf, finish, report } from "./measure.mjs";

const { overall, overallStream, spectrum } = await import(process.argv[2] ?? "../dist/signal.js");

const LENGTH = 2 ** 20;
const RATE = 25600;

/** Samples by a formula: two tones and the noise of a linear congruential generator. */
function wave(length) {
  let state = 1;
  return Float64Array.from({ length }, (_, i) => {
    state = (Math.imul(1664525, state) + 1013904223) >>> 0;
    return Math.sin(0.0061 * i) + 0.3 * Math.sin(0.1 * i) + state / 2 ** 32;
  });
}

const samples = wave(LENGTH);
const fft = new FFT(LENGTH);
const out = fft.createComplexArray();
const settings = { rate: RATE, unit: "g", as: "mm/s rms" };
const level = (band, more) => () => overall(samples, { ...settings, band, ...more });

const odd = samples.subarray(0, 1_000_000);
const times = bestOf(
  {
    "fft.js, bare real transform": [1, () => fft.realTransform(out, samples)],
    "10-1000 Hz": [1, level([10, 1000])],
    "10-1000 Hz, line of least squares off": [1, level([10, 1000], { detrend: "linear" })],
    "10-12800 Hz, all bins": [1, level([10, 12800])],
    "10-1000 Hz, -3 dB edges": [1, level([10, 1000], { edges: "-3 dB" })],
    "10-1000 Hz, Hann": [1, level([10, 1000], { window: "hann" })],
    "10-1000 Hz, 10^6 samples": [1, () => overall(odd, { ...settings, band: [10, 1000] })],
    "10-1000 Hz, true peak": [1, level([10, 1000], { as: "mm/s pk" })],
    "spectrum, Hann, 8192 lines averaged": [1, () => spectrum(samples, { rate: RATE, unit: "g", segment: 16384 })],
  },
  12,
);
const bare = times["fft.js, bare real transform"];
console.log(`fft.js, bare real transform of 2^20: ${(bare / 1e6).toFixed(1)} ms`);
report("overall of 2^20 samples, 10-1000 Hz", times["10-1000 Hz"] / bare, 1.6, "x bare fft.js");
for (const name of ["10-1000 Hz, line of least squares off", "10-12800 Hz, all bins"]) {
  report(`overall of 2^20 samples, ${name}`, times[name] / bare, 1.6, "x bare fft.js");
}
for (const [name, time] of Object.entries(times).slice(4)) {
  console.log(`      ${name.padEnd(58)} ${(time / bare).toFixed(2).padStart(8)} x bare fft.js`);
}

// the causal path, in chunks as they come from a file, then memory over a hundred times as many
const chunk = wave(65536);
const single = Float32Array.from(chunk);
const stream = overallStream({ ...settings, band: [10, 1000] });
const streamed = bestOf(
  {
    "64-bit chunks of 65536": [10 * chunk.length, () => repeat(10, () => stream.push(chunk))],
    "32-bit chunks of 65536": [10 * chunk.length, () => repeat(10, () => stream.push(single))],
    "64-bit chunks of 1000": [650 * 1000, () => repeat(10, () => pieces(1000))],
  },
  60,
);
for (const [name, each] of Object.entries(streamed)) report(`stream, ${name}`, 1000 / each, 25, "M samples/s", true);

function pieces(size) {
  for (let i = 0; i + size <= chunk.length; i += size) stream.push(chunk.subarray(i, i + size));
}

function repeat(count, act) {
  for (let i = 0; i < count; i++) act();
}

setFlagsFromString("--expose-gc");
const collect = runInNewContext("gc");
const held = [];
for (let round = 0; round < 6; round++) {
  repeat(200, () => stream.push(chunk));
  // what a first collection frees of array buffers is counted out only at the next one
  collect();
  collect();
  held.push((process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers) / 2 ** 20);
}
const growth = held.at(-1) - held[1];
report(`stream, memory gained over ${(4 * 200 * chunk.length) / 1e6} M samples`, Math.max(0, growth), 1, "MiB");
finish("Overall from samples");
