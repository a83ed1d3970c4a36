import type { SqlDialect } from "./dialects";
import type { LimitRow } from "./limit-columns";
import { numberLiteral } from "./literal";
import { type Cell, type CellKind, cellsAsTable } from "./rows-as-table";

/** The steps from one number up to another: 1, 2, 3. */
export function stepsFrom(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}

/** The least of numbers; null of none. */
function least(values: readonly number[]): number | null {
  return values.length === 0 ? null : Math.min(...values);
}

/** One row a machine of the rows that the library made: the lowest limit of each step, of those for the zone and of all. */
export function ladderRows(rows: readonly LimitRow[], steps: number, dialect: SqlDialect): string {
  const byMachine = new Map<string, LimitRow[]>();
  for (const row of rows) byMachine.set(row.machine, [...(byMachine.get(row.machine) ?? []), row]);
  const cells = [...byMachine].map(([machine, own]): readonly Cell[] => {
    const [first] = own as [LimitRow];
    const ofSteps = stepsFrom(1, steps).flatMap((step) => {
      const at = own.filter((row) => row.step === step);
      const limits = (some: readonly LimitRow[]): number | null => least(some.map(({ limit }) => limit as number));
      return [limits(at.filter(({ decides }) => decides === "zone")), limits(at), at[0]?.zone ?? null];
    });
    const { last, open, assumed, refused } = first;
    return [machine, ...ofSteps, last, open, assumed, refused, refused === null ? 1 : 0];
  });
  const columns: readonly (readonly [string, CellKind])[] = [
    ["machine", "text"],
    ...stepsFrom(1, steps).flatMap((step): (readonly [string, CellKind])[] => [
      [`limit_${step}`, "real"],
      [`least_${step}`, "real"],
      [`zone_${step}`, "text"],
    ]),
    ["end_zone", "text"],
    ["open_above", "whole"],
    ["all_assumed", "text"],
    ["told_refusal", "text"],
    ["is_ladder", "whole"],
  ];
  return cellsAsTable(cells, columns, dialect);
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

/**
 * The same of a table of limits in the database. Rows that were made for readings in another type are none. A machine
 * whose rows contradict themselves has no ladder, as after a slip in an edited table: a limit below the one before, a
 * step that is missing, a zone of two names.
 */
export function ladderQuery(
  table: string,
  { steps, types, isLevel }: { readonly steps: number; readonly types: readonly string[]; readonly isLevel: boolean },
): string {
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
  return [
    `SELECT side_by_side.*, CASE WHEN ${isLadder(steps)} THEN 1 ELSE 0 END AS is_ladder`,
    `FROM (SELECT machine, ${[...columns, ...whole].join(", ")}`,
    `FROM ${table} WHERE readings_in IN (${types.join(", ")}) GROUP BY machine) AS side_by_side`,
  ].join("\n");
}
