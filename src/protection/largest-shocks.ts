import { largestBelow } from "./largest-below";
import type { ShockedDevice } from "./shocked-device";
import { timeAbove } from "./time-above";
import type { UnitPulse } from "./unit-pulse";

/** Phases of the running vibration at which a shock is tried. */
const PHASES = 12;
/** The largest shock that is tried, in g: beyond what a sensor outlives. */
const LARGEST = 10_000;

/** The largest shock in g that does not outlast each on-delay, at the worst phase; null where none up to 10 000 g does. */
export function largestShocks(
  device: ShockedDevice,
  { rate, response }: UnitPulse,
  delays: readonly number[],
): readonly (number | null)[] {
  const { detector, hertz, level, set, hold } = device;
  const peak = detector.kind === "rms" ? level * Math.SQRT2 : level;
  const running = new Float64Array(response.length);
  const largest = delays.map(() => LARGEST);
  const found = delays.map(() => false);
  for (let phase = 0; phase < PHASES; phase++) {
    for (let i = 0; i < running.length; i++) {
      running[i] = peak * Math.sin(2 * Math.PI * ((hertz * i) / rate + phase / PHASES));
    }
    delays.forEach((delay, k) => {
      const trips = (g: number) => {
        const { reached, above } = timeAbove(g, response, running, rate, detector, level, set, hold);
        return reached && above >= delay;
      };
      // only a phase that is worse than those before is searched
      if (!trips(largest[k] as number)) return;
      found[k] = true;
      largest[k] = largestBelow(trips, largest[k] as number);
    });
  }
  return largest.map((g, k) => (found[k] ? g : null));
}
