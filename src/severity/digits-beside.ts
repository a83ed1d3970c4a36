import { same } from "../core/index";
import { significant } from "../reading/index";

/** No number has more digits that tell it from another. */
const MOST = 17;

/**
 * The significant digits with which a value still reads as on its side of every limit: 4.4999 below a limit of 4.5 takes
 * five, since 4.50 would read as the limit itself. A value that differs by float noise alone is at the limit.
 *
 * @param limits - in the unit of the value
 * @param digits - the fewest
 */
export function digitsBeside(value: number, limits: readonly number[], digits = 3): number {
  const apart = limits.filter((limit) => !same(limit, value));
  const rounded = (one: number, enough: number): number => Number(significant(one, enough));
  const reads = (enough: number): boolean =>
    apart.every((limit) => Math.sign(rounded(value, enough) - rounded(limit, enough)) === Math.sign(value - limit));
  let enough = digits;
  while (enough < MOST && !reads(enough)) enough++;
  return enough;
}
