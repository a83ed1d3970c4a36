/** A discrete Fourier transform of one length, tables and all. */
export interface Fft {
  /** How many complex numbers go in and come out. */
  readonly length: number;
  /**
   * Transforms `length` complex numbers (real and imaginary parts in turn) in place, `sum x_j exp(-2 pi i j k / n)`.
   *
   * Bin k then stands at complex index `places[k]`, since most callers want only a band of them.
   */
  transform(x: Float64Array): void;
  readonly places: Int32Array;
  /** How many bins stand side by side: bin `k + length / run` beside bin `k`. */
  readonly run: number;
}
