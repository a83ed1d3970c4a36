/** The last stage of a transform: a run of neighbouring complex numbers, in place; the results in natural order. */
export type Leaf = (x: Float64Array, i: number) => void;

/** One number is its own transform. */
export function leaf1(): void {}

/** Transform of two neighbours. */
export function leaf2(x: Float64Array, i: number): void {
  const ar = x[i] as number;
  const ai = x[i + 1] as number;
  const br = x[i + 2] as number;
  const bi = x[i + 3] as number;
  x[i] = ar + br;
  x[i + 1] = ai + bi;
  x[i + 2] = ar - br;
  x[i + 3] = ai - bi;
}

/** Transform of four neighbours. */
export function leaf4(x: Float64Array, i: number): void {
  const sumR = (x[i] as number) + (x[i + 4] as number);
  const sumI = (x[i + 1] as number) + (x[i + 5] as number);
  const difR = (x[i] as number) - (x[i + 4] as number);
  const difI = (x[i + 1] as number) - (x[i + 5] as number);
  const oddR = (x[i + 2] as number) + (x[i + 6] as number);
  const oddI = (x[i + 3] as number) + (x[i + 7] as number);
  const swayR = (x[i + 2] as number) - (x[i + 6] as number);
  const swayI = (x[i + 3] as number) - (x[i + 7] as number);
  x[i] = sumR + oddR;
  x[i + 1] = sumI + oddI;
  x[i + 2] = difR + swayI;
  x[i + 3] = difI - swayR;
  x[i + 4] = sumR - oddR;
  x[i + 5] = sumI - oddI;
  x[i + 6] = difR - swayI;
  x[i + 7] = difI + swayR;
}

/** Transform of eight neighbours. */
export function leaf8(x: Float64Array, i: number): void {
  let sumR = (x[i] as number) + (x[i + 8] as number);
  let sumI = (x[i + 1] as number) + (x[i + 9] as number);
  let difR = (x[i] as number) - (x[i + 8] as number);
  let difI = (x[i + 1] as number) - (x[i + 9] as number);
  let oddR = (x[i + 4] as number) + (x[i + 12] as number);
  let oddI = (x[i + 5] as number) + (x[i + 13] as number);
  let swayR = (x[i + 4] as number) - (x[i + 12] as number);
  let swayI = (x[i + 5] as number) - (x[i + 13] as number);
  const e0r = sumR + oddR;
  const e0i = sumI + oddI;
  const e1r = difR + swayI;
  const e1i = difI - swayR;
  const e2r = sumR - oddR;
  const e2i = sumI - oddI;
  const e3r = difR - swayI;
  const e3i = difI + swayR;
  sumR = (x[i + 2] as number) + (x[i + 10] as number);
  sumI = (x[i + 3] as number) + (x[i + 11] as number);
  difR = (x[i + 2] as number) - (x[i + 10] as number);
  difI = (x[i + 3] as number) - (x[i + 11] as number);
  oddR = (x[i + 6] as number) + (x[i + 14] as number);
  oddI = (x[i + 7] as number) + (x[i + 15] as number);
  swayR = (x[i + 6] as number) - (x[i + 14] as number);
  swayI = (x[i + 7] as number) - (x[i + 15] as number);
  const o0r = sumR + oddR;
  const o0i = sumI + oddI;
  const p1r = difR + swayI;
  const p1i = difI - swayR;
  const p3r = difR - swayI;
  const p3i = difI + swayR;
  const o1r = Math.SQRT1_2 * (p1r + p1i);
  const o1i = Math.SQRT1_2 * (p1i - p1r);
  const o2r = sumI - oddI;
  const o2i = oddR - sumR;
  const o3r = Math.SQRT1_2 * (p3i - p3r);
  const o3i = -Math.SQRT1_2 * (p3r + p3i);
  x[i] = e0r + o0r;
  x[i + 1] = e0i + o0i;
  x[i + 2] = e1r + o1r;
  x[i + 3] = e1i + o1i;
  x[i + 4] = e2r + o2r;
  x[i + 5] = e2i + o2i;
  x[i + 6] = e3r + o3r;
  x[i + 7] = e3i + o3i;
  x[i + 8] = e0r - o0r;
  x[i + 9] = e0i - o0i;
  x[i + 10] = e1r - o1r;
  x[i + 11] = e1i - o1i;
  x[i + 12] = e2r - o2r;
  x[i + 13] = e2i - o2i;
  x[i + 14] = e3r - o3r;
  x[i + 15] = e3i - o3i;
}
