import type { ShockedDevice } from "./shocked-device";
import type { UnitPulse } from "./unit-pulse";

/**
 * How long a detector's level stays up after a short disturbance, in seconds, and how high it comes.
 *
 * The waveform is followed sample by sample; behind its end the level decays by itself towards the running level.
 *
 * @param g - the peak of the shock that a response to 1 g stands for
 * @param running - the running vibration beneath it, as many samples
 */
export function timeAbove(
  { rms, tau, level: before, set, hold }: ShockedDevice,
  { rate, response }: UnitPulse,
  g: number,
  running: Float64Array,
): { reached: boolean; above: number; highest: number } {
  const left = Math.exp(-1 / (rate * tau));
  const floor = rms ? before * before : 0;
  const up = rms ? set * set : set;
  const down = rms ? hold * hold : hold;
  let level = rms ? floor : before;
  let since = -1;
  let longest = 0;
  let reached = false;
  let highest = level;
  for (let i = 0; i < running.length; i++) {
    const x = g * (response[i] as number) + (running[i] as number);
    level = rms ? x * x + (level - x * x) * left : Math.max(Math.abs(x), level * left);
    if (level > highest) highest = level;
    if (level >= up && since < 0) {
      since = i;
      reached = true;
    } else if (level < down && since >= 0) {
      longest = Math.max(longest, (i - since) / rate);
      since = -1;
    }
  }
  if (since >= 0) {
    const tail = tau * Math.log((level - floor) / (down - floor));
    longest = Math.max(longest, (running.length - since) / rate + Math.max(0, tail));
  }
  return { reached, above: longest, highest: rms ? Math.sqrt(highest) : highest };
}
