import { type Amplitude, convertAmplitude, format } from "../amplitude/index";
import { nonNegative, VeladisError } from "../core/index";
import { isAmplitude, kindText, type Value } from "./value";

/** Frequency of a result of several readings: theirs if all agree, else unknown. */
function commonHertz(readings: readonly Amplitude[]): number | undefined {
  const [first] = readings;
  return readings.every(({ hertz }) => hertz === first?.hertz) ? first?.hertz : undefined;
}

function withValue({ unit, detector, quantity }: Amplitude, value: number, hertz: number | undefined): Amplitude {
  return Object.freeze({ value: nonNegative(value, "an amplitude of zero or more"), unit, detector, quantity, hertz });
}

/**
 * Values of readings in the unit of the first, if they are of one quantity and one detector.
 *
 * @throws {@link VeladisError} `wrong-quantity` or `wrong-detector`, with the reason
 */
export function valuesInFirst(readings: readonly Amplitude[], doing: string): number[] {
  const [first] = readings as [Amplitude, ...Amplitude[]];
  return readings.map((reading) => {
    if (reading.quantity !== first.quantity) {
      throw new VeladisError("wrong-quantity", {
        expected: `readings of one quantity to ${doing}; convert one of them first, with "to"`,
        received: `${format(first)} (${first.quantity}) and ${format(reading)} (${reading.quantity})`,
      });
    }
    if (reading.detector !== first.detector) {
      throw new VeladisError("wrong-detector", {
        expected: `readings by one detector to ${doing}, since ${first.detector} and ${reading.detector} never mix; convert one of them first, with "to"`,
        received: `${format(first)} and ${format(reading)}`,
      });
    }
    return convertAmplitude(reading, `${first.unit} ${first.detector}`).value;
  });
}

function checkFrequencies(a: Amplitude, b: Amplitude, doing: string): void {
  if (a.hertz === undefined || b.hertz === undefined || a.hertz === b.hertz) return;
  throw new VeladisError("wrong-frequency", {
    expected: `readings at one frequency to ${doing} (RMS readings of different frequencies go together by rss)`,
    received: `${a.hertz} Hz and ${b.hertz} Hz`,
  });
}

function sum(a: Amplitude, b: Amplitude, sign: 1 | -1): Amplitude {
  const doing = sign > 0 ? "add" : "subtract";
  checkFrequencies(a, b, doing);
  const [x, y] = valuesInFirst([a, b], doing) as [number, number];
  return withValue(a, x + sign * y, commonHertz([a, b]));
}

/** The root of the sum of squares of RMS readings, also of different frequencies. */
export function rootSumSquare(readings: readonly Amplitude[]): Amplitude {
  const [first] = readings as [Amplitude, ...Amplitude[]];
  for (const reading of readings) {
    if (reading.detector === "rms") continue;
    throw new VeladisError("wrong-detector", {
      expected: "RMS readings, since peaks of different waves do not add by their squares",
      received: format(reading),
      allowed: ["rms"],
    });
  }
  return withValue(first, Math.hypot(...valuesInFirst(readings, "combine")), commonHertz(readings));
}

/** The arithmetic mean of readings. */
export function meanOf(readings: readonly Amplitude[]): Amplitude {
  const [first] = readings as [Amplitude, ...Amplitude[]];
  const values = valuesInFirst(readings, "average");
  return withValue(first, values.reduce((total, value) => total + value, 0) / values.length, commonHertz(readings));
}

/** The reading of several that is first by an order of their values. */
export function extremeOf(readings: readonly Amplitude[], best: (...values: number[]) => number): Amplitude {
  const values = valuesInFirst(readings, "compare");
  return readings[values.indexOf(best(...values))] as Amplitude;
}

type Operation = (a: Amplitude, b: Amplitude) => Value;

function comparison(holds: (x: number, y: number) => boolean): Operation {
  return (a, b) => {
    const [x, y] = valuesInFirst([a, b], "compare") as [number, number];
    return holds(x, y);
  };
}

/** What two amplitudes can do with each other, by the name mathjs gives the operator. */
const betweenAmplitudes: Readonly<Record<string, Operation>> = {
  add: (a, b) => sum(a, b, 1),
  subtract: (a, b) => sum(a, b, -1),
  divide: (a, b) => {
    const [x, y] = valuesInFirst([a, b], "divide") as [number, number];
    return x / y;
  },
  larger: /* @__PURE__ */ comparison((x, y) => x > y),
  largerEq: /* @__PURE__ */ comparison((x, y) => x >= y),
  smaller: /* @__PURE__ */ comparison((x, y) => x < y),
  smallerEq: /* @__PURE__ */ comparison((x, y) => x <= y),
  equal: /* @__PURE__ */ comparison((x, y) => x === y),
  unequal: /* @__PURE__ */ comparison((x, y) => x !== y),
};

function scaled(reading: Amplitude, factor: number): Amplitude {
  return withValue(reading, reading.value * factor, reading.hertz);
}

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
  if (operator === "multiply" && isAmplitude(a) && typeof b === "number") return scaled(a, b);
  if (operator === "multiply" && typeof a === "number" && isAmplitude(b)) return scaled(b, a);
  if (operator === "divide" && isAmplitude(a) && typeof b === "number") return scaled(a, 1 / b);
  if (operator === "unaryPlus" && isAmplitude(a)) return a;
  throw new VeladisError("wrong-type", {
    expected:
      "an amplitude plus or minus another of its kind, times or over a number, over another, or compared with another",
    received: args.length === 1 ? `${symbol}${kindText(a)}` : `${kindText(a)} ${symbol} ${kindText(b)}`,
  });
}
