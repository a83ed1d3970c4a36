import type { SetpointCeilings, SetpointLimit, SetpointLimits } from "./setpoint-limits";

type Bounds = Pick<SetpointLimits, "lower" | "upper" | "ceilings">;

function lowerOf(one: SetpointLimit, other: SetpointLimit): SetpointLimit {
  return other.amplitude.value < one.amplitude.value ? other : one;
}

function lowerCeilings(one: SetpointCeilings | null, other: SetpointCeilings | null): SetpointCeilings | null {
  if (one === null || other === null) return one ?? other;
  return { alarm: lowerOf(one.alarm, other.alarm), trip: lowerOf(one.trip, other.trip) };
}

/** Of several limits the lowest of each; a shutdown that some do not have is that of the others. */
export function lowestOfLimits(all: readonly Bounds[]): Bounds {
  return all.reduce((one, other) => ({
    lower: lowerOf(one.lower, other.lower),
    upper: one.upper === null || other.upper === null ? (one.upper ?? other.upper) : lowerOf(one.upper, other.upper),
    ceilings: lowerCeilings(one.ceilings, other.ceilings),
  }));
}
