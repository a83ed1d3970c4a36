import { type Amplitude, amplitudeIn, significant, writtenIn } from "../reading/index";
import { partsInPhase } from "./linear-share";

/** A linear value as the amplitude beside it is written, without its unit. */
function numberBeside(value: number, amplitude: Amplitude): string {
  const { level } = amplitudeIn(writtenIn(amplitude), value);
  return level === undefined ? significant(value) : level.decibels.toFixed(1);
}

/**
 * What an amplitude put together in phase may be else: of a difference the most, since what was taken off may stand at
 * any angle to the rest; of a sum, which is the most, the root of the sum of squares, which it is where its readings have
 * nothing to do with one another, or stand at a right angle.
 */
export function phaseWords(amplitude: Amplitude): string {
  const parts = partsInPhase(amplitude);
  if (parts.length < 2) return "";
  if (parts.some((part) => part < 0)) {
    const most = parts.reduce((sum, part) => sum + Math.abs(part), 0);
    return `; up to ${numberBeside(most, amplitude)} with a phase between them`;
  }
  // true peaks of two waves have no sum of squares
  if (amplitude.detector === "true pk") return "";
  return `; root sum of squares ${numberBeside(Math.hypot(...parts), amplitude)}`;
}
