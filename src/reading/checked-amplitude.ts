import {
  requireChoice,
  requireFinite,
  requireGiven,
  requireList,
  requireNonNegative,
  requirePositive,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { FREQUENCY_FORM } from "../frequency/index";
import type { Amplitude } from "./amplitude";
import { assumptionNames } from "./assumptions";
import { typeOf } from "./parsed-type";
import { type Step, stepNames } from "./step";

/** What a reading looks like, for messages. */
export const FORM = 'a reading such as "0.25 in/s pk at 1500 r/min"';

const STATES = ["in range", "below range", "above range"] as const;

/** One step of a history, which may start from the steps before it. */
function checkStep(step: Step, place: number): void {
  const { does, of = [], value, type, rounds = "nearest", note } = step;
  requireChoice(does, stepNames, "what a step does");
  requireFinite(value, "the value of a step");
  requireText(type, "what a step is written in");
  requireChoice(rounds, ["down", "nearest", "up"], "to which side a step rounds");
  if (note !== undefined) requireText(note, "why a step was made");
  for (const name of ["hertz", "by", "over", "plus", "crestFactor"] as const) {
    if (step[name] !== undefined) requireFinite(step[name], "a number of a step");
  }
  for (const at of requireList(of, "the steps it starts from")) {
    if (Number.isInteger(at) && at >= 0 && at < place) continue;
    throw new VeladisError("out-of-range", { expected: "a step that came before", received: shown(at) });
  }
}

/** The steps of a history themselves, if each is one. */
export function requireSteps(history: readonly Step[]): readonly Step[] {
  for (const [place, step] of requireList(history, "the steps of a reading").entries()) checkStep(step, place);
  return history;
}

/** What an amplitude carries of its way, as it may come back from JSON. */
function checkWay({ assumed, history, crestFactor, state }: Amplitude): void {
  if (crestFactor !== undefined) requirePositive(crestFactor, "a crest factor (peak over RMS) of 1 or more");
  if (state !== undefined) requireChoice(state, STATES, "the state of a loop");
  if (assumed !== undefined) {
    for (const one of requireList(assumed, "what was assumed")) requireChoice(one, assumptionNames, "what was assumed");
  }
  if (history !== undefined) requireSteps(history);
}

/**
 * A reading that was taken apart, held against the catalogues: its unit and detector may be written in any of their
 * spellings, and the quantity is the unit's own, whatever the object says.
 *
 * @throws {@link VeladisError} `wrong-type`, `negative`, `not-positive`, `not-a-number`, `not-finite`, and as
 *   {@link readingType}
 */
export function checkedAmplitude(reading: Amplitude): Amplitude {
  const { value, hertz, level, history } = reading;
  const { unit, detector, quantity, reference } = typeOf(
    requireText(reading.unit, FORM),
    requireText(reading.detector, FORM),
  );
  if (reference !== 0) throw new VeladisError("wrong-type", { expected: FORM, received: shown(reading.unit) });
  requireNonNegative(value, "an amplitude of zero or more");
  if (hertz !== undefined) requirePositive(hertz, FREQUENCY_FORM);
  if (level !== undefined) {
    requireFinite(requireGiven(level, FORM).decibels, FORM);
    requireText(level.re, FORM);
  }
  // what this library made is frozen to the last step
  if (!(history === undefined || Object.isFrozen(history)) || !Object.isFrozen(reading)) checkWay(reading);
  const same = unit === reading.unit && detector === reading.detector && quantity === reading.quantity;
  return same ? reading : { ...reading, unit, detector, quantity };
}
