import { lengthOf, shown, VeladisError } from "../core/index";

/**
 * The length that all columns have.
 *
 * @throws {@link VeladisError} `length-mismatch` with the first that differs
 */
export function sameLength(columns: readonly (readonly [name: string, levels: ArrayLike<number>])[]): number {
  const lengths = columns.map(([name, levels]) => lengthOf(levels, `levels of ${shown(name)}`, { option: name }));
  const [length = 0] = lengths;
  for (const [i, [name, levels]] of columns.entries()) {
    if (lengths[i] === length) continue;
    throw new VeladisError("length-mismatch", {
      expected: `${length} levels of ${shown(name)}, as many as of the first channel`,
      received: `${levels.length}`,
      option: name,
    });
  }
  return length;
}
