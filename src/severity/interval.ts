import { same } from "../core/index";

/** A range of a number: one lower and one upper bound at most, or a list of single values. */
export interface Interval {
  /** Lower bound that belongs to the range. */
  readonly from?: number;
  /** Lower bound that does not belong to it. */
  readonly above?: number;
  /** Upper bound that belongs to the range. */
  readonly to?: number;
  /** Upper bound that does not belong to it. */
  readonly below?: number;
  /** The only values there are. */
  readonly oneOf?: readonly number[];
}

/** True when the value lies in the range; a value within float noise of a bound counts as the bound. */
export function contains({ from, above, to, below, oneOf }: Interval, value: number): boolean {
  if (oneOf !== undefined) return oneOf.some((one) => same(one, value));
  // beyond a bound that is not there is no number, and no comparison with that is true
  const beyond = (bound = Number.NaN): number => (same(value, bound) ? 0 : value - bound);
  return !(beyond(from) < 0 || beyond(above) <= 0 || beyond(to) > 0 || beyond(below) >= 0);
}

/** True where no value from `low` to `high` lies in the interval. */
export function isBeyond(interval: Interval, low: number, high: number): boolean {
  const { from, above, to, below, oneOf } = interval;
  if (oneOf !== undefined) return oneOf.every((one) => !contains({ from: low, to: high }, one));
  const [floor, ceiling] = [from ?? above, to ?? below];
  return (
    (floor !== undefined && high <= floor && !contains(interval, high)) ||
    (ceiling !== undefined && low >= ceiling && !contains(interval, low))
  );
}

/** The range in words: `"above 15 to 300 kW"`. */
export function intervalText({ from, above, to, below, oneOf }: Interval, unit: string): string {
  if (oneOf !== undefined) return `${oneOf.join(" or ")} ${unit}`;
  const low = from !== undefined ? `${from}` : above !== undefined ? `above ${above}` : "";
  const high = to !== undefined ? `${to}` : below !== undefined ? `below ${below}` : "";
  if (low === "" && high === "") return `any, in ${unit}`;
  if (low === "") return `${to !== undefined ? "up to " : ""}${high} ${unit}`;
  if (high === "") return `${low} ${unit}${from !== undefined ? " or more" : ""}`;
  return `${low} to ${high} ${unit}`;
}
