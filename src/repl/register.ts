import { shown, VeladisError } from "../core/index";
import { type FrequencyUnit, frequencyUnits } from "../frequency/index";
import { type Unit, units } from "../units/index";
import { dimensionsOf } from "./math-dimensions";
import { isVibrationList, isVibrationObject } from "./math-operands";
import { typedOperators } from "./math-operators";
import { readingFunctions } from "./math-readings";
import type { Own, Typed } from "./math-typed";
import { isAmplitude, type Value } from "./value";

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
  if (typeof typed !== "function") return false;
  const { addType, addTypes } = typed as Partial<Typed>;
  return [addType, addTypes, takeIn, evaluate, createUnit].every((one) => typeof one === "function");
}

/** What a unit of the catalogues is a ratio of, as mathjs writes it; no powers, which an instance of fractions cannot take. */
function baseOf(unit: Unit | FrequencyUnit): string {
  if (!("quantity" in unit)) return unit.radian ? "Hz / (2 pi)" : "Hz";
  return { displacement: "m", velocity: "m / s", acceleration: "m / s / s" }[unit.quantity];
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
  return isVibrationObject(value) && isAmplitude(value as Value) && "quantity" in (value as object);
}

function isDifferenceObject(value: unknown): boolean {
  return isVibrationObject(value) && !isAmplitude(value as Value);
}

/**
 * Registers amplitudes, the units of the trade and their functions in an instance of mathjs of your own, and touches no
 * other instance.
 *
 * It adds the type `Amplitude` to `+ - * / .* ./ < <= > >= == !=`, `compare`, `sort`, `max`, `min`, `sum`, `mean` and to `to`, alone
 * and in lists, and the type `Decibels` of numbers of dB without
 * a reference; the functions `amplitude(text)`, `decibels(6)`,
 * `rss(...)`, `meanAmplitude(...)`, `vectorDifference(from, off, degrees)` and `rssDifference(from, background)`; and the units of the catalogues that mathjs lacks (rpm, cpm, ips, micron, Gal, gn
 * and their like), where the instance has none of that name. Every amplitude keeps what was assumed and the steps that led
 * to it, for {@link assumedText} and {@link explain}; `mean` of mathjs itself adds, and so says in-phase, where
 * `meanAmplitude` does not. Big numbers and fractions beside a
 * reading count as the number next to them. An answer writes itself, by `String` and by `format` of the instance. An instance that
 * has amplitudes is left as it is. Expressions of strangers belong into {@link evaluateLine}, not into an instance with all of mathjs.
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
 * String(math.evaluate('max(amplitude("3 mm/s rms"), amplitude("0.25 in/s rms"))')); // => "0.250 in/s rms"
 * String(math.evaluate('amplitude("4 mm/s rms") * [0.5, 2]')); // => "[2.00 mm/s rms, 8.00 mm/s rms]"
 * math.evaluate('amplitude("2 mm/s rms") + amplitude("1 mm/s pk")'); // throws wrong-detector
 * ```
 */
export function registerAmplitudes<M extends AmplitudeMath>(math: M): M {
  if (!isMath(math)) {
    throw new VeladisError("wrong-type", {
      expected: "an instance of mathjs made by create(all)",
      received: shown(math),
      parameter: "math",
    });
  }
  const typed = math.typed as Typed;
  // the mark of every copy of this library: what is there already is not added again
  const mark = Symbol.for("veladis.amplitudes");
  if (Object.hasOwn(typed, mark)) return math;
  // before the lists of mathjs, which take any elements
  typed.addTypes([{ name: "Amplitudes", test: isVibrationList }], "Array");
  typed.addType({ name: "Amplitude", test: isAmplitudeObject });
  typed.addType({ name: "Decibels", test: isDifferenceObject });
  const own = math as unknown as Own;
  const keepDimensions = dimensionsOf(math);
  math.import({ ...typedOperators(own, typed), ...readingFunctions(own, typed) });
  keepDimensions();
  for (const [name, expression] of tradeUnits()) {
    try {
      math.evaluate(`1 ${name}`);
    } catch {
      math.createUnit(name, math.evaluate(expression) as never);
    }
  }
  Object.defineProperty(typed, mark, { value: true });
  return math;
}
