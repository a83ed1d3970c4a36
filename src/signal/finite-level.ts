import { VeladisError } from "../core/index";

/**
 * The level, if the values it was made from were not so large that their squares left the range of numbers.
 *
 * @throws {@link VeladisError} `not-finite`
 */
export function finiteLevel(value: number): number {
  if (Number.isFinite(value)) return value;
  throw new VeladisError("not-finite", {
    expected: "values whose squares a 64-bit number can hold",
    received: "values beyond 1e150 or so, as of a file read in the wrong format",
  });
}
