import { convertAmplitude, rssDifference, vectorDifference } from "../amplitude/index";
import { requireFinite, shown, VeladisError } from "../core/index";
import { type FrequencyUnit, frequencyUnits } from "../frequency/index";
import { type Amplitude, parseAmplitude } from "../reading/index";
import { type Unit, units } from "../units/index";
import { amplitudeOperation } from "./arithmetic";
import { meanOf, rootSumSquare } from "./combined";
import type { Call } from "./engine";
import { amplitude, isAmplitude, isLevelDifference, opened, type Value } from "./value";

type Typed = ((name: string, signatures: Record<string, (...args: never[]) => unknown>) => unknown) & {
  addType(type: { name: string; test: (value: unknown) => boolean }): void;
};

/** What is needed of an instance of mathjs: one made by `create(all)`. */
export interface AmplitudeMath {
  /** Its maker of typed functions. */
  readonly typed: unknown;
  /** Takes functions in. */
  import(object: object, options?: object): void;
  /** Evaluates an expression. */
  evaluate(expression: string): unknown;
  /** Takes a unit in. */
  createUnit(name: string, definition: never): unknown;
}

/** Whether a value has what is needed of an instance. */
function isMath(math: unknown): math is AmplitudeMath {
  if ((typeof math !== "object" && typeof math !== "function") || math === null) return false;
  const { typed, import: takeIn, evaluate, createUnit } = math as Partial<AmplitudeMath>;
  const isTyped = typeof typed === "function" && typeof (typed as Partial<Typed>).addType === "function";
  return isTyped && [takeIn, evaluate, createUnit].every((one) => typeof one === "function");
}

/** What a unit of the catalogues is a ratio of, as mathjs writes it. */
function baseOf(unit: Unit | FrequencyUnit): string {
  if (!("quantity" in unit)) return unit.radian ? "Hz / (2 pi)" : "Hz";
  return { displacement: "m", velocity: "m / s", acceleration: "m / s^2" }[unit.quantity];
}

/** The symbols of the catalogues that can be names in an expression, each with its value in units of mathjs. */
function tradeUnits(): (readonly [name: string, expression: string])[] {
  const rows = Object.entries<Unit | FrequencyUnit>({ ...units, ...frequencyUnits });
  return rows.flatMap(([symbol, unit]) =>
    [symbol, ...(unit.also ?? [])]
      .filter((name) => /^[A-Za-z]+$/.test(name))
      .map((name) => [name, `(${unit.num} / ${unit.den}) ${baseOf(unit)}`] as const),
  );
}

function isAmplitudeObject(value: unknown): boolean {
  return typeof value === "object" && value !== null && isAmplitude(value as Value) && "quantity" in value;
}

function isDifferenceObject(value: unknown): boolean {
  return typeof value === "object" && value !== null && isLevelDifference(value as Value);
}

/** The two sides that an operator takes with an amplitude or a number of decibels among them. */
const sides: Readonly<Record<string, readonly string[]>> = {
  add: ["Amplitude, Amplitude", "Amplitude, Decibels", "Decibels, Amplitude", "Decibels, Decibels"],
  subtract: ["Amplitude, Amplitude", "Amplitude, Decibels", "Decibels, Decibels"],
  multiply: ["Amplitude, number", "number, Amplitude", "Decibels, number", "number, Decibels"],
  divide: ["Amplitude, Amplitude", "Amplitude, number", "Decibels, number"],
  unaryPlus: ["Amplitude", "Decibels"],
  unaryMinus: ["Decibels"],
};

const compared = ["Amplitude, Amplitude", "Decibels, Decibels"];

/** The operators between amplitudes, numbers of decibels and numbers, for typed functions of the instance. */
function signatures(operator: string, symbol: string, call: Call): Record<string, (...args: never[]) => unknown> {
  const run = (...args: never[]): unknown => amplitudeOperation(operator, symbol, args, call);
  return Object.fromEntries((sides[operator] ?? compared).map((types) => [types, run]));
}

const operators: Readonly<Record<string, string>> = {
  add: "+",
  subtract: "-",
  multiply: "*",
  divide: "/",
  unaryPlus: "+",
  unaryMinus: "-",
  larger: ">",
  largerEq: ">=",
  smaller: "<",
  smallerEq: "<=",
  equal: "==",
  unequal: "!=",
};

