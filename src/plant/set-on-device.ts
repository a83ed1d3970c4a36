import { convertAmplitude } from "../amplitude/index";
import { attempt, FLOAT_NOISE } from "../core/index";
import { type Amplitude, format, type ReadingType, writtenValue } from "../reading/index";
import type { PlantMachine } from "./plant-machine";

/** A setpoint as the list has it, in the type of a machine's readings. */
export interface SetOnDevice {
  readonly value: number;
  /** What is said of a reading that reaches it. */
  readonly reached: string;
}

const said = {
  trip: "it should have acted: look at its delay, at a bypass and at the device",
  alarm: "somebody should have been warned",
} as const;

/** What is not told of a setpoint that cannot be held against readings, and why. */
type NotHeld = string;

/** Trip and alarm of a machine in the type of its readings, the trip first; a text for one that cannot be held against them. */
export function setOnDevice(
  machine: PlantMachine,
  as: ReadingType,
  hertz: number | undefined,
): readonly (SetOnDevice | NotHeld)[] {
  return (["trip", "alarm"] as const).flatMap((name): (SetOnDevice | NotHeld)[] => {
    const setpoint = machine[name];
    if (setpoint === undefined) return [];
    const at = hertz === undefined || setpoint.hertz !== undefined ? {} : { at: { hertz } };
    const held = attempt(() => convertAmplitude(setpoint, as, at));
    if (!held.ok) return [`the ${name} cannot be held against it: ${held.error.message}`];
    const assumed = held.value.assumed ?? [];
    const by = assumed.length === 0 ? "" : ` (assumed: ${assumed.join(", ").replaceAll("-", " ")})`;
    return [
      {
        value: writtenValue(held.value),
        reached: `it reaches the ${name} that is set, ${format(setpoint)}${by}: ${said[name]}`,
      },
    ];
  });
}

/** What is said of a reading that reaches a setpoint: of the trip, or else of the alarm. */
export function setpointReached(reading: Amplitude, setpoints: readonly SetOnDevice[]): string | undefined {
  const value = writtenValue(reading);
  return setpoints.find((one) => value >= one.value - Math.abs(one.value) * FLOAT_NOISE)?.reached;
}
