import { raisedSql } from "./raised-limit";
import { stepsFrom } from "./side-by-side";

/** What is said of a machine whose rows of limits, kept and edited in a table, contradict themselves. */
const NO_LADDER =
  "the limits of this machine in the table contradict themselves: each step from the first to the last zone needs its limit, above zero and above the one before, and the same zones in all rows";

/** The zones from one step to another as a text, and to the last; of steps that a machine lacks nothing. */
function span(from: number, to: number, isToEnd: boolean): string {
  const more = stepsFrom(from + 1, to).map((step) =>
    isToEnd ? `COALESCE(', ' || zone_${step}, '')` : `', ' || zone_${step}`,
  );
  return [`zone_${from}`, ...more, ...(isToEnd ? ["', ' || end_zone"] : [])].join(" || ");
}

/**
 * Ladders, one row a machine, as what `joinedVerdict` is joined with: bounds, and the texts of all answers. A machine that
 * is refused, or has no ladder, has neither bounds nor a last zone.
 */
export function machineBounds(ladders: string, steps: number, isLevel: boolean): string {
  const all = stepsFrom(1, steps);
  const columns = all.flatMap((step) => [
    `CASE WHEN is_ladder = 1 THEN ${raisedSql(`limit_${step}`, isLevel)} END AS bound_${step}`,
    // where something is not judged the worst zone is always possible: within no bound
    `CASE WHEN is_ladder = 1 AND open_above = 0 THEN ${raisedSql(`least_${step}`, isLevel)} END AS worst_${step}`,
    `limit_${step}`,
    `zone_${step}`,
    ...stepsFrom(step + 1, steps).map((to) => `${span(step, to, false)} AS zones_${step}_${to}`),
    `${span(step, steps, true)} AS zones_${step}_end`,
  ]);
  const limits = [...all].reverse().map((step) => `limit_${step}`);
  return [
    `SELECT machine, ${columns.join(", ")},`,
    `CASE WHEN is_ladder = 1 THEN COALESCE(${limits.join(", ")}, NULL) END AS limit_end,`,
    "CASE WHEN is_ladder = 1 THEN end_zone END AS top_zone, all_assumed,",
    `COALESCE(told_refusal, CASE WHEN is_ladder = 0 THEN '${NO_LADDER}' END) AS why_refused`,
    `FROM (${ladders}) AS ladders`,
  ].join("\n");
}
