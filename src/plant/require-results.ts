import { orNull, requireGiven, requireShape } from "../core/index";
import { readingShape } from "../setpoints/index";
import { day } from "./plant-shape";
import type { TakenResult } from "./taken-result";

/** The results themselves, as {@link takeResults} returns them. */
export function requireResults(results: readonly TakenResult[]): readonly TakenResult[] {
  requireGiven(results, "results as takeResults returns them", { parameter: "results" });
  const check = {
    ...{ verdict: "text", error: "number", errorPercent: "number", known: readingShape, indicated: readingShape },
  } as const;
  requireShape(results, [{ machineLine: "number", date: day, asFound: check, asLeft: orNull(check) }], "results");
  return results;
}
