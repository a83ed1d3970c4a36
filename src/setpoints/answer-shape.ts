import { requireChoice, requireGiven, requireList, type Shape, shown, VeladisError } from "../core/index";
import { type Amplitude, amplitudeOf, assumptionNames, checkedSteps, type Step } from "../reading/index";

/** A reading that was taken apart, as an answer holds it. */
export function readingShape(value: Amplitude, where: string): void {
  const expected = `${where}: a reading, taken apart`;
  if (typeof requireGiven(value, expected) !== "object") {
    throw new VeladisError("wrong-type", { expected, received: shown(value) });
  }
  amplitudeOf(value);
}

/** What an answer says that it assumed. */
export function assumedShape(value: readonly string[], where: string): void {
  for (const one of requireList(value, `${where}: a list`))
    requireChoice(one, assumptionNames, `${where}: what was assumed`);
}

/** The steps that led to an answer. */
export const historyShape: Shape = (history: readonly Step[]) => checkedSteps(history);
