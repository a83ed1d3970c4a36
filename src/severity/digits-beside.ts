import { same } from "../core/index";

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
  const reads = (limit: number): boolean =>
    same(limit, value) ||
    Math.sign(+value.toPrecision(digits) - +limit.toPrecision(digits)) === Math.sign(value - limit);
  return digits >= MOST || limits.every(reads) ? digits : digitsBeside(value, limits, digits + 1);
}
