import { requireChoice } from "../core/index";
import { type Assumption, assumptionNames, assumptions } from "../reading/index";

/** The small print that says what was assumed: facts that were not given, and what conversions took for granted. */
export function assumedNotes(assumed: Iterable<Assumption>, facts: readonly string[] = []): string[] {
  const told = [...new Set(assumed)].map(
    (name) => assumptions[requireChoice(name, assumptionNames, "what was assumed")],
  );
  const all = [...facts, ...told];
  return all.length === 0 ? [] : [`Assumed: ${all.join("; ")}.`];
}
