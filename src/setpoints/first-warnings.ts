import { FLOAT_NOISE } from "../core/index";
import { type Amplitude, format, significant } from "../reading/index";
import type { ProposedSetpoint } from "./proposal";
import type { SetpointWarning } from "./setpoint-warnings";

/** Whether a level reaches a setpoint, as the trip logic takes it: at it or above, float noise allowed for. */
export function reaches(level: Amplitude | null, setpoint: Amplitude): boolean {
  return level !== null && level.value >= setpoint.value * (1 - FLOAT_NOISE);
}

/** What is said of a setpoint that the machine has reached already: it would act as soon as it is set. */
function atOnceWarning(name: "alarm" | "trip", setpoint: ProposedSetpoint | null, base: Amplitude): SetpointWarning[] {
  if (setpoint === null || !setpoint.atOnce) return [];
  const { stored } = setpoint;
  const does = name === "alarm" ? "the alarm would stand at once" : "the machine would trip at once";
  const where = base.value > stored.value ? "above" : "at";
  return [
    {
      code: `${name} at once`,
      text: `${does}: the machine is already ${where} it (${name} ${format(stored)}, baseline ${format(base)})`,
    },
  ];
}

/** What is said of a setpoint that the machine is below, but not below its reset level. */
function staysSetWarning(
  name: "alarm" | "trip",
  setpoint: ProposedSetpoint | null,
  base: Amplitude,
): SetpointWarning[] {
  if (setpoint === null || setpoint.atOnce || !reaches(base, setpoint.reset)) return [];
  return [
    {
      code: `${name} stays set`,
      text: `once set, the ${name} would not clear at the running level: it clears below ${format(setpoint.reset)}, and the baseline is ${format(base)}; a latching one cannot be reset there`,
    },
  ];
}

function notBelowTripWarning(alarm: Amplitude, trip: Amplitude): SetpointWarning[] {
  if (!reaches(alarm, trip)) return [];
  const times = significant(trip.value / alarm.value);
  return [
    {
      code: "alarm not below trip",
      text: `the trip is not above the alarm (${times} times it): the machine trips before it is warned of`,
    },
  ];
}

/** What is said before all else: setpoints that do not do what they are for at the level that the machine runs at. */
export function firstWarnings(
  alarm: ProposedSetpoint | null,
  trip: ProposedSetpoint | null,
  base: Amplitude | null,
): SetpointWarning[] {
  const unwarned = alarm === null || trip === null ? [] : notBelowTripWarning(alarm.stored, trip.stored);
  if (base === null) return unwarned;
  return [
    ...atOnceWarning("trip", trip, base),
    ...atOnceWarning("alarm", alarm, base),
    ...unwarned,
    ...staysSetWarning("trip", trip, base),
    ...staysSetWarning("alarm", alarm, base),
  ];
}
