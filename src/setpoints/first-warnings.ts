import { FLOAT_NOISE } from "../core/index";
import { type Amplitude, format } from "../reading/index";
import type { SetpointWarning } from "./setpoint-warnings";

/** Whether the machine has reached a setpoint already: it would act as soon as it is set. */
export function isAtOnce(base: Amplitude | null, setpoint: Amplitude): boolean {
  return base !== null && base.value >= setpoint.value * (1 - FLOAT_NOISE);
}

/** What is said of a setpoint that the machine has reached already. */
export function atOnceWarning(
  name: "alarm" | "trip",
  setpoint: Amplitude | null,
  base: Amplitude | null,
): SetpointWarning[] {
  if (setpoint === null || base === null || !isAtOnce(base, setpoint)) return [];
  const does = name === "alarm" ? "the alarm would stand at once" : "the machine would trip at once";
  const where = base.value > setpoint.value ? "above" : "at";
  return [
    {
      code: `${name} at once`,
      text: `${does}: the machine is already ${where} it (${name} ${format(setpoint)}, baseline ${format(base)})`,
    },
  ];
}
