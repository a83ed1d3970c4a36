import { frozen } from "../core/index";

/**
 * Filters that make differences and sums of samples into derivatives and integrals.
 *
 * A sample less the one before is a derivative only at low frequencies; at w radians a sample it is off by
 * `sin(w/2) / (w/2)`, the trapezoidal rule by its cosine (10 % at a fifth of the sampling rate). The taps here, one
 * row for each order of the derivative, make that good: `c0 + 2 sum c_k cos(k w)` is `(sin(w/2) / (w/2))^-p` within the
 * error stated, up to 0.4 of the sampling rate. Made by test/references/scipy-derivative-taps.py.
 */
// biome-ignore format: a row of a table is a line
export const derivativeTaps = /* @__PURE__ */ frozen({
  "-2": { error: 3.7e-5, taps: [0.7765318418605938, 0.1263316314766351, -0.01948176644947753, 0.006929686546792205, -0.002960957417365485, 0.00131987645539665, -0.0005693094817384006, 0.0002205618210744632, -7.402392092525628e-5] },
  "-1": { error: 2.5e-5, taps: [0.8748959399197971, 0.07342410156643678, -0.01460767358636409, 0.005310555641933537, -0.002280239114071438, 0.001015870085788013, -0.0004363549312968568, 0.0001679449837623039, -5.417674820959559e-5] },
  "1": { error: 4.0e-5, taps: [1.160713839358841, -0.101545766009412, 0.02925619797113002, -0.01159670928674783, 0.005130934952282782, -0.002307324212953857, 0.000988696509655506, -0.0003758602971784751, 0.0001128925872675316] },
  "2": { error: 1.1e-4, taps: [1.369029047243982, -0.2416237744056929, 0.08013449054868686, -0.03334698764518133, 0.01505480751844837, -0.006824372655509532, 0.002926711479367476, -0.001106038518691011, 0.000321604997417813] },
} as const);

/** Samples that a symmetric filter of 17 taps looks back on. */
export const TAPS_BACK = 16;

type Taps = (typeof derivativeTaps)[keyof typeof derivativeTaps]["taps"];

/**
 * Runs the symmetric filter over `line`, whose first 16 numbers are the ones before, and writes `count` results into
 * `target`; then moves the last 16 numbers to the front.
 */
export function runTaps(line: Float64Array, target: Float64Array, count: number, taps: Taps): void {
  const [c0, c1, c2, c3, c4, c5, c6, c7, c8] = taps;
  for (let i = 0; i < count; i++) {
    target[i] =
      c0 * (line[i + 8] as number) +
      c1 * ((line[i + 7] as number) + (line[i + 9] as number)) +
      c2 * ((line[i + 6] as number) + (line[i + 10] as number)) +
      c3 * ((line[i + 5] as number) + (line[i + 11] as number)) +
      c4 * ((line[i + 4] as number) + (line[i + 12] as number)) +
      c5 * ((line[i + 3] as number) + (line[i + 13] as number)) +
      c6 * ((line[i + 2] as number) + (line[i + 14] as number)) +
      c7 * ((line[i + 1] as number) + (line[i + 15] as number)) +
      c8 * ((line[i] as number) + (line[i + 16] as number));
  }
  line.copyWithin(0, count, count + TAPS_BACK);
}
