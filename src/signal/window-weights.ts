import { requirePositive, shown, VeladisError, withParameters } from "../core/index";
import { finiteLevel } from "./finite-level";
import { writeRootOfUnity } from "./root-of-unity";
import { finiteSamples } from "./samples";
import { type WindowName, windowName, windows } from "./windows";

/** Samples of the longest record; room for more was asked for by mistake. */
const LONGEST = 134_217_728;

/**
 * The weights of a window over a record of `length` samples, in its periodic form.
 *
 * @throws {@link VeladisError} `unknown-option`, `out-of-range` for a length that is no whole number from 1 to 2^27
 * @example
 * ```ts
 * import { windowWeights } from "veladis/signal";
 *
 * [...windowWeights("hann", 4)]; // => [0, 0.5, 1, 0.5]
 * ```
 */
export function windowWeights(window: WindowName, length: number): Float64Array {
  return withParameters({ length, window }, () => {
    const { terms } = windows[windowName(window)];
    const expected = `a whole number of samples above zero and at most ${LONGEST}`;
    if (!(Number.isInteger(requirePositive(length, expected, { parameter: "length" })) && length <= LONGEST)) {
      throw new VeladisError("out-of-range", {
        expected,
        received: shown(length),
        parameter: "length",
      });
    }
    const weights = new Float64Array(length).fill(terms[0]);
    if (terms.length === 1) return weights;
    const root = new Float64Array(2);
    const half = Math.floor(length / 2);
    for (let j = 0; j <= half; j++) {
      let weight = terms[0] as number;
      for (let m = 1; m < terms.length; m++) {
        writeRootOfUnity(root, 0, m * j, length);
        weight += (m % 2 === 0 ? 1 : -1) * (terms[m] as number) * (root[0] as number);
      }
      weights[j] = weight;
      if (j > 0) weights[length - j] = weight;
    }
    return weights;
  });
}

/**
 * Coherent gain of a window: the mean of its weights, by which it lowers the line of a tone.
 *
 * @example
 * ```ts
 * import { coherentGain, windowWeights } from "veladis/signal";
 *
 * coherentGain(windowWeights("hann", 1024)).toFixed(3); // => "0.500"
 * ```
 */
export function coherentGain(weights: Float64Array): number {
  return withParameters({ weights }, () => {
    const given = finiteSamples(weights);
    return finiteLevel(given.reduce((sum, weight) => sum + weight, 0) / given.length);
  });
}

/**
 * Equivalent noise bandwidth of a window in bins: `n sum(w^2) / sum(w)^2`.
 *
 * By it the sum of squares of a spectrum's lines is too large, for noise and for tones.
 *
 * @example
 * ```ts
 * import { noiseBandwidth, windowWeights } from "veladis/signal";
 *
 * noiseBandwidth(windowWeights("hann", 1024)).toFixed(3); // => "1.500"
 * noiseBandwidth(windowWeights("blackmanharris", 1024)).toFixed(4); // => "2.0044"
 * ```
 */
export function noiseBandwidth(weights: Float64Array): number {
  return withParameters({ weights }, () => {
    const given = finiteSamples(weights);
    const squares = given.reduce((sum, weight) => sum + weight * weight, 0);
    return finiteLevel(squares / given.length / coherentGain(given) ** 2);
  });
}
