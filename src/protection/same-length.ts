import { shown, VeladisError } from "../core/index";

/**
 * The length that all columns have.
 *
 * @throws {@link VeladisError} `length-mismatch` with the first that differs
 */
export function sameLength(columns: readonly (readonly [name: string, levels: ArrayLike<number>])[]): number {
  const length = columns[0]?.[1].length ?? 0;
  for (const [name, levels] of columns) {
    if (levels.length === length) continue;
    throw new VeladisError("length-mismatch", {
      expected: `${length} levels of ${shown(name)}, as many as of the first channel`,
      received: `${levels.length}`,
    });
  }
  return length;
}
