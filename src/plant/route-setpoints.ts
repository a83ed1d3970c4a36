import { convertAmplitude } from "../amplitude/index";
import { attempt, FLOAT_NOISE } from "../core/index";
import { type Amplitude, format, writtenIn } from "../reading/index";
import type { PlantMachine } from "./plant-machine";

/** A setpoint of a machine, against which readings in one type are held. */
interface SetpointTold {
  readonly level: Amplitude;
  /** In the type of the readings. */
  readonly value: number;
  /** What to ask of a reading that reached it. */
  readonly asks: string;
}

/** The setpoints of a machine, the highest first, and why readings cannot be held against the others. */
export interface SetpointsTold {
  readonly told: readonly SetpointTold[];
  readonly notHeld: readonly string[];
}

const asks = {
  trip: "why did it not act? (a bypass, an inhibit, a delay, another sensor or band)",
  alarm: "does it stand?",
} as const;

/** The alarm and the trip as set, in the type and at the frequency of readings. */
export function setpointsTold(machine: Pick<PlantMachine, "alarm" | "trip">, like: Amplitude): SetpointsTold {
  const told: SetpointTold[] = [];
  const notHeld: string[] = [];
  const as = writtenIn(like);
  for (const name of ["trip", "alarm"] as const) {
    const level = machine[name];
    if (level === undefined) continue;
    // of another quantity it is told at the frequency of the reading, where it says none itself
    const own = level.hertz === undefined && like.hertz !== undefined ? { ...level, hertz: like.hertz } : level;
    const converted = attempt(() => convertAmplitude(own, as));
    if (converted.ok) {
      told.push({ level, value: converted.value.value, asks: `the ${name} as set, ${format(level)}: ${asks[name]}` });
    } else {
      notHeld.push(
        `readings in ${as} are not held against the ${name} in ${writtenIn(level)}: ${converted.error.message}`,
      );
    }
  }
  return { told, notHeld };
}

/** What to ask of a reading that is at a setpoint as set or above it; of several the gravest. */
export function reachedSetpoint(value: number, { told }: SetpointsTold): string | undefined {
  const [reached] = told.filter((one) => value >= one.value * (1 - FLOAT_NOISE));
  return reached && `at or above ${reached.asks}`;
}
