import { cached, inPlace } from "../core/index";
import { areOfSine } from "../detectors/index";
import { type Factor, type ParsedType, parsedType } from "../reading/index";

/** Two reading types, and the conversion between them as far as it needs no frequency. */
export interface Pair {
  readonly from: ParsedType;
  readonly to: ParsedType;
  /** Derivatives from one quantity to the other: from -2 to 2. */
  readonly steps: number;
  /** Whether the ratios of a sine relate the two; otherwise a factor asks what does. */
  readonly ofSine: boolean;
  /** The rational part, in lowest terms. */
  readonly num: number;
  readonly den: number;
  /** The factor by the ratios of a sine of so many hertz; exact integers as long as nothing irrational enters. */
  readonly sine: (hz: number) => Factor;
}

/** Binary places of the whole numbers below. */
const PLACES = 80n;
/** Pi and the square root of two times 2^80: a factor is formed in whole numbers and rounded at the end. */
const PI = 0x3243f6a8885a308d31319n;
const ROOT_TWO = 0x16a09e667f3bcc908b2fbn;

/** The number times the base as often as the power says, or over it when the power is negative. */
function timesPower(number: bigint, base: bigint, power: number): bigint {
  if (!power) return number;
  return power > 0
    ? timesPower((number * base) >> PLACES, base, power - 1)
    : timesPower((number << PLACES) / base, base, power + 1);
}

/** The greatest common divisor (Euclid). */
function commonDivisor(a: bigint, b: bigint): bigint {
  return b ? commonDivisor(b, a % b) : a;
}

/** The upper half of the digits of a number: products of two such are exact (Veltkamp). */
function head(x: number): number {
  const shifted = x * 0x8000001;
  return shifted - (shifted - x);
}

/** What a product has lost to rounding (Dekker). */
function residue(a: number, b: number): number {
  const top = head(a);
  const upper = head(b);
  return top * upper - a * b + top * (b - upper) + (a - top) * b;
}

/**
 * The factor, whose rest is known, times the frequency as often as the steps say, or over it when they are negative; in
 * two numbers, high and low, so that it is rounded once.
 */
function timesHertz(factor: number, rest: number, hz: number, steps: number): number {
  let high = factor;
  let low = rest;
  for (let i = steps; i > 0; i--) {
    low = residue(high, hz) + low * hz;
    high *= hz;
  }
  for (let i = steps; i < 0; i++) {
    const quotient = high / hz;
    low = (high - quotient * hz - residue(quotient, hz) + low) / hz;
    high = quotient;
  }
  // beyond 1e300 nothing is known of the rest
  return high + low || high;
}

/** The conversion between two types, in whole numbers as far as it goes. */
export function pair(from: ParsedType, to: ParsedType): Pair {
  const steps = to.order - from.order;
  const power = to.pi - from.pi + steps;
  const rootTwo = to.rootTwo - from.rootTwo;
  const above = BigInt(from.num) * BigInt(to.den);
  const below = BigInt(from.den) * BigInt(to.num);
  const common = commonDivisor(above, below);
  const ratio = (above << (2n * PLACES)) / below;
  const irrational = timesPower(timesPower(ratio, PI, power), ROOT_TWO, rootTwo);
  const num = Number(above / common);
  const den = Number(below / common);
  const unit = 2 ** (steps - 160);
  const factor = Number(irrational) * unit;
  const rest = Number(irrational - BigInt(factor / unit)) * unit;
  // A loop asks for the same frequency again and again: a comparison is several times faster than what it saves.
  let lastHz = 1;
  let last = steps === 0 && power === 0 && rootTwo === 0 ? { num, den } : { num: factor, den: 1 };
  const sine = (hz: number): Factor => {
    if (steps !== 0 && hz !== lastHz) {
      last = { num: timesHertz(factor, rest, hz, steps), den: 1 };
      lastHz = hz;
    }
    return last;
  };
  return { from, to, steps, ofSine: areOfSine(from.detector, to.detector), num, den, sine };
}

function typeAt(text: string, parameter: "from" | "to"): ParsedType {
  return inPlace({ parameter }, () => parsedType(text));
}

const fromText = /* @__PURE__ */ cached((from) => cached((to) => pair(typeAt(from, "from"), typeAt(to, "to"))));

/**
 * The pair that two reading types name.
 *
 * @throws {@link VeladisError} as {@link parsedType}
 */
export function pairOf(from: string, to: string): Pair {
  return fromText(from)(to);
}
