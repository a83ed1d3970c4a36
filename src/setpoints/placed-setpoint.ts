import { multipliedAmplitude } from "../amplitude/index";
import { VeladisError } from "../core/index";
import { type Device, setpointInDevice } from "../device/index";
import { type Amplitude, format } from "../reading/index";
import { reaches } from "./first-warnings";
import type { ProposedSetpoint } from "./proposal";
import { setpointRules } from "./reason";
import type { Target } from "./setpoint-targets";
import type { SetpointWarning } from "./setpoint-warnings";

/** How a target is brought to a device. */
export interface Placing {
  readonly device: Device;
  readonly hertz: number | undefined;
  /** The level that the machine runs at. */
  readonly base: Amplitude | null;
  /** Percent of the setpoint. */
  readonly hysteresis: number;
  readonly warn: (warning: SetpointWarning) => void;
}

/** A target as the device holds it; null, with a warning, where it cannot. */
export function placedSetpoint(
  target: Target,
  name: string,
  { device, hertz, base, hysteresis, warn }: Placing,
): ProposedSetpoint | null {
  const { amplitude, range } = target;
  const own = amplitude.hertz ?? hertz;
  const asked = own === undefined ? amplitude : { ...amplitude, hertz: own };
  try {
    const inSteps = setpointInDevice(asked, device, own === undefined ? undefined : { hertz: own }, "down");
    const reset = multipliedAmplitude(inSteps.stored, 1 - hysteresis / 100, `less a hysteresis of ${hysteresis} %`);
    const reasons = inSteps.difference === 0 ? target.reasons : [...target.reasons, setpointRules["device steps"]];
    if (inSteps.difference !== 0 && inSteps.stored.value < asked.value * 0.9) {
      warn({ code: "coarse steps", text: `${name}: ${inSteps.effect}` });
    }
    return Object.freeze({
      ...inSteps,
      reset,
      range,
      atOnce: reaches(base, inSteps.stored),
      reasons: Object.freeze(reasons),
    });
  } catch (error) {
    if (!(error instanceof VeladisError) || error.code !== "out-of-range") throw error;
    warn({ code: "beyond device", text: `${name} of ${format(asked)}: ${error.message}` });
    return null;
  }
}
