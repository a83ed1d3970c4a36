import { type LimitsRequest, limitsOfRequest } from "./limits-of-request";
import { speedEnds } from "./running-speed";
import type { SetpointLimits } from "./setpoint-limits";
import { highestOf } from "./setpoint-targets";

/** Of two the one that allows the lower trip; of two that have none, the lower alarm. */
function lowerOf(one: SetpointLimits, other: SetpointLimits): SetpointLimits {
  const most = (limits: SetpointLimits): number => (highestOf(limits, "trip") ?? limits.lower.amplitude).value;
  return most(other) < most(one) ? other : one;
}

/**
 * The limits that setpoints in a type are held against: of a machine whose speed varies, those of the end of its range that
 * allows the lower trip.
 *
 * @throws {@link VeladisError} as {@link proposeSetpoints}
 */
export function lowestAtSpeeds(request: LimitsRequest, type: string): SetpointLimits | null {
  const ends = speedEnds(request.machine);
  const isRange = ends.length > 1;
  if (!isRange) return limitsOfRequest(request, type, ends[0]);
  const all = ends.map((hertz) => limitsOfRequest(request, type, hertz, { hertz, isRange }));
  return all.reduce((one, other) => (one === null || other === null ? null : lowerOf(one, other)));
}
