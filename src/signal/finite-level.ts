import { VeladisError } from "../core/index";
import { sumOf } from "./samples";

/**
 * The level itself if it is finite.
 *
 * @throws {@link VeladisError} `not-finite` where numbers of the record left the range of numbers on the way
 */
export function finiteLevel(value: number): number {
  if (Number.isFinite(value)) return value;
  throw new VeladisError("not-finite", {
    expected: "values whose squares a number can hold",
    received: "values beyond 1e150 or so, as of a file read in the wrong format",
    parameter: "samples",
  });
}

/** The levels themselves if each is finite. */
export function finiteLevels(values: Float64Array): Float64Array {
  // a sum is finite only if every level is
  if (!Number.isFinite(sumOf(values))) values.forEach((value) => void finiteLevel(value));
  return values;
}
