import { stepsFrom } from "./ladders";
import { raisedSql } from "./raised-limit";

/**
 * Ladders, one row a machine, as what `joinedVerdict` is joined with: the number of the ladder, and its bounds. A machine
 * that is refused, or has no ladder, has none of them.
 */
export function machineBounds(ladders: string, steps: number, isLevel: boolean): string {
  const all = stepsFrom(1, steps);
  const columns = all.flatMap((step) => [
    `CASE WHEN ladder > 0 THEN ${raisedSql(`limit_${step}`, isLevel)} END AS bound_${step}`,
    // where something is not judged the worst zone is always possible: within no bound
    `CASE WHEN ladder > 0 AND open_above = 0 THEN ${raisedSql(`least_${step}`, isLevel)} END AS worst_${step}`,
    `limit_${step}`,
  ]);
  const limits = [...all].reverse().map((step) => `limit_${step}`);
  return [
    `SELECT machine, ladder, ${columns.join(", ")},`,
    `CASE WHEN ladder > 0 THEN COALESCE(${limits.join(", ")}, NULL) END AS limit_end, all_assumed,`,
    "told_refusal AS why_refused",
    `FROM (${ladders}) AS ladders`,
  ].join("\n");
}
