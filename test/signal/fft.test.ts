import FFT from "fft.js";
import { describe, expect, it } from "vitest";
import { fftOf } from "../../src/signal/fft";
import { realFftOf } from "../../src/signal/real-fft";
import { writeRootOfUnity } from "../../src/signal/root-of-unity";
import { noise } from "./signals";

/** The transform by its definition, with roots of unity that are right to the last bit. */
function byDefinition(x: Float64Array): Float64Array {
  const n = x.length / 2;
  const roots = new Float64Array(2 * n);
  for (let k = 0; k < n; k++) writeRootOfUnity(roots, 2 * k, k, n);
  const bins = new Float64Array(2 * n);
  for (let k = 0; k < n; k++) {
    let re = 0;
    let im = 0;
    for (let j = 0; j < n; j++) {
      const at = 2 * ((j * k) % n);
      const [wr, wi] = [roots[at] as number, roots[at + 1] as number];
      re += (x[2 * j] as number) * wr - (x[2 * j + 1] as number) * wi;
      im += (x[2 * j] as number) * wi + (x[2 * j + 1] as number) * wr;
    }
    bins[2 * k] = re;
    bins[2 * k + 1] = im;
  }
  return bins;
}

function distance(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let off = 0;
  let size = 0;
  for (let i = 0; i < b.length; i++) {
    off += ((a[i] as number) - (b[i] as number)) ** 2;
    size += (b[i] as number) ** 2;
  }
  return Math.sqrt(off / size);
}

const lengths = [...Array.from({ length: 140 }, (_, i) => i + 1), 210, 256, 360, 499, 512, 625, 729, 961, 1009, 1024];

describe("transform", () => {
  it.each(lengths)("of %d complex numbers is the one by definition", (length) => {
    const x = noise(2 * length);
    const expected = byDefinition(x);
    const fft = fftOf(length);
    fft.transform(x);
    const ordered = expected.map((_, i) => x[2 * (fft.places[i >> 1] as number) + (i & 1)] as number);
    expect(distance(ordered, expected)).toBeLessThan(1e-15 * (1 + Math.log2(length)));
  });

  it.each(lengths)("of %d real numbers is the same, and back again the numbers", (length) => {
    const x = noise(length);
    const complex = new Float64Array(2 * length);
    x.forEach((value, i) => {
      complex[2 * i] = value;
    });
    const last = Math.floor(length / 2);
    const fft = realFftOf(length);
    const bins = fft.bins(fft.transform(x.slice()), 0, last);
    expect(distance(bins, byDefinition(complex).subarray(0, bins.length))).toBeLessThan(1e-14);
    expect(distance(fft.waveform(bins, 0), x)).toBeLessThan(1e-14);
    const some = Math.floor(last / 3);
    expect(fft.bins(fft.transform(x.slice()), some, last)).toEqual(bins.subarray(2 * some));
  });

  it.each([65536, 131072])("of %d real numbers is that of fft.js", (length) => {
    const x = noise(length);
    const other = new FFT(length);
    const expected = other.createComplexArray();
    other.realTransform(expected, x);
    const fft = realFftOf(length);
    const bins = fft.bins(fft.transform(x.slice()), 0, length / 2);
    expect(distance(bins, expected.slice(0, length + 2))).toBeLessThan(1e-15);
  });

  it("has no phase error in a long record of prime length", () => {
    const length = 100003;
    const x = Float64Array.from({ length }, (_, i) => Math.cos((2 * Math.PI * ((i * 1234) % length)) / length));
    const fft = realFftOf(length);
    const bins = fft.bins(fft.transform(x), 1233, 1235);
    expect(Math.abs((bins[2] as number) / (length / 2) - 1)).toBeLessThan(1e-13);
    expect(Math.hypot(bins[0] as number, bins[1] as number) / length).toBeLessThan(1e-13);
  });
});

describe("roots of unity", () => {
  it("are exact where they can be, and on the circle everywhere", () => {
    const root = new Float64Array(2);
    for (const [k, re, im] of [
      [0, 1, 0],
      [2, 0, -1],
      [4, -1, 0],
      [6, 0, 1],
    ] as const) {
      writeRootOfUnity(root, 0, k, 8);
      expect([root[0], root[1]].map((value) => (value as number) + 0)).toEqual([re, im]);
    }
    for (let k = 0; k < 2000; k++) {
      writeRootOfUnity(root, 0, k, 997);
      const angle = (-2 * Math.PI * (k % 997)) / 997;
      expect(Math.abs((root[0] as number) - Math.cos(angle))).toBeLessThan(1e-15);
      expect(Math.abs((root[1] as number) - Math.sin(angle))).toBeLessThan(1e-15);
    }
  });
});
