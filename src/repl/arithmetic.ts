import { requirePositive, VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { differenceOf, scaledReading, sumOf } from "./combined";
import type { Call } from "./engine";
import { levelDifference, raisedBy, refuseSumOfLevels } from "./level-difference";
import { valuesOf } from "./operands";
import { isAmplitude, isLevelDifference, kindText, type LevelDifference, type Value } from "./value";
import { multipliedDifference, togetherDifference } from "./whole-differences";

/** The comparisons, by the name mathjs gives them: each with the tolerance that it has for numbers there. */
const comparisons: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "larger",
  "largerEq",
  "smaller",
  "smallerEq",
  "equal",
  "unequal",
]);

type Operation = (a: Amplitude, b: Amplitude) => Value;

/** What two amplitudes can do with each other, by the name mathjs gives the operator. */
const betweenAmplitudes: Readonly<Record<string, Operation>> = {
  add: (a, b) => (a.level && b.level ? refuseSumOfLevels(a, b) : sumOf(a, b)),
  subtract: (a, b) => (a.level && b.level ? levelDifference(a, b) : differenceOf(a, b)),
  divide: (a, b) => {
    const [x, y] = valuesOf(a, b, "divide");
    return x / requirePositive(y, "a reading above zero to divide by");
  },
};

/** Two amplitudes compared: as shares of the larger, so that the answer is the same in any unit. */
function compared(operator: string, a: Amplitude, b: Amplitude, call: Call): Value {
  const [x, y] = valuesOf(a, b, "compare");
  const whole = Math.max(x, y) || 1;
  return call(operator, [x / whole, y / whole]) === true;
}

/** What an operator makes of an amplitude and a number of decibels; nothing where it has no meaning. */
function raised(operator: string, a: Value, b: Value): Amplitude | undefined {
  if (operator === "add" && isAmplitude(a) && isLevelDifference(b)) return raisedBy(a, b, 1);
  if (operator === "add" && isLevelDifference(a) && isAmplitude(b)) return raisedBy(b, a, 1);
  if (operator === "subtract" && isAmplitude(a) && isLevelDifference(b)) return raisedBy(a, b, -1);
  return undefined;
}

/** What an operator makes of a number of decibels and another, or a number; nothing where it has no meaning. */
function ofDecibels(operator: string, a: Value, b: Value | undefined, call: Call): Value | undefined {
  if (isLevelDifference(a) && b === undefined) {
    if (operator === "unaryMinus") return multipliedDifference(a, -1);
    return operator === "unaryPlus" ? a : undefined;
  }
  if (b === undefined) return undefined;
  if (isLevelDifference(a) && isLevelDifference(b)) {
    if (operator === "add") return togetherDifference(a, b, 1);
    if (operator === "subtract") return togetherDifference(a, b, -1);
    return comparisons.has(operator) ? call(operator, [a.decibels, b.decibels]) === true : undefined;
  }
  if (operator === "multiply" && isLevelDifference(a) && typeof b === "number") return multipliedDifference(a, b);
  if (operator === "multiply" && typeof a === "number" && isLevelDifference(b)) return multipliedDifference(b, a);
  if (operator !== "divide" || !isLevelDifference(a) || typeof b !== "number") return undefined;
  return multipliedDifference(a, 1 / b);
}

/** True for what this arithmetic is about: an amplitude, or a number of decibels. */
export function isVibration(value: Value): value is Amplitude | LevelDifference {
  return isAmplitude(value) || isLevelDifference(value);
}

/**
 * The outcome of an operator with an amplitude or a number of decibels on one side or on both.
 *
 * @param call - the functions of numbers of the mathjs at hand, which compare
 * @throws {@link VeladisError} with the reason, for all that has no meaning
 */
export function amplitudeOperation(operator: string, symbol: string, args: readonly Value[], call: Call): Value {
  const [a, b] = args as [Value, Value];
  if (args.length === 2 && isAmplitude(a) && isAmplitude(b)) {
    const between = betweenAmplitudes[operator];
    if (between !== undefined) return between(a, b);
    if (comparisons.has(operator)) return compared(operator, a, b, call);
  }
  const outcome = ofDecibels(operator, a, b, call) ?? raised(operator, a, b);
  if (outcome !== undefined) return outcome;
  if (operator === "multiply" && isAmplitude(a) && typeof b === "number") return scaledReading(a, { by: b });
  if (operator === "multiply" && typeof a === "number" && isAmplitude(b)) return scaledReading(b, { by: a });
  if (operator === "divide" && isAmplitude(a) && typeof b === "number") return scaledReading(a, { over: b });
  if (operator === "unaryPlus" && isAmplitude(a)) return a;
  throw new VeladisError("wrong-type", {
    expected: args.some(isLevelDifference)
      ? "a number of dB beside a reading or another number of dB for plus and minus, times or over a number, or compared with another number of dB"
      : "an amplitude plus or minus another of its kind or a number of dB, times or over a number, over another, or compared with another",
    received: args.length === 1 ? `${symbol}${kindText(a)}` : `${kindText(a)} ${symbol} ${kindText(b)}`,
  });
}
