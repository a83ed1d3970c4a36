import { VeladisError } from "../core/index";
import {
  type Amplitude,
  historyOf,
  isUncertain,
  madeOf,
  ownHistory,
  type Step,
  writtenIn,
  writtenValue,
} from "../reading/index";
import { phasesOf } from "../uncertainty/index";
import { phaseText } from "./texts";

/** Two phases this near, in degrees, are one but for the noise of their last digits. */
const NOISE = 1e-6;

/** Whether two phases are one, whole turns apart or not. */
function isOnePhase(one: number, other: number): boolean {
  const apart = Math.abs(one - other) % 360;
  return Math.min(apart, 360 - apart) <= NOISE;
}

/**
 * The amplitude of a vector, whose history says its phase: with the reading where it was given, else as a step of its own.
 *
 * @param told - phase, order and speed, as the history is to tell them
 * @param known - how well phase and frequency are known, of a reading as it was given
 * @throws {@link VeladisError} `out-of-range` for another phase than a history with an uncertainty says
 */
export function phasedAmplitude(
  amplitude: Amplitude,
  phase: number,
  told: string,
  known: Pick<Step, "phaseUncertainty" | "hertzUncertainty"> = {},
): Amplitude {
  const history = historyOf(amplitude);
  const before = phasesOf(history).at(-1);
  if (before !== undefined && isOnePhase(before, phase)) return amplitude;
  if (before !== undefined && isUncertain(history)) {
    throw new VeladisError("out-of-range", {
      expected: `the phase that a history with an uncertainty comes to, ${phaseText(((before % 360) + 360) % 360, 6)}; state another one with its own ±`,
      received: phaseText(phase, 6),
    });
  }
  const [step, ...more] = history as [Step, ...Step[]];
  const { hertz } = amplitude;
  if (more.length === 0 && step.does === "given" && before === undefined) {
    const note = step.note === undefined ? told : `${told}; ${step.note}`;
    const given = { ...step, ...(hertz !== undefined && { hertz }), phase, ...known, note };
    return Object.freeze({ ...amplitude, history: ownHistory([Object.freeze(given)]) });
  }
  const [value, type] = [writtenValue(amplitude), writtenIn(amplitude)];
  return Object.freeze({
    ...amplitude,
    ...madeOf([amplitude], { does: "scale", by: 1, value, type, phase, note: told }),
  });
}
