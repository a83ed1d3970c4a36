import { type LevelDetector, timeConstant } from "./front-end";

/**
 * How long a detector's level stays up after a short disturbance, in seconds.
 *
 * The waveform is followed sample by sample; behind its end the level decays by itself towards the running level.
 *
 * @param peak - what the shock is multiplied by
 * @param shock - the waveform of a shock
 * @param wave - the running vibration beneath it, as many samples
 * @param running - the level before and after, as the detector shows it
 * @param set - where the time begins; the running vibration lies below
 * @param hold - where the time ends, not above `set`
 */
export function timeAbove(
  peak: number,
  shock: Float64Array,
  wave: Float64Array,
  rate: number,
  detector: LevelDetector,
  running: number,
  set: number,
  hold: number,
): { reached: boolean; above: number } {
  const tau = timeConstant(detector);
  const left = Math.exp(-1 / (rate * tau));
  const rms = detector.kind === "rms";
  const floor = rms ? running * running : 0;
  const up = rms ? set * set : set;
  const down = rms ? hold * hold : hold;
  let level = rms ? floor : running;
  let since = -1;
  let longest = 0;
  let reached = false;
  for (let i = 0; i < wave.length; i++) {
    const x = peak * (shock[i] as number) + (wave[i] as number);
    level = rms ? x * x + (level - x * x) * left : Math.max(Math.abs(x), level * left);
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
    longest = Math.max(longest, (wave.length - since) / rate + Math.max(0, tail));
  }
  return { reached, above: longest };
}
