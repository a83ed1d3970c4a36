import { requireChoice } from "../core/index";
import { type Assumption, assumptionNames, assumptions } from "../reading/index";

/**
 * The small print that says what was assumed: facts that were not given, and what conversions took for granted.
 *
 * @param all - all such facts, where others stand elsewhere
 */
export function assumedNotes(
  assumed: Iterable<Assumption>,
  facts: readonly string[] = [],
  all: readonly string[] = facts,
): string[] {
  // a crest factor that nobody stated is told with its number among the facts
  const taken = all.some((one) => one.startsWith("crest factor "));
  const told = [...new Set(assumed)]
    .filter((name) => !(taken && name === "crest-factor"))
    .map((name) => assumptions[requireChoice(name, assumptionNames, "what was assumed")]);
  const words = [...facts, ...told];
  return words.length === 0 ? [] : [`Assumed: ${words.join("; ")}.`];
}
