import { writeRootOfUnity } from "./root-of-unity";

/**
 * One stage of a transform over `radix` parts of `part` complex numbers each, in place, from index `start` on:
 * the parts are combined, then turned by the stage's roots (decimation in frequency).
 */
export type Butterfly = (x: Float64Array, start: number, part: number, roots: Float64Array) => void;

// written out: a bundle cannot drop arithmetic at the top of a file
const HALF_ROOT_3 = 0.8660254037844386; // sqrt(3) / 2
const COS_72 = 0.30901699437494745; // (sqrt(5) - 1) / 4
const COS_144 = -0.8090169943749475; // (-sqrt(5) - 1) / 4
const SIN_72 = 0.9510565162951535; // sin(2 pi / 5)
const SIN_144 = 0.5877852522924731; // sin(4 pi / 5)

/** Two parts. Roots: one complex number an element. */
export function butterfly2(x: Float64Array, start: number, part: number, roots: Float64Array): void {
  const width = 2 * part;
  for (let a = start, b = start + width, k = 0; k < width; a += 2, b += 2, k += 2) {
    const re = (x[a] as number) - (x[b] as number);
    const im = (x[a + 1] as number) - (x[b + 1] as number);
    const wr = roots[k] as number;
    const wi = roots[k + 1] as number;
    x[a] = (x[a] as number) + (x[b] as number);
    x[a + 1] = (x[a + 1] as number) + (x[b + 1] as number);
    x[b] = re * wr - im * wi;
    x[b + 1] = re * wi + im * wr;
  }
}

/** Three parts. Roots: two complex numbers an element. */
export function butterfly3(x: Float64Array, start: number, part: number, roots: Float64Array): void {
  const width = 2 * part;
  for (let a = start, k = 0; a < start + width; a += 2, k += 4) {
    const b = a + width;
    const c = b + width;
    const ar = x[a] as number;
    const ai = x[a + 1] as number;
    const sr = (x[b] as number) + (x[c] as number);
    const si = (x[b + 1] as number) + (x[c + 1] as number);
    const dr = HALF_ROOT_3 * ((x[b] as number) - (x[c] as number));
    const di = HALF_ROOT_3 * ((x[b + 1] as number) - (x[c + 1] as number));
    x[a] = ar + sr;
    x[a + 1] = ai + si;
    const mr = ar - 0.5 * sr;
    const mi = ai - 0.5 * si;
    x[b] = mr + di;
    x[b + 1] = mi - dr;
    turn(x, b, roots, k);
    x[c] = mr - di;
    x[c + 1] = mi + dr;
    turn(x, c, roots, k + 2);
  }
}

/** Four parts, the work horse. Roots: three complex numbers an element. */
export function butterfly4(x: Float64Array, start: number, part: number, roots: Float64Array): void {
  const width = 2 * part;
  const end = start + width;
  let a = start;
  let b = a + width;
  let c = b + width;
  let d = c + width;
  for (let k = 0; a < end; a += 2, b += 2, c += 2, d += 2, k += 6) {
    const ar = x[a] as number;
    const ai = x[a + 1] as number;
    const br = x[b] as number;
    const bi = x[b + 1] as number;
    const cr = x[c] as number;
    const ci = x[c + 1] as number;
    const dr = x[d] as number;
    const di = x[d + 1] as number;
    const sumR = ar + cr;
    const sumI = ai + ci;
    const difR = ar - cr;
    const difI = ai - ci;
    const oddR = br + dr;
    const oddI = bi + di;
    const swayR = br - dr;
    const swayI = bi - di;
    x[a] = sumR + oddR;
    x[a + 1] = sumI + oddI;
    const y1r = difR + swayI;
    const y1i = difI - swayR;
    const y2r = sumR - oddR;
    const y2i = sumI - oddI;
    const y3r = difR - swayI;
    const y3i = difI + swayR;
    const w1r = roots[k] as number;
    const w1i = roots[k + 1] as number;
    const w2r = roots[k + 2] as number;
    const w2i = roots[k + 3] as number;
    const w3r = roots[k + 4] as number;
    const w3i = roots[k + 5] as number;
    x[b] = y1r * w1r - y1i * w1i;
    x[b + 1] = y1r * w1i + y1i * w1r;
    x[c] = y2r * w2r - y2i * w2i;
    x[c + 1] = y2r * w2i + y2i * w2r;
    x[d] = y3r * w3r - y3i * w3i;
    x[d + 1] = y3r * w3i + y3i * w3r;
  }
}

