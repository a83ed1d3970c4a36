import { convertedAt, leastAmplitude, multipliedAmplitude } from "../amplitude/index";
import { type Source, VeladisError } from "../core/index";
import { setpointInDevice } from "../device/index";
import type { Amplitude } from "../reading/index";
import { AS_STATED, type Proposal, type ProposedSetpoint, type SetpointWarning } from "../setpoints/index";
import type { PlantMachine } from "./plant-machine";

const CEILING: Source = /* @__PURE__ */ Object.freeze({
  title: "ceiling on the list of the plant",
  provenance: "reported",
  note: AS_STATED,
} as const);

/** A proposal whose trip is no higher than the ceiling of the maker or the site. */
export function underCeiling(
  proposal: Proposal,
  { ceiling, device }: Pick<PlantMachine, "ceiling" | "device">,
  hertz: number | undefined,
): Proposal {
  const { trip, alarm, as, hysteresis } = proposal;
  if (ceiling === undefined || trip === null) return proposal;
  const highest = convertedAt(ceiling, as, hertz);
  const range = [Math.min(trip.range[0], highest.value), Math.min(trip.range[1], highest.value)] as const;
  const reason = { text: "no higher than the ceiling of the maker or the site", source: CEILING };
  if (trip.stored.value <= highest.value) {
    const reasons = highest.value < trip.range[1] ? Object.freeze([...trip.reasons, reason]) : trip.reasons;
    return Object.freeze({ ...proposal, trip: Object.freeze({ ...trip, range, reasons }) });
  }
  const lowered = loweredTrip(trip, highest, { device, hertz, percent: hysteresis.percent });
  const warnings: SetpointWarning[] = [];
  if (lowered === null) {
    warnings.push({
      code: "beyond device",
      text: `trip: the device holds no setpoint as low as the ceiling of ${highest.value} ${as}`,
    });
  } else if (alarm !== null && alarm.stored.value >= lowered.stored.value) {
    warnings.push({
      code: "alarm not below trip",
      text: "the ceiling of the maker or the site is at or below the proposed alarm: there is no warning before the trip",
    });
  }
  return Object.freeze({
    ...proposal,
    trip: lowered && Object.freeze({ ...lowered, range, reasons: Object.freeze([...trip.reasons, reason]) }),
    warnings: Object.freeze([...warnings, ...proposal.warnings]),
  });
}

/** A trip at a ceiling, as the device holds it; null where it cannot. */
function loweredTrip(
  trip: ProposedSetpoint,
  highest: Amplitude,
  {
    device,
    hertz,
    percent,
  }: { readonly device: PlantMachine["device"]; readonly hertz: number | undefined; readonly percent: number },
): ProposedSetpoint | null {
  const asked = leastAmplitude([trip.asked, highest], "ceiling of the maker or the site");
  const at = asked.hertz ?? hertz;
  try {
    const inSteps = setpointInDevice(asked, device, at === undefined ? undefined : { hertz: at }, "down");
    const reset = multipliedAmplitude(inSteps.stored, 1 - percent / 100, `less a hysteresis of ${percent} %`);
    return { ...trip, ...inSteps, reset };
  } catch (error) {
    if (!VeladisError.is(error) || error.code !== "out-of-range") throw error;
    return null;
  }
}