/**
 * Registers amplitudes, the units of the trade and their functions in an instance of mathjs of your own, and touches no
 * other instance.
 *
 * It adds the type `Amplitude` to `+ - * / < <= > >= == !=` and to `to`, and the type `Decibels` of numbers of dB without
 * a reference; the functions `amplitude(text)`, `decibels(6)`,
 * `rss(...)`, `meanAmplitude(...)`, `vectorDifference(from, off, degrees)` and `rssDifference(from, background)`; and the units of the catalogues that mathjs lacks (rpm, cpm, ips, micron, Gal, gn
 * and their like), where the instance has none of that name. Every amplitude keeps what was assumed and the steps that led
 * to it, for {@link assumedText} and {@link explain}; `mean` of mathjs itself adds, and so says in-phase, where
 * `meanAmplitude` does not. Expressions of strangers belong into {@link evaluateLine}, not into an instance with all of mathjs.
 *
 * @param math - an instance made by `create(all)`
 * @returns the same instance
 * @throws {@link VeladisError} `missing-option` or `wrong-type` for what is no such instance; from the functions, as
 *   {@link evaluateLine}
 * @example
 * ```ts
 * import { all, create } from "mathjs";
 * import { type Amplitude, assumedText, format } from "veladis";
 * import { registerAmplitudes } from "veladis/mathjs";
 *
 * const math = registerAmplitudes(create(all!));
 * format(math.evaluate('amplitude("0.25 in/s pk at 1500 r/min") * 2 to "mm/s rms"')); // => "8.98 mm/s rms"
 * const sum = 'amplitude("2 mm/s rms") + (amplitude("0.1 in/s pk") to "mm/s rms")';
 * assumedText(math.evaluate(sum) as Amplitude); // => "(sine, one frequency, in phase)"
 * math.evaluate("1500 rpm to Hz").toString(); // => "25 Hz"
 * format(math.evaluate('amplitude("4.5 mm/s rms") + decibels(6)')); // => "8.98 mm/s rms"
 * math.evaluate('amplitude("2 mm/s rms") + amplitude("1 mm/s pk")'); // throws wrong-detector
 * ```
 */
export function registerAmplitudes<M extends AmplitudeMath>(math: M): M {
  if (!isMath(math)) {
    throw new VeladisError(math === undefined ? "missing-option" : "wrong-type", {
      expected: "an instance of mathjs made by create(all)",
      received: shown(math),
    });
  }
  const typed = math.typed as Typed;
  typed.addType({ name: "Amplitude", test: isAmplitudeObject });
  typed.addType({ name: "Decibels", test: isDifferenceObject });
  // the instance's own functions compare, with its own tolerance
  const call: Call = (name, args) =>
    (math as unknown as Record<string, (...values: readonly number[]) => unknown>)[name]?.(...args);
  const ofAmplitudes = Object.entries(operators).map(([name, symbol]) => [
    name,
    typed(name, signatures(name, symbol, call)),
  ]);
  // a list within an expression comes as a matrix
  const readings = (args: readonly unknown[]): Amplitude[] =>
    opened(args.map((value) => (value as { toArray?: () => unknown }).toArray?.() ?? value) as Value[]).map((value) =>
      amplitude(value, "amplitudes"),
    );
  math.import({
    ...Object.fromEntries(ofAmplitudes),
    to: typed("to", { "Amplitude, string": (reading: Amplitude, type: string) => convertAmplitude(reading, type) }),
    decibels: typed("decibels", {
      number: (decibels: number) => Object.freeze({ decibels: requireFinite(decibels, "a number of dB") }),
    }),
    amplitude: typed("amplitude", { string: (written: string) => parseAmplitude(written) }),
    rss: (...args: unknown[]) => rootSumSquare(readings(args)),
    vectorDifference: (from: unknown, off: unknown, degrees: number) =>
      vectorDifference(...(readings([from, off]) as [Amplitude, Amplitude]), degrees),
    rssDifference: (...args: unknown[]) => rssDifference(...(readings(args) as [Amplitude, Amplitude])),
    meanAmplitude: (...args: unknown[]) => meanOf(readings(args)),
  });
  for (const [name, expression] of tradeUnits()) {
    try {
      math.evaluate(`1 ${name}`);
    } catch {
      math.createUnit(name, math.evaluate(expression) as never);
    }
  }
  return math;
}
