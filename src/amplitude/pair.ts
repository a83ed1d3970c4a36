import { memo } from "../core/index";
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

/** Binary places of the whole numbers below. */
const PLACES = 112n;
/** Pi and the square root of two times 2^112: a factor is formed in whole numbers and rounded at the end. */
const PI = 0x3243f6a8885a308d313198a2e0370n;
const ROOT_TWO = 0x16a09e667f3bcc908b2fb1366ea95n;

/** The number times the base as often as the power says, or over it when the power is negative. */
function timesPower(number: bigint, base: bigint, power: number): bigint {
  if (power === 0) return number;
  return power > 0
    ? timesPower((number * base) >> PLACES, base, power - 1)
    : timesPower((number << PLACES) / base, base, power + 1);
}

function commonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : commonDivisor(b, a % b);
}

function pair(from: Kind, to: Kind): Pair {
  const steps = to.order - from.order;
  const power = to.pi - from.pi + steps;
  const rootTwo = to.rootTwo - from.rootTwo;
  const above = BigInt(from.num) * BigInt(to.den);
  const below = BigInt(from.den) * BigInt(to.num);
  const common = commonDivisor(above, below);
  const ratio = (above << (2n * PLACES)) / below;
  const factor = timesPower(timesPower(ratio, PI, power), ROOT_TWO, rootTwo);
  return {
    from,
    to,
    steps,
    num: Number(above / common),
    den: Number(below / common),
    exact: steps === 0 && power === 0 && rootTwo === 0,
    factor: Number(factor) * 2 ** (steps - 224),
  };
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
