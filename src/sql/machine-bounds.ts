import { numberLiteral, textLiteral } from "./literal";
import { raisedSql } from "./raised-limit";

/** The steps from one number up to another: 1, 2, 3. */
export function stepsFrom(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}

/** What is said of a machine whose rows of limits, kept and edited in a table, contradict themselves. */
const NO_LADDER =
  "the limits of this machine in the table contradict themselves: each step from the first to the last zone needs its limit, above zero and above the one before, and the same zones in all rows";

/** The limits of each machine side by side: those that decide the zone, the least of all, and the zones below and above. */
function sideBySide(table: string, steps: number, types: readonly string[], isLevel: boolean): string {
  const limit = "limit_value * 1e0";
  const at = (what: string, step: number, of = "MIN"): string => `${of}(CASE WHEN step = ${step} THEN ${what} END)`;
  const lowest = isLevel ? "" : ` AND ${limit} > 0e0`;
  const isSound = [
    `step BETWEEN 1 AND ${steps}${lowest} AND ${limit} <= ${numberLiteral(Number.MAX_VALUE)}`,
    "decides IN ('zone', 'worst') AND is_open IN (0, 1) AND zone_below <> '' AND zone_above <> ''",
  ].join(" AND ");
  const columns = stepsFrom(1, steps).flatMap((step) => [
    `MIN(CASE WHEN step = ${step} AND decides = 'zone' THEN ${limit} END) AS limit_${step}`,
    `${at(limit, step)} AS least_${step}`,
    `${at("zone_below", step)} AS zone_${step}`,
    `${at("zone_below", step, "MAX")} AS same_${step}`,
    `${at("zone_above", step, "MAX")} AS next_${step}`,
  ]);
  const whole = [
    "MIN(last_zone) AS end_zone",
    "MAX(last_zone) AS same_end",
    "MAX(is_open * 1) AS open_above",
    "MAX(step * 1) AS last_step",
    `MAX(CASE WHEN ${isSound} THEN 0 ELSE 1 END) AS has_fault`,
    "MIN(NULLIF(assumed, '')) AS all_assumed",
    "MIN(NULLIF(refused, '')) AS told_refusal",
  ];
  return `SELECT machine, ${[...columns, ...whole].join(", ")}\nFROM ${table} WHERE readings_in IN (${types.join(", ")}) GROUP BY machine`;
}

/** The condition that the limits of a machine make one ladder: rising, without a gap, up to the last zone. */
function isLadder(steps: number): string {
  const ofStep = (step: number): string => {
    const next = step === steps ? "end_zone" : `CASE WHEN last_step > ${step} THEN zone_${step + 1} ELSE end_zone END`;
    const rising =
      step === 1 ? "limit_1 IS NOT NULL" : `limit_${step} > limit_${step - 1} AND least_${step} > least_${step - 1}`;
    const holds = `${rising} AND zone_${step} = same_${step} AND next_${step} = ${next}`;
    return step === 1 ? holds : `(last_step < ${step} OR (${holds}))`;
  };
  return `told_refusal IS NULL AND has_fault = 0 AND end_zone = same_end AND ${stepsFrom(1, steps).map(ofStep).join(" AND ")}`;
}

/** The zones from one step to another as a text, and to the last; of steps that a machine lacks nothing. */
function span(from: number, to: number, isToEnd: boolean): string {
  const more = stepsFrom(from + 1, to).map((step) =>
    isToEnd ? `COALESCE(', ' || zone_${step}, '')` : `', ' || zone_${step}`,
  );
  return [`zone_${from}`, ...more, ...(isToEnd ? ["', ' || end_zone"] : [])].join(" || ");
}

/**
 * A table of limits as one row a machine, for a ladder of so many limits: what `joinedVerdict` is joined with. Rows that
 * were made for readings in another type are none. A machine that is refused has no bounds, and neither has one whose
 * rows contradict themselves, as after a slip in an edited table: a limit below the one before, a step that is missing,
 * a zone of two names.
 */
export function machineBounds(
  table: string,
  { steps, types, isLevel }: { readonly steps: number; readonly types: readonly string[]; readonly isLevel: boolean },
): string {
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
  const told = textLiteral(NO_LADDER, "duckdb");
  return [
    `SELECT machine, ${columns.join(", ")},`,
    `CASE WHEN is_ladder = 1 THEN COALESCE(${[...all].reverse().map((step) => `limit_${step}`)}, NULL) END AS limit_end,`,
    "CASE WHEN is_ladder = 1 THEN end_zone END AS top_zone, all_assumed,",
    `COALESCE(told_refusal, CASE WHEN is_ladder = 0 THEN ${told} END) AS why_refused`,
    `FROM (SELECT side_by_side.*, CASE WHEN ${isLadder(steps)} THEN 1 ELSE 0 END AS is_ladder`,
    `FROM (${sideBySide(table, steps, types, isLevel)}) AS side_by_side) AS ladders`,
  ].join("\n");
}
