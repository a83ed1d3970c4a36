import { requireGiven, requireShape } from "../core/index";
import type { DueCheck } from "./due-checks";

/** The checks themselves, as {@link dueChecks} returns them. */
export function requireDue(due: readonly DueCheck[]): readonly DueCheck[] {
  requireGiven(due, "checks as dueChecks returns them", { parameter: "due" });
  requireShape(due, [{ line: "number", isDue: "truth" }], "due");
  return due;
}
