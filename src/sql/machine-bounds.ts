import { stepsFrom } from "./ladders";
import { raisedSql } from "./raised-limit";

/** What is said of a machine whose rows of limits, kept and edited in a table, contradict themselves. */
const NO_LADDER =
  "the limits of this machine in the table contradict themselves, or the query was made for other zones: each step from the first to the last zone needs its limit, above zero and above the one before";

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
    `COALESCE(told_refusal, CASE WHEN ladder IS NULL THEN '${NO_LADDER}' END) AS why_refused`,
    `FROM (${ladders}) AS ladders`,
  ].join("\n");
}
