import { inPlace, requireFinite, requireList, VeladisError, withParameters } from "../core/index";
import { finiteLevel } from "./finite-level";
import { requireSamplingRate } from "./samples";

/** A second-order section: `(b0 + b1/z + b2/z^2) / (1 + a1/z + a2/z^2)`. */
export interface Section {
  readonly b: readonly [number, number, number];
  readonly a: readonly [number, number];
}

/** Real and imaginary part. */
export type Complex = readonly [re: number, im: number];

/** `(c0 + c1/z + c2/z^2)` on the unit circle. */
function polynomial(c0: number, c1: number, c2: number, angle: number): Complex {
  return [c0 + c1 * Math.cos(angle) + c2 * Math.cos(2 * angle), -c1 * Math.sin(angle) - c2 * Math.sin(2 * angle)];
}

/** The complex response of a section at an angle of the unit circle (pi is half the sampling rate). */
export function sectionResponse({ b, a }: Section, angle: number): Complex {
  const [nr, ni] = polynomial(b[0], b[1], b[2], angle);
  const [dr, di] = polynomial(1, a[0], a[1], angle);
  const size = dr * dr + di * di;
  return [(nr * dr + ni * di) / size, (ni * dr - nr * di) / size];
}

/**
 * Gain and phase of a chain of second-order sections at one frequency.
 *
 * @returns the amplitude ratio, and the phase in radians, -pi to pi
 * @throws {@link VeladisError} `not-positive` for the rate, `out-of-range` for a frequency above half of it
 * @example
 * ```ts
 * import { butterworth, responseAt } from "veladis/signal";
 *
 * const filter = butterworth({ kind: "low-pass", order: 4, edges: [1000], rate: 10240 });
 * responseAt(filter, 1000, 10240).gain.toFixed(6); // => "0.707107"
 * ```
 */
export function responseAt(sections: readonly Section[], hertz: number, rate: number): { gain: number; phase: number } {
  return withParameters({ hertz, rate, sections }, () => {
    inPlace({ parameter: "rate" }, () => requireSamplingRate(rate));
    requireFinite(hertz, "a frequency in Hz", { parameter: "hertz" });
    // beyond it samples show another frequency, whose response would be told for this one
    if (Math.abs(hertz) > rate / 2) {
      throw new VeladisError("out-of-range", {
        expected: `a frequency of ${rate / 2} Hz, half the sampling rate, at the most`,
        received: `${hertz} Hz`,
        parameter: "hertz",
      });
    }
    const angle = (2 * Math.PI * hertz) / rate;
    let re = 1;
    let im = 0;
    const parameter = "sections";
    requireList(sections, "second-order sections as a list", { parameter }).forEach((section, index) => {
      for (const option of ["b", "a"] as const) {
        const place = { parameter, index, option };
        for (const part of requireList(section[option], `${option} of a section`, place)) {
          requireFinite(part, "a coefficient of a section", place);
        }
      }
      const [sr, si] = sectionResponse(section, angle);
      [re, im] = [re * sr - im * si, re * si + im * sr];
    });
    return { gain: finiteLevel(Math.hypot(re, im)), phase: Math.atan2(im, re) };
  });
}

/** Numbers a section keeps between samples. */
const STATE = 2;

/** Room for the state of a chain at rest. */
export function restingState(sections: readonly Section[]): Float64Array {
  return new Float64Array(STATE * sections.length);
}

/** Runs one section over the first `count` numbers of `x`, in place. */
function runOne(x: Float64Array, count: number, { b, a }: Section, state: Float64Array): void {
  const [b0, b1, b2] = b;
  const [a1, a2] = a;
  let s = state[0] as number;
  let t = state[1] as number;
  for (let i = 0; i < count; i++) {
    const v = x[i] as number;
    const y = b0 * v + s;
    s = b1 * v + t - a1 * y;
    t = b2 * v - a2 * y;
    x[i] = y;
  }
  state[0] = s;
  state[1] = t;
}

/** Runs two sections at a time, whose recursions then overlap in the processor. */
function runTwo(x: Float64Array, count: number, [one, two]: readonly [Section, Section], state: Float64Array): void {
  const [b0, b1, b2] = one.b;
  const [a1, a2] = one.a;
  const [d0, d1, d2] = two.b;
  const [c1, c2] = two.a;
  let s = state[0] as number;
  let t = state[1] as number;
  let u = state[2] as number;
  let w = state[3] as number;
  for (let i = 0; i < count; i++) {
    const v = x[i] as number;
    const y = b0 * v + s;
    s = b1 * v + t - a1 * y;
    t = b2 * v - a2 * y;
    const z = d0 * y + u;
    u = d1 * y + w - c1 * z;
    w = d2 * y - c2 * z;
    x[i] = z;
  }
  state[0] = s;
  state[1] = t;
  state[2] = u;
  state[3] = w;
}

/** Runs three sections at a time: the whole of a band-pass of order 3. */
function runThree(x: Float64Array, count: number, chain: readonly Section[], state: Float64Array): void {
  const [one, two, three] = chain as readonly [Section, Section, Section];
  const [b0, b1, b2] = one.b;
  const [a1, a2] = one.a;
  const [d0, d1, d2] = two.b;
  const [c1, c2] = two.a;
  const [f0, f1, f2] = three.b;
  const [e1, e2] = three.a;
  let s = state[0] as number;
  let t = state[1] as number;
  let u = state[2] as number;
  let w = state[3] as number;
  let p = state[4] as number;
  let q = state[5] as number;
  for (let i = 0; i < count; i++) {
    const v = x[i] as number;
    const y = b0 * v + s;
    s = b1 * v + t - a1 * y;
    t = b2 * v - a2 * y;
    const z = d0 * y + u;
    u = d1 * y + w - c1 * z;
    w = d2 * y - c2 * z;
    const o = f0 * z + p;
    p = f1 * z + q - e1 * o;
    q = f2 * z - e2 * o;
    x[i] = o;
  }
  state[0] = s;
  state[1] = t;
  state[2] = u;
  state[3] = w;
  state[4] = p;
  state[5] = q;
}

/**
 * Filters the first `count` numbers of `x` in place through a chain of sections (direct form II transposed), going on
 * from `state` and leaving it for the next ones.
 */
export function runSections(x: Float64Array, count: number, sections: readonly Section[], state: Float64Array): void {
  let i = 0;
  if (sections.length % 2 === 1 && sections.length >= 3) {
    runThree(x, count, sections, state);
    i = 3;
  }
  for (; i + 1 < sections.length; i += 2) {
    const both = [sections[i] as Section, sections[i + 1] as Section] as const;
    runTwo(x, count, both, state.subarray(STATE * i));
  }
  if (i < sections.length) runOne(x, count, sections[i] as Section, state.subarray(STATE * i));
}
