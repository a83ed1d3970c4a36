import { dialectOf, type SqlDialect } from "./dialects";
import { type Ladder, mostSteps, stepsFrom } from "./ladders";
import { numberLiteral } from "./literal";

/** What is said of a machine whose rows, kept and edited in a table, contradict themselves, and what is wrong with them. */
const CONTRADICTION = "the limits of this machine in the table contradict themselves";
const reasons = /* @__PURE__ */ Object.freeze({
  rows: "there are fewer or more rows of it, or of those that decide its zone, than were written",
  zones: "the zones of a row were changed, or the query was made for other zones",
  limits:
    "each criterion needs a limit for each step from the first to the last zone, a number above zero and above the one before",
});

/** The numbers of a row, beside which a text or nothing is a fault. */
const numbers = ["limit_value", "step", "is_open", "rows_of_machine", "rows_that_decide"] as const;

/** The zones of a row are those of a ladder, at its step. */
function isOfLadder(ladder: Ladder): string {
  const steps = ladder.slice(1).map((above, i) => {
    return `(step = ${i + 1} AND zone_below = ${ladder[i]} AND zone_above = ${above})`;
  });
  return `last_zone = ${ladder.at(-1)} AND (${steps.join(" OR ")})`;
}

/** A row by itself is one that could have been written: its numbers are numbers, its limit is above zero, if it is no level. */
function isSound(limit: string, isLevel: boolean, dialect: SqlDialect): string {
  return [
    // SQLite reads a text by its leading digits where a number is asked for
    ...(dialectOf(dialect).cells === "typed each" ? numbers.map((one) => `typeof(${one}) IN ('real', 'integer')`) : []),
    ...(isLevel ? [] : [`${limit} > 0e0`]),
    `${limit} <= ${numberLiteral(Number.MAX_VALUE)}`,
    "decides IN ('zone', 'worst')",
    "is_open IN (0, 1)",
    "rows_of_machine > 0",
    "rows_that_decide >= 0",
  ].join(" AND ");
}

/** The limits of one criterion rise, each step once, from the first to the last of its ladder, and decide the same. */
function isWhole(ladders: readonly Ladder[], steps: number): string {
  const isLast = ladders.map((ladder, i) => `(own_ladder = ${i + 1} AND own_last = ${ladder.length - 1})`);
  const rising = stepsFrom(2, steps).map((step) => ` AND (own_last < ${step} OR own_${step} > own_${step - 1})`);
  return `own_1 IS NOT NULL${rising.join("")} AND own_rows = own_last AND own_deciding IN (0, own_rows) AND (${isLast.join(" OR ")})`;
}

/** The rows of a table as a query with one row a machine and criterion. */
function criterionQuery(
  table: string,
  { ladders, types, isLevel, dialect, steps }: LadderQueryOptions & { readonly steps: number },
): string {
  const limit = "limit_value * 1e0";
  const number = `CASE${ladders.map((one, i) => ` WHEN ${isOfLadder(one)} THEN ${i + 1}`).join("")} ELSE 0 END`;
  const columns = [
    "machine",
    ...stepsFrom(1, steps).map((step) => `MIN(CASE WHEN step = ${step} THEN ${limit} END) AS own_${step}`),
    `MIN(${number}) AS own_ladder`,
    `MAX(${number}) AS own_most`,
    "MAX(step * 1) AS own_last",
    "COUNT(*) AS own_rows",
    "COUNT(CASE WHEN decides = 'zone' THEN 1 END) AS own_deciding",
    "MIN(rows_of_machine * 1) AS told_least",
    "MAX(rows_of_machine * 1) AS told_most",
    "MIN(rows_that_decide * 1) AS told_deciding_least",
    "MAX(rows_that_decide * 1) AS told_deciding_most",
    `MAX(CASE WHEN ${isSound(limit, isLevel, dialect)} THEN 0 ELSE 1 END) AS own_fault`,
    "MAX(is_open * 1) AS own_open",
    "MIN(NULLIF(assumed, '')) AS own_assumed",
    "MIN(NULLIF(refused, '')) AS own_refusal",
  ];
  return `SELECT ${columns.join(", ")}\nFROM ${table} WHERE readings_in IN (${types.join(", ")}) GROUP BY machine, criterion`;
}

/** What {@link ladderQuery} is told besides the table. */
interface LadderQueryOptions {
  readonly ladders: readonly Ladder[];
  readonly types: readonly string[];
  readonly isLevel: boolean;
  readonly dialect: SqlDialect;
}

/**
 * A table of limits in the database as a query with one row a machine. Rows that were made for readings in another type
 * are none. A machine whose rows contradict themselves has no ladder, as after a slip in an edited table: a limit below
 * the one before, a row that is missing, a zone that the query does not know. Each criterion is looked at by itself, since
 * the lowest limits of several hide what one of them lacks; and each row says how many there are, since a criterion that
 * is missing leaves no trace.
 */
export function ladderQuery(table: string, options: LadderQueryOptions): string {
  const { ladders } = options;
  const steps = mostSteps(ladders);
  const limits = stepsFrom(1, steps).flatMap((step) => [
    `MIN(CASE WHEN own_deciding > 0 THEN own_${step} END) AS limit_${step}`,
    `MIN(own_${step}) AS least_${step}`,
  ]);
  const whole = [
    "MIN(own_ladder) AS least_ladder",
    "MAX(own_most) AS most_ladder",
    "SUM(own_rows) AS all_rows",
    "SUM(own_deciding) AS all_deciding",
    "MIN(told_least) AS least_rows",
    "MAX(told_most) AS most_rows",
    "MIN(told_deciding_least) AS least_deciding",
    "MAX(told_deciding_most) AS most_deciding",
    `MAX(CASE WHEN own_fault = 0 AND ${isWhole(ladders, steps)} THEN 0 ELSE 1 END) AS has_fault`,
    "MAX(own_open) AS open_above",
    "MIN(own_assumed) AS all_assumed",
    "MIN(own_refusal) AS any_refusal",
  ];
  const areAllThere = [
    "all_rows = least_rows",
    "all_rows = most_rows",
    "all_deciding = least_deciding",
    "all_deciding = most_deciding",
  ].join(" AND ");
  const isKnown = "least_ladder > 0 AND least_ladder = most_ladder";
  const reason = [
    "WHEN any_refusal IS NOT NULL THEN any_refusal",
    `WHEN ${areAllThere} AND ${isKnown} AND has_fault = 0 AND limit_1 IS NOT NULL THEN NULL`,
    `WHEN ${areAllThere} AND ${isKnown} THEN '${CONTRADICTION}: ${reasons.limits}'`,
    `WHEN ${areAllThere} THEN '${CONTRADICTION}: ${reasons.zones}'`,
    `ELSE '${CONTRADICTION}: ${reasons.rows}'`,
  ].join(" ");
  return [
    "SELECT looked_at.*, CASE WHEN told_refusal IS NULL THEN least_ladder END AS ladder",
    `FROM (SELECT side_by_side.*, CASE ${reason} END AS told_refusal`,
    `FROM (SELECT machine, ${[...limits, ...whole].join(", ")}`,
    `FROM (${criterionQuery(table, { ...options, steps })}) AS criteria GROUP BY machine) AS side_by_side) AS looked_at`,
  ].join("\n");
}
