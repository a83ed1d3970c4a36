import { requireChoice, VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { extremeOf } from "./combined";
import { elementsOf, isMatrix } from "./math-operands";
import type { Own } from "./math-typed";
import { operands } from "./operands";
import { amplitude, type Value } from "./value";

/** An operator of mathjs on two values, neither of them a list. */
export type OfTwo = (a: unknown, b: unknown) => unknown;

/**
 * An operator on each element of a list, beside one value or the element at the same place of another list.
 *
 * @throws {@link VeladisError} `length-mismatch`
 */
export function onElements(of: OfTwo, a: unknown, b: unknown): unknown {
  const [x, y] = [elementsOf(a), elementsOf(b)];
  const longer = x ?? y;
  if (longer === undefined) return of(a, b);
  if (x !== undefined && y !== undefined && x.length !== y.length) {
    throw new VeladisError("length-mismatch", {
      expected: "two lists of one length",
      received: `${x.length} and ${y.length} elements`,
    });
  }
  return longer.map((_, i) => onElements(of, x === undefined ? a : x[i], y === undefined ? b : y[i]));
}

/** A list as a matrix where one was given, else as the array that it is. */
export function listAsGiven(own: Own, given: readonly unknown[], result: unknown): unknown {
  return given.some(isMatrix) && Array.isArray(result) ? own.matrix?.(result) : result;
}

/** Refuses what lists of numbers come to as matrices, and readings do not. */
export function refuseMatrixProduct(symbol: string): never {
  throw new VeladisError("wrong-type", {
    expected: `a list of amplitudes ${symbol === "*" ? "times a number" : "over a number or an amplitude"}, or .${symbol} element by element`,
    received: `a list ${symbol} a list`,
  });
}

/** The amplitudes among arguments of a function of mathjs, lists of any kind opened. */
export function readingsIn(args: readonly unknown[]): Amplitude[] {
  return args.flatMap((value) => {
    const elements = elementsOf(value);
    return elements === undefined ? [amplitude(value as Value, "amplitudes")] : readingsIn(elements);
  });
}

/** The functions of mathjs that pick or add up, on a list of amplitudes. */
export function listFunctions(add: OfTwo, divide: OfTwo): Record<string, (readings: Amplitude[]) => unknown> {
  const sum = (readings: readonly Amplitude[]): unknown => (readings as readonly unknown[]).reduce(add);
  return {
    max: (readings) => extremeOf(readings, "largest"),
    min: (readings) => extremeOf(readings, "smallest"),
    sum,
    mean: (readings) => (readings.length === 1 ? readings[0] : divide(sum(readings), readings.length)),
  };
}

/**
 * Readings in the order of their size, each as it was.
 *
 * @param order - `"asc"`, `"desc"`, `"natural"` or a function that compares two
 * @throws {@link VeladisError} for readings of two quantities or detectors, and another word for the order
 */
export function sortedReadings(readings: Amplitude[], order: unknown, compare: OfTwo): Amplitude[] {
  operands(readings, "sort");
  const by = (typeof order === "function" ? order : compare) as (a: Amplitude, b: Amplitude) => number;
  if (typeof order !== "function") requireChoice(order, ["asc", "desc", "natural"], "an order to sort by");
  const sign = order === "desc" ? -1 : 1;
  return [...readings].sort((a, b) => sign * Number(by(a, b)));
}
