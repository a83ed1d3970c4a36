import { VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";

/**
 * Refuses a reading that stands for the start of its loop's range: a sensor that no longer measures looks healthy.
 *
 * @throws {@link VeladisError} `sensor-fault`
 */
export function requireInRange(readings: readonly Amplitude[]): void {
  if (!readings.some(({ state }) => state === "below range")) return;
  throw new VeladisError("sensor-fault", {
    expected: "a reading within the range of its loop",
    received: "one below it, which stands for the start of the range: see that the sensor still measures",
  });
}

/** Why a reading leaves worse zones open: it was above the range of its loop. */
export function clippedBecause(readings: readonly Amplitude[]): string | undefined {
  return readings.some(({ state }) => state === "above range")
    ? "the reading is above the range of its loop, and may be more"
    : undefined;
}
