import { type Amplitude, amplitudeIn, significant, writtenIn } from "../reading/index";
import { isInPhase, partsInPhase, sharesInPhase } from "./linear-share";

/** A linear value as the amplitude beside it is written, without its unit. */
function numberBeside(value: number, amplitude: Amplitude): string {
  const { level } = amplitudeIn(writtenIn(amplitude), value);
  return level === undefined ? significant(value) : level.decibels.toFixed(1);
}

/** The most that a difference in phase may be, since what was taken off may stand at any angle to the rest. */
function mostOf(parts: readonly number[]): number | undefined {
  if (parts.length < 2 || parts.every((part) => part > 0)) return undefined;
  return parts.reduce((sum, part) => sum + Math.abs(part), 0);
}

/**
 * What an amplitude put together in phase may be else: of a difference the most; of a sum, which is the most, the root of
 * the sum of squares, which it is where its readings have nothing to do with one another, or stand at a right angle.
 */
export function phaseWords(amplitude: Amplitude): string {
  const parts = partsInPhase(amplitude);
  const most = mostOf(parts);
  if (most !== undefined) return `; up to ${numberBeside(most, amplitude)} with a phase between them`;
  // true peaks of two waves have no sum of squares
  if (parts.length < 2 || amplitude.detector === "true pk") return "";
  return `; root sum of squares ${numberBeside(Math.hypot(...parts), amplitude)}`;
}

/** A figure that was printed behind a difference and read back with it. */
const PRINTED = /up to \S+ with a phase between them/;

/** What to beware of where a verdict rests on a difference in phase, which is the least that the vibration can be. */
export function phaseCaution(amplitude: Amplitude): string | undefined {
  const most = mostOf(partsInPhase(amplitude));
  const least = "a difference in phase is the least that the vibration can be";
  if (most !== undefined) {
    const upper = `${numberBeside(most, amplitude)} ${writtenIn(amplitude)}`;
    return `${least}: it may be up to ${upper} with a phase between the readings; judge that too`;
  }
  const { history = [] } = amplitude;
  const printed = history.map(({ note }) => PRINTED.exec(note ?? "")?.[0]).find((words) => words !== undefined);
  if (printed !== undefined) return `${least}: a reading that went into it is ${printed}; judge that too`;
  const isWithin = history.some((step) => step.does === "difference" && step.assumed?.includes("in-phase"));
  const isHidden = sharesInPhase(amplitude).some(({ from }) => from.of !== undefined && !isInPhase(from));
  return isWithin && isHidden ? `${least}: one went into this reading, which may be more` : undefined;
}
