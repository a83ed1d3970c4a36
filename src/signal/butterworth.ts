import { inPlace, requireChoice, requireKnownOptions, shown, VeladisError, withParameters } from "../core/index";
import { requireFilterOrder } from "./butterworth-gain";
import { requireSamplingRate } from "./samples";
import { type Complex, type Section, sectionResponse } from "./second-order-sections";

/** What a Butterworth filter is designed from. */
export interface ButterworthOptions {
  readonly kind: "low-pass" | "high-pass" | "band-pass";
  /** Slope beyond an edge: 6 dB an octave for each. A band-pass of order n has 2 n poles. */
  readonly order: number;
  /** The -3 dB frequencies in hertz: one, or two for a band-pass; each below half the sampling rate. */
  readonly edges: readonly number[];
  /** Samples a second. */
  readonly rate: number;
}

/** A pole pair as the coefficients of `1 + a1/z + a2/z^2`, or one real pole, with `a2` 0. */
type Poles = readonly [number, number];

function sqrt([re, im]: Complex): Complex {
  const size = Math.hypot(re, im);
  const root = Math.sqrt((size + Math.abs(re)) / 2);
  if (root === 0) return [0, 0];
  if (re >= 0) return [root, im / (2 * root)];
  return [Math.abs(im) / (2 * root), im < 0 ? -root : root];
}

/** A pole of the s-plane in the z-plane, by the bilinear transform `s = (z - 1) / (z + 1)`. */
function bilinear([re, im]: Complex): Complex {
  const size = (1 - re) * (1 - re) + im * im;
  return [((1 + re) * (1 - re) - im * im) / size, (2 * im) / size];
}

function conjugatePair(pole: Complex): Poles {
  const [re, im] = bilinear(pole);
  return [-2 * re, re * re + im * im];
}

function realPair(one: number, two: number): Poles {
  const [a] = bilinear([one, 0]);
  const [b] = bilinear([two, 0]);
  return [-a - b, a * b];
}

/** Poles of the low-pass of edge 1 in the upper half of the plane, the real one (odd orders) last. */
function prototypePoles(order: number): Complex[] {
  return Array.from({ length: Math.ceil(order / 2) }, (_, k): Complex => {
    const angle = (Math.PI * (2 * k + 1)) / (2 * order);
    return 2 * k + 1 === order ? [-1, 0] : [-Math.sin(angle), Math.cos(angle)];
  });
}

/** The two poles that a pole of the low-pass becomes in a band-pass: `s^2 - pole width s + centre^2 = 0`. */
function bandPoles([re, im]: Complex, width: number, centre2: number): [Complex, Complex] {
  const half: Complex = [(re * width) / 2, (im * width) / 2];
  const root = sqrt([half[0] * half[0] - half[1] * half[1] - centre2, 2 * half[0] * half[1]]);
  const one: Complex = [half[0] + root[0], half[1] + root[1]];
  const two: Complex = [half[0] - root[0], half[1] - root[1]];
  return [one, two];
}

function bandPassPoles(order: number, low: number, high: number): Poles[] {
  return prototypePoles(order).flatMap((pole) => {
    const [one, two] = bandPoles(pole, high - low, low * high);
    if (pole[1] !== 0) return [conjugatePair(one), conjugatePair(two)];
    return [one[1] === 0 ? realPair(one[0], two[0]) : conjugatePair(one)];
  });
}

function onePassPoles(order: number, edge: number, high: boolean): Poles[] {
  return prototypePoles(order).map(([re, im]): Poles => {
    // the poles lie on a circle, so that turning them about (edge / pole) only mirrors them
    const pole: Complex = [edge * re, edge * (high ? -im : im)];
    return im === 0 ? [-bilinear(pole)[0], 0] : conjugatePair(pole);
  });
}

/** Zeros by kind, for a section of two poles and of one. */
const zeros = {
  "low-pass": { two: [1, 2, 1], one: [1, 1, 0] },
  "high-pass": { two: [1, -2, 1], one: [1, -1, 0] },
  "band-pass": { two: [1, 0, -1], one: [1, 0, -1] },
} as const;

function requireEdges({ kind, edges, rate }: ButterworthOptions): readonly number[] {
  const fits =
    Array.isArray(edges) &&
    edges.length === (kind === "band-pass" ? 2 : 1) &&
    edges.every(
      (edge, i) => Number.isFinite(edge) && edge > (i === 0 ? 0 : (edges[i - 1] as number)) && edge < rate / 2,
    );
  return fits ? edges : refuseEdges({ kind, edges, rate });
}

function refuseEdges({ kind, edges, rate }: Omit<ButterworthOptions, "order">): never {
  throw new VeladisError(Array.isArray(edges) ? "out-of-range" : "wrong-type", {
    expected: `${kind === "band-pass" ? "two rising edges" : "one edge"} above 0 and below ${rate / 2} Hz, half the sampling rate`,
    received: Array.isArray(edges) ? edges.slice(0, 3).map(shown).join(" and ") || "nothing" : shown(edges),
    option: "edges",
  });
}

const keys: Readonly<Record<keyof ButterworthOptions, true>> = /* @__PURE__ */ Object.freeze({
  kind: true,
  order: true,
  edges: true,
  rate: true,
});

/**
 * A digital Butterworth filter as second-order sections, by the bilinear transform.
 *
 * The edges are prewarped, so that the gain there is 0.7071 to the last digits; the gain in the middle (of a low-pass
 * at 0 Hz, of a high-pass at half the sampling rate) is 1. Each section has that gain 1 by itself.
 *
 * @throws {@link VeladisError} `not-positive` for the rate, `out-of-range` for order (1 to 12) or edges,
 *   `unknown-option` for the kind
 * @example
 * ```ts
 * import { butterworth, responseAt } from "veladis/signal";
 *
 * const filter = butterworth({ kind: "band-pass", order: 3, edges: [10, 1000], rate: 25600 });
 * filter.length; // => 3
 * responseAt(filter, 10, 25600).gain.toFixed(6); // => "0.707107"
 * responseAt(filter, 1000, 25600).gain.toFixed(6); // => "0.707107"
 * responseAt(filter, 100, 25600).gain.toFixed(6); // => "1.000000"
 * ```
 */
export function butterworth(options: ButterworthOptions): Section[] {
  return withParameters({ options }, () => {
    requireKnownOptions(options, keys, {
      what: "an option of a filter",
      form: "options with kind, order, edges and rate",
    });
    const { kind } = options;
    requireChoice(kind, Object.keys(zeros), "a kind of filter", { option: "kind" });
    const rate = requireSamplingRate(options.rate);
    const order = inPlace({ option: "order" }, () => requireFilterOrder(options.order));
    const warped = requireEdges(options).map((edge) => Math.tan((Math.PI * edge) / rate)) as [number, number];
    const poles =
      kind === "band-pass"
        ? bandPassPoles(order, warped[0], warped[1])
        : onePassPoles(order, warped[0], kind === "high-pass");
    const middle =
      kind === "low-pass" ? 0 : kind === "high-pass" ? Math.PI : 2 * Math.atan(Math.sqrt(warped[0] * warped[1]));
    return poles.map((a): Section => {
      const b = zeros[kind][a[1] === 0 ? "one" : "two"];
      const gain = Math.hypot(...sectionResponse({ b, a }, middle));
      if (!(gain > 0 && gain < Number.POSITIVE_INFINITY)) refuseEdges(options);
      return { b: [b[0] / gain, b[1] / gain, b[2] / gain], a };
    });
  });
}
