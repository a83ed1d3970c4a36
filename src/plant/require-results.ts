import { orNull, requireGiven, requireShape, type Shape } from "../core/index";
import { readingShape } from "../setpoints/index";
import { day } from "./plant-shape";
import type { TakenResult } from "./taken-result";

/** The results themselves, as {@link takeResults} returns them. */
export function requireResults(results: readonly TakenResult[]): readonly TakenResult[] {
  requireGiven(results, "results as takeResults returns them", { parameter: "results" });
  const check: Shape = {
    verdict: "text",
    error: "number",
    errorPercent: "number",
    known: readingShape,
    indicated: readingShape,
  };
  requireShape(results, [{ machineLine: "number", date: day, asFound: check, asLeft: orNull(check) }], "results");
  return results;
}
