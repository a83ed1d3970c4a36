import { type Ladder, stepsFrom } from "./ladders";
import { numberLiteral } from "./literal";

/** The zones of a row are those of a ladder, at its step. */
function isOfLadder(ladder: Ladder): string {
  const steps = ladder.slice(1).map((above, i) => {
    return `(step = ${i + 1} AND zone_below = ${ladder[i]} AND zone_above = ${above})`;
  });
  return `last_zone = ${ladder.at(-1)} AND (${steps.join(" OR ")})`;
}

/** The limits of a machine rise, without a gap, from the first step to the last of its ladder. */
function isWhole(ladders: readonly Ladder[], steps: number): string {
  const isLast = ladders.map((ladder, i) => `(least_ladder = ${i + 1} AND last_step = ${ladder.length - 1})`);
  const rising = stepsFrom(2, steps).map(
    (step) => ` AND (last_step < ${step} OR (limit_${step} > limit_${step - 1} AND least_${step} > least_${step - 1}))`,
  );
  return `limit_1 IS NOT NULL${rising.join("")} AND (${isLast.join(" OR ")})`;
}

/**
 * A table of limits in the database as a query with one row a machine. Rows that were made for readings in another type
 * are none. A machine whose rows contradict themselves has no ladder, as after a slip in an edited table: a limit below
 * the one before, a step that is missing, a zone that the query does not know.
 */
export function ladderQuery(
  table: string,
  {
    ladders,
    types,
    isLevel,
  }: { readonly ladders: readonly Ladder[]; readonly types: readonly string[]; readonly isLevel: boolean },
): string {
  const steps = Math.max(...ladders.map(({ length }) => length - 1));
  // a factor makes a number of a text in SQLite, where a text is above all numbers; others refuse it
  const limit = "limit_value * 1e0";
  const lowest = isLevel ? "" : `${limit} > 0e0 AND `;
  const isSound = `${lowest}${limit} <= ${numberLiteral(Number.MAX_VALUE)} AND decides IN ('zone', 'worst') AND is_open IN (0, 1)`;
  const number = `CASE${ladders.map((one, i) => ` WHEN ${isOfLadder(one)} THEN ${i + 1}`).join("")} ELSE 0 END`;
  const limits = stepsFrom(1, steps).flatMap((step) => [
    `MIN(CASE WHEN step = ${step} AND decides = 'zone' THEN ${limit} END) AS limit_${step}`,
    `MIN(CASE WHEN step = ${step} THEN ${limit} END) AS least_${step}`,
  ]);
  const whole = [
    `MIN(${number}) AS least_ladder`,
    `MAX(${number}) AS most_ladder`,
    "MAX(step * 1) AS last_step",
    `MAX(CASE WHEN ${isSound} THEN 0 ELSE 1 END) AS has_fault`,
    "MAX(is_open * 1) AS open_above",
    "MIN(NULLIF(assumed, '')) AS all_assumed",
    "MIN(NULLIF(refused, '')) AS told_refusal",
  ];
  const isLadder = `told_refusal IS NULL AND has_fault = 0 AND least_ladder = most_ladder AND ${isWhole(ladders, steps)}`;
  return [
    `SELECT side_by_side.*, CASE WHEN ${isLadder} THEN least_ladder END AS ladder`,
    `FROM (SELECT machine, ${[...limits, ...whole].join(", ")}`,
    `FROM ${table} WHERE readings_in IN (${types.join(", ")}) GROUP BY machine) AS side_by_side`,
  ].join("\n");
}
