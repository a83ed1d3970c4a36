import { largestFailing } from "./largest-failing";
import type { ShockedDevice } from "./shocked-device";
import { timeAbove } from "./time-above";
import type { UnitPulse } from "./unit-pulse";

/** Phases of the running vibration at which a shock is tried. */
const PHASES = 12;
/** The largest shock that is tried, in g: beyond what a sensor outlives. */
const LARGEST = 10_000;

/** The largest shock in g that does not outlast an on-delay, at the worst phase; null where none up to 10 000 g does. */
export function largestShock(device: ShockedDevice, pulse: UnitPulse, delay: number): number | null {
  const peak = device.rms ? device.level * Math.SQRT2 : device.level;
  const running = new Float64Array(pulse.response.length);
  const trips = (g: number) => {
    const { reached, above } = timeAbove(device, pulse, g, running);
    return reached && above >= delay;
  };
  let largest: number | null = null;
  for (let phase = 0; phase < PHASES; phase++) {
    for (let i = 0; i < running.length; i++) {
      running[i] = peak * Math.sin(2 * Math.PI * ((device.hertz * i) / pulse.rate + phase / PHASES));
    }
    // only a phase that is worse than those before is searched
    const most: number = largest ?? LARGEST;
    if (trips(most)) largest = largestFailing(trips, most);
  }
  return largest;
}
