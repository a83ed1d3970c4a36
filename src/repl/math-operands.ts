import { requireFinite, shown, VeladisError } from "../core/index";
import { isVibration } from "./arithmetic";
import type { Value } from "./value";

/** What mathjs marks its numbers, lists and other values by. */
interface Marked {
  readonly isBigNumber?: boolean;
  readonly isFraction?: boolean;
  readonly isDenseMatrix?: boolean;
  readonly isMatrix?: boolean;
  toArray(): unknown[];
  valueOf(): unknown;
}

const marks = (value: unknown): Partial<Marked> => (typeof value === "object" && value !== null ? value : {});

/** True for a list of mathjs that is no array. */
export function isMatrix(value: unknown): boolean {
  return marks(value).isMatrix === true;
}

/** The elements of an array or a matrix; nothing for what is no list. */
export function elementsOf(value: unknown): readonly unknown[] | undefined {
  if (Array.isArray(value)) return value;
  return isMatrix(value) ? (value as Marked).toArray() : undefined;
}

/** True for an amplitude or a number of decibels, also one that comes back from JSON. */
export function isVibrationObject(value: unknown): boolean {
  return typeof value === "object" && value !== null && isVibration(value as Value);
}

/** True for a list that begins with an amplitude or a number of decibels; only its first element is looked at. */
export function isVibrationList(value: unknown): boolean {
  const list = marks(value).isDenseMatrix === true ? (value as Marked).valueOf() : value;
  if (!Array.isArray(list)) return false;
  return isVibrationObject(list[0]) || isVibrationList(list[0]);
}

/**
 * What stands beside an amplitude as its arithmetic takes it: a big number, a fraction or a bigint as the number next to it.
 *
 * @throws {@link VeladisError} `not-finite` or `out-of-range` for what no number can hold, `wrong-type` for a unit, a complex
 *   number and their like
 */
export function mathOperand(value: unknown): Value {
  const { isBigNumber, isFraction } = marks(value);
  if (isBigNumber || isFraction || typeof value === "bigint") {
    const number = requireFinite(Number(value), "a factor that a number can hold");
    if (number !== 0 || /^-?0$/.test(String(value))) return number;
    throw new VeladisError("out-of-range", {
      expected: "a factor that a number can hold",
      received: shown(String(value)),
    });
  }
  if (isVibrationObject(value) || ["number", "string", "boolean"].includes(typeof value)) return value as Value;
  throw new VeladisError("wrong-type", {
    expected: "a number, an amplitude or a number of dB beside an amplitude",
    received: shown(typeof value === "object" && value !== null ? String(value) : value),
  });
}
