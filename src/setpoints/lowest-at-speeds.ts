import type { MachineRef, SchemeRef } from "../severity/index";
import { type LimitsRequest, limitsOfRequest } from "./limits-of-request";
import { speedEnds } from "./running-speed";
import type { SetpointLimits } from "./setpoint-limits";
import { highestOf } from "./setpoint-targets";

/** What says which limits a machine has: its nameplate, a scheme, or limits of the maker or the site. */
export interface MachineLimitsRequest extends Pick<LimitsRequest, "limits" | "schemes"> {
  readonly machine: MachineRef;
  readonly scheme?: SchemeRef;
}

/** Of two the one that allows the lower trip; of two that have none, the lower alarm. */
function lowerOf(one: SetpointLimits, other: SetpointLimits): SetpointLimits {
  const most = (limits: SetpointLimits): number => (highestOf(limits, "trip") ?? limits.lower.amplitude).value;
  return most(other) < most(one) ? other : one;
}

/**
 * The limits that setpoints in a type are held against: of a machine whose speed varies, those of the end of its range that
 * allows the lower trip; of a setpoint that says a frequency itself, those at that frequency where they are lower.
 *
 * @param own - the frequency that the setpoint says itself, in hertz
 * @throws {@link VeladisError} as {@link proposeSetpoints}
 */
export function lowestAtSpeeds(request: MachineLimitsRequest, type: string, own?: number): SetpointLimits {
  const ends = speedEnds(request.machine);
  const isRange = ends.length > 1;
  const all = isRange
    ? ends.map((hertz) => limitsOfRequest(request, type, hertz, { hertz, isRange }))
    : ends.length === 0 && own !== undefined
      ? []
      : [limitsOfRequest(request, type, ends[0])];
  if (own !== undefined) all.push(limitsOfRequest(request, type, own, { hertz: own, isRange: false, isOwn: true }));
  // of a machine there are limits, or it is refused
  return (all as SetpointLimits[]).reduce(lowerOf);
}
