import { memo } from "../core/index";
import { irrational } from "./constants";
import { type Kind, kindOf } from "./kind";

/** Two kinds, and the conversion between them as far as it needs no frequency. */
export interface Pair {
  readonly from: Kind;
  readonly to: Kind;
  /** Derivatives from one quantity to the other: from -2 to 2. */
  readonly steps: number;
  /** The rational part, in lowest terms. */
  readonly num: number;
  readonly den: number;
  /** Whether the rational part is all there is. */
  readonly exact: boolean;
  /** The factor at 1 Hz by the ratios of a sine, rounded once. */
  readonly factor: number;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** What rounding cut off the product: `a * b - product`, exactly (Dekker 1971). */
function productError(a: number, b: number, product: number): number {
  const split = 134217729; // 2^27 + 1
  const aHigh = a * split - (a * split - a);
  const bHigh = b * split - (b * split - b);
  const aLow = a - aHigh;
  const bLow = b - bHigh;
  return aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
}

/** `(nearest + rest) * num / den`, rounded once for all purposes. */
function scaledConstant(nearest: number, rest: number, num: number, den: number): number {
  const product = nearest * num;
  const lost = productError(nearest, num, product) + rest * num;
  const quotient = product / den;
  const back = quotient * den;
  return quotient + (product - back - productError(quotient, den, back) + lost) / den;
}

function pair(from: Kind, to: Kind): Pair {
  const steps = to.order - from.order;
  const power = to.pi - from.pi + steps;
  const rootTwo = to.rootTwo - from.rootTwo;
  // Crossed out before multiplying, so that the products stay below 2^53 and exact.
  const above = commonDivisor(from.num, to.num);
  const below = commonDivisor(to.den, from.den);
  const a = (from.num / above) * (to.den / below);
  const b = (from.den / below) * (to.num / above);
  const common = commonDivisor(a, b);
  const [num, den] = [a / common, b / common];
  const [nearest, rest] = irrational(power, rootTwo);
  const exact = steps === 0 && power === 0 && rootTwo === 0;
  return { from, to, steps, num, den, exact, factor: scaledConstant(nearest, rest, num, den) * 2 ** steps };
}

const fromText = /* @__PURE__ */ memo((from) => memo((to) => pair(kindOf(from), kindOf(to))));

/**
 * The pair that two reading types name.
 *
 * @throws {@link VeladisError} as {@link kindOf}
 */
export function pairOf(from: string, to: string): Pair {
  return fromText(from)(to);
}
