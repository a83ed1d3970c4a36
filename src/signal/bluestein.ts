import type { Fft } from "./fft-type";
import { writeRootOfUnity } from "./root-of-unity";

/**
 * Bluestein's transform, for a length with a large prime in it: a convolution with a chirp of a power of two.
 *
 * L. I. Bluestein, A linear filtering approach to the computation of the discrete Fourier transform, IEEE Trans.
 * Audio Electroacoust. 18 (1970) 451-455: k j = (k^2 + j^2 - (k - j)^2) / 2.
 */
export function bluestein(length: number, fftOf: (length: number) => Fft): Fft {
  const size = 2 ** Math.ceil(Math.log2(2 * length - 1));
  const inner = fftOf(size);
  const chirp = new Float64Array(2 * length);
  // k^2 modulo 2 length grows by 2 k + 1: whole numbers, so that the phase of a long record is as good as of a short one
  for (let k = 0, square = 0; k < length; square = (square + 2 * k + 1) % (2 * length), k++) {
    writeRootOfUnity(chirp, 2 * k, square, 2 * length);
  }
  const kernel = new Float64Array(2 * size);
  for (let k = 0; k < length; k++) {
    for (const at of k === 0 ? [0] : [2 * k, 2 * (size - k)]) {
      kernel[at] = chirp[2 * k] as number;
      kernel[at + 1] = -(chirp[2 * k + 1] as number);
    }
  }
  inner.transform(kernel);

  const transform = (x: Float64Array): void => {
    const work = new Float64Array(2 * size);
    for (let at = 0; at < 2 * length; at += 2) {
      const re = x[at] as number;
      const im = x[at + 1] as number;
      const cr = chirp[at] as number;
      const ci = chirp[at + 1] as number;
      work[at] = re * cr - im * ci;
      work[at + 1] = re * ci + im * cr;
    }
    inner.transform(work);
    // the product in natural order and conjugated: another forward transform is then the inverse one
    const product = new Float64Array(2 * size);
    for (let k = 0; k < size; k++) {
      const at = 2 * (inner.places[k] as number);
      const re = work[at] as number;
      const im = work[at + 1] as number;
      const kr = kernel[at] as number;
      const ki = kernel[at + 1] as number;
      product[2 * k] = (re * kr - im * ki) / size;
      product[2 * k + 1] = -(re * ki + im * kr) / size;
    }
    inner.transform(product);
    for (let k = 0; k < length; k++) {
      const at = 2 * (inner.places[k] as number);
      const re = product[at] as number;
      const im = -(product[at + 1] as number);
      const cr = chirp[2 * k] as number;
      const ci = chirp[2 * k + 1] as number;
      x[2 * k] = re * cr - im * ci;
      x[2 * k + 1] = re * ci + im * cr;
    }
  };
  return { length, places: Int32Array.from({ length }, (_, k) => k), run: 1, transform };
}
