import { finiteResult } from "../core/index";
import {
  type Amplitude,
  amplitudeOf,
  historyOf,
  madeOf,
  ownHistory,
  type ReadingType,
  type Step,
  typeOf,
} from "../reading/index";
import { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";

/** A reading that says what it is: as it was given, with a note, unless it has a history of its own. */
export function notedAmplitude(reading: Amplitude, note: string): Amplitude {
  const [step, ...more] = historyOf(reading) as [Step, ...Step[]];
  if (more.length > 0 || step.does !== "given" || step.note !== undefined) return reading;
  return Object.freeze({ ...reading, history: ownHistory([Object.freeze({ ...step, note })]) });
}

/** Unit and detector of a reading, also of one that was written as a level. */
export function linearTypeOf(reading: string | Amplitude): ReadingType {
  const { unit, detector } = amplitudeOf(reading);
  return typeOf(unit, detector).type;
}

/** A reading whose value is what its unit and detector say: a level goes on as its linear value. */
export function linearAmplitude(reading: Amplitude): Amplitude {
  return reading.level === undefined ? reading : convertAmplitude(reading, linearTypeOf(reading));
}

/**
 * What a step makes of linear amplitudes of one type: its value, in unit and detector of the first, with the histories
 * of all.
 */
export function derivedAmplitude(
  of: readonly [Amplitude, ...Amplitude[]],
  value: number,
  step: Omit<Step, "of" | "value" | "type">,
): ConvertedAmplitude {
  const { unit, detector, quantity, hertz } = of[0];
  const { type } = typeOf(unit, detector);
  const way = madeOf(of, { ...step, value: finiteResult(value), type });
  return Object.freeze({ value, unit, detector, quantity, hertz, ...way }) as ConvertedAmplitude;
}

/** A linear amplitude times a number. */
export function multipliedAmplitude(of: Amplitude, by: number, note: string): ConvertedAmplitude {
  return derivedAmplitude([of], of.value * by, { does: "scale", by, note });
}

/** The least of linear amplitudes of one type: the one that governs, with what was assumed for all. */
export function leastAmplitude(of: readonly [Amplitude, ...Amplitude[]], note: string): ConvertedAmplitude {
  return derivedAmplitude(of, Math.min(...of.map(({ value }) => value)), { does: "smallest", note });
}
