import { inPlace, requireChoice, requireFinite, requireList, requireText, shown, VeladisError } from "../core/index";
import { assumedByStep } from "./assumed-by-step";
import { assumptionNames } from "./assumptions";
import { isOwnHistory, ownHistory } from "./own-history";
import { type Step, stepNames } from "./step";
import { checkedUncertainties } from "./uncertainty";

const NUMBERS = ["hertz", "by", "over", "plus", "crestFactor"] as const;

/** What steps of this kind start from: nothing, one step, or several. */
function requireStarts({ does, of = [], hertz }: Step, place: number): void {
  for (const at of requireList(of, "the steps it starts from", { option: "of" })) {
    if (Number.isInteger(at) && at >= 0 && at < place) continue;
    throw new VeladisError("out-of-range", { expected: "a step that came before", received: shown(at) });
  }
  const free = does === "given" || does === "condensed" || does === "overall" || does === "statistic";
  if (of.length === 0 && !free && does !== "replaced") {
    throw new VeladisError("missing-fact", {
      expected: `a step that ${shown(does)} starts from`,
      received: shown(hertz === undefined ? undefined : `${hertz} Hz alone`),
    });
  }
}

/** One step from outside, copied and frozen. */
function checkedStep(step: Step, place: number, before: readonly Step[]): Step {
  const { does, of, value, type, rounds = "nearest", note, assumed } = step;
  requireChoice(does, stepNames, "what a step does", { option: "does" });
  // a limit over a reading of zero is infinite, which JSON writes as null
  const infinite = does === "compare" && (value === null || value === Number.POSITIVE_INFINITY);
  if (!infinite) requireFinite(value, "the value of a step", { option: "value" });
  // a ratio is written in nothing
  if (type !== "") requireText(type, "what a step is written in", { option: "type" });
  requireChoice(rounds, ["down", "nearest", "up"], "to which side a step rounds", { option: "rounds" });
  if (note !== undefined) requireText(note, "why a step was made", { option: "note" });
  for (const name of NUMBERS)
    if (step[name] !== undefined) requireFinite(step[name], "a number of a step", { option: name });
  for (const one of assumed === undefined ? [] : requireList(assumed, "what a step assumed", { option: "assumed" })) {
    requireChoice(one, assumptionNames, "what a step assumed");
  }
  requireStarts(step, place);
  const told = assumedByStep(step, before);
  return Object.freeze({
    ...step,
    ...(infinite && { value: Number.POSITIVE_INFINITY }),
    ...(of !== undefined && { of: Object.freeze([...of]) }),
    ...((assumed !== undefined || told.length > 0) && { assumed: Object.freeze([...told]) }),
    ...checkedUncertainties(step),
  });
}

/**
 * The steps of a history, as it may come back from JSON: each checked and copied, so that nobody can change them later.
 * What a step cannot have done without assuming it is put back where it does not say so.
 *
 * @throws {@link VeladisError} `wrong-type`, `missing-fact`, `unknown-option`, `syntax`, `not-a-number`, `not-finite`,
 *   `out-of-range` for a step that starts from none before it, and as {@link readingType} for what a conversion goes between
 */
export function checkedSteps(history: readonly Step[]): readonly Step[] {
  if (isOwnHistory(history)) return history;
  const steps = requireList(history, "the steps of a reading", { option: "history" });
  return ownHistory(
    Array.from(steps, (step, index) => inPlace({ option: "history", index }, () => checkedStep(step, index, steps))),
  );
}
