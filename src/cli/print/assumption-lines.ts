import { type Assumption, assumptions } from "../../reading/index";
import { labelled } from "./labelled";

/** What was assumed, each on lines of its own: defaults and missing facts, then what lies on the way; nothing for none. */
export function assumptionLines({
  assumed,
  assumedFacts = [],
}: {
  readonly assumed: readonly Assumption[];
  readonly assumedFacts?: readonly string[];
}): string {
  return labelled("assumed", [...assumedFacts, ...assumed.map((one) => assumptions[one])]);
}
