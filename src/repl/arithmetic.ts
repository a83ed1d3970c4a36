import { requirePositive, VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { differenceOf, scaledReading, sumOf } from "./combined";
import { valuesOf } from "./operands";
import { isAmplitude, kindText, type Value } from "./value";

type Operation = (a: Amplitude, b: Amplitude) => Value;

function comparison(holds: (x: number, y: number) => boolean): Operation {
  return (a, b) => {
    const [x, y] = valuesOf(a, b, "compare");
    return holds(x, y);
  };
}

/** What two amplitudes can do with each other, by the name mathjs gives the operator. */
const betweenAmplitudes: Readonly<Record<string, Operation>> = {
  add: sumOf,
  subtract: differenceOf,
  divide: (a, b) => {
    const [x, y] = valuesOf(a, b, "divide");
    return x / requirePositive(y, "a reading above zero to divide by");
  },
  larger: /* @__PURE__ */ comparison((x, y) => x > y),
  largerEq: /* @__PURE__ */ comparison((x, y) => x >= y),
  smaller: /* @__PURE__ */ comparison((x, y) => x < y),
  smallerEq: /* @__PURE__ */ comparison((x, y) => x <= y),
  equal: /* @__PURE__ */ comparison((x, y) => x === y),
  unequal: /* @__PURE__ */ comparison((x, y) => x !== y),
};

/**
 * The outcome of an operator with an amplitude on one side or on both.
 *
 * @throws {@link VeladisError} with the reason, for all that has no meaning
 */
export function amplitudeOperation(operator: string, symbol: string, args: readonly Value[]): Value {
  const [a, b] = args as [Value, Value];
  if (args.length === 2 && isAmplitude(a) && isAmplitude(b)) {
    const between = betweenAmplitudes[operator];
    if (between !== undefined) return between(a, b);
  }
  if (operator === "multiply" && isAmplitude(a) && typeof b === "number") return scaledReading(a, { by: b });
  if (operator === "multiply" && typeof a === "number" && isAmplitude(b)) return scaledReading(b, { by: a });
  if (operator === "divide" && isAmplitude(a) && typeof b === "number") return scaledReading(a, { over: b });
  if (operator === "unaryPlus" && isAmplitude(a)) return a;
  throw new VeladisError("wrong-type", {
    expected:
      "an amplitude plus or minus another of its kind, times or over a number, over another, or compared with another",
    received: args.length === 1 ? `${symbol}${kindText(a)}` : `${kindText(a)} ${symbol} ${kindText(b)}`,
  });
}