/** Five parts. Roots: four complex numbers an element. */
export function butterfly5(x: Float64Array, start: number, part: number, roots: Float64Array): void {
  const width = 2 * part;
  for (let a = start, k = 0; a < start + width; a += 2, k += 8) {
    const b = a + width;
    const c = b + width;
    const d = c + width;
    const e = d + width;
    const ar = x[a] as number;
    const ai = x[a + 1] as number;
    const s1r = (x[b] as number) + (x[e] as number);
    const s1i = (x[b + 1] as number) + (x[e + 1] as number);
    const d1r = (x[b] as number) - (x[e] as number);
    const d1i = (x[b + 1] as number) - (x[e + 1] as number);
    const s2r = (x[c] as number) + (x[d] as number);
    const s2i = (x[c + 1] as number) + (x[d + 1] as number);
    const d2r = (x[c] as number) - (x[d] as number);
    const d2i = (x[c + 1] as number) - (x[d + 1] as number);
    x[a] = ar + s1r + s2r;
    x[a + 1] = ai + s1i + s2i;
    const p1r = ar + COS_72 * s1r + COS_144 * s2r;
    const p1i = ai + COS_72 * s1i + COS_144 * s2i;
    const p2r = ar + COS_144 * s1r + COS_72 * s2r;
    const p2i = ai + COS_144 * s1i + COS_72 * s2i;
    const q1r = SIN_72 * d1r + SIN_144 * d2r;
    const q1i = SIN_72 * d1i + SIN_144 * d2i;
    const q2r = SIN_144 * d1r - SIN_72 * d2r;
    const q2i = SIN_144 * d1i - SIN_72 * d2i;
    x[b] = p1r + q1i;
    x[b + 1] = p1i - q1r;
    turn(x, b, roots, k);
    x[c] = p2r + q2i;
    x[c + 1] = p2i - q2r;
    turn(x, c, roots, k + 2);
    x[d] = p2r - q2i;
    x[d + 1] = p2i + q2r;
    turn(x, d, roots, k + 4);
    x[e] = p1r - q1i;
    x[e + 1] = p1i + q1r;
    turn(x, e, roots, k + 6);
  }
}

/** Turns a number by a root, in place. */
function turn(x: Float64Array, at: number, roots: Float64Array, k: number): void {
  const re = x[at] as number;
  const im = x[at + 1] as number;
  const wr = roots[k] as number;
  const wi = roots[k + 1] as number;
  x[at] = re * wr - im * wi;
  x[at + 1] = re * wi + im * wr;
}

/** Any small prime number of parts, by the definition of the transform. */
export function butterflyOf(radix: number): Butterfly {
  const circle = new Float64Array(2 * radix);
  for (let j = 0; j < radix; j++) writeRootOfUnity(circle, 2 * j, j, radix);
  const inputs = new Float64Array(2 * radix);
  return (x, start, part, roots) => {
    const width = 2 * part;
    for (let a = start, k = 0; a < start + width; a += 2, k += 2 * (radix - 1)) {
      for (let j = 0; j < radix; j++) {
        inputs[2 * j] = x[a + j * width] as number;
        inputs[2 * j + 1] = x[a + j * width + 1] as number;
      }
      for (let q = 0; q < radix; q++) {
        let re = inputs[0] as number;
        let im = inputs[1] as number;
        for (let j = 1, t = q; j < radix; j++, t = (t + q) % radix) {
          const hr = inputs[2 * j] as number;
          const hi = inputs[2 * j + 1] as number;
          re += hr * (circle[2 * t] as number) - hi * (circle[2 * t + 1] as number);
          im += hr * (circle[2 * t + 1] as number) + hi * (circle[2 * t] as number);
        }
        const at = a + q * width;
        x[at] = re;
        x[at + 1] = im;
        if (q > 0) turn(x, at, roots, k + 2 * (q - 1));
      }
    }
  };
}
