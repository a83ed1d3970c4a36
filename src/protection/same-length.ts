import { shown, VeladisError } from "../core/index";
import { lengthOf } from "./number-list";

/**
 * The length that all columns have.
 *
 * @throws {@link VeladisError} `length-mismatch` with the first that differs
 */
export function sameLength(columns: readonly (readonly [name: string, levels: ArrayLike<number>])[]): number {
  const [first] = columns;
  const length = first === undefined ? 0 : lengthOf(first[1], `levels of ${shown(first[0])}`);
  for (const [name, levels] of columns) {
    if (lengthOf(levels, `levels of ${shown(name)}`) === length) continue;
    throw new VeladisError("length-mismatch", {
      expected: `${length} levels of ${shown(name)}, as many as of the first channel`,
      received: `${levels.length}`,
    });
  }
  return length;
}
