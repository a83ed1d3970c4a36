import type { SqlDialect } from "./dialects";
import type { LimitRow } from "./limit-columns";
import { literalOf } from "./rows-as-table";

/** The zones of a machine, best first, as texts of SQL. */
export type Ladder = readonly string[];

/** The steps from one number up to another: 1, 2, 3. */
export function stepsFrom(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}

/** The rows of each machine. */
export function rowsByMachine(rows: readonly LimitRow[]): ReadonlyMap<string, readonly LimitRow[]> {
  const found = new Map<string, LimitRow[]>();
  for (const row of rows) {
    const own = found.get(row.machine);
    if (own === undefined) found.set(row.machine, [row]);
    else own.push(row);
  }
  return found;
}

/** The zones of a machine by its rows, best first; none of one that is refused. */
function zonesOf(rows: readonly LimitRow[]): readonly string[] {
  const below = new Map(rows.flatMap(({ step, zone }) => (step === null ? [] : [[step, zone as string] as const])));
  const last = rows[0]?.last;
  if (last === null || last === undefined) return [];
  return [...stepsFrom(1, below.size).map((step) => below.get(step) as string), last];
}

/** The name of a list of zones, by which lists are told apart. */
function nameOf(zones: readonly string[]): string {
  return JSON.stringify(zones);
}

/** The most steps of a ladder: one less than its zones. */
export function mostSteps(ladders: readonly Ladder[]): number {
  return Math.max(...ladders.map(({ length }) => length - 1));
}

/**
 * The different ladders of machines, which the query writes out: few for a whole plant, so that a row takes its zone from
 * the query, not from the table. The numbers of ladders are from 1, in order.
 */
export function laddersOf(rows: readonly LimitRow[], dialect: SqlDialect) {
  const names = new Map<string, readonly string[]>();
  for (const own of rowsByMachine(rows).values()) {
    const zones = zonesOf(own);
    if (zones.length > 0) names.set(nameOf(zones), zones);
  }
  const order = [...names.keys()];
  return {
    /** At least one, so that each expression has a branch, if every machine is refused. */
    ladders: (order.length === 0 ? [["none", "none"]] : [...names.values()]).map((zones) =>
      zones.map((zone) => literalOf(zone, "text", dialect)),
    ) as readonly Ladder[],
    /** The number of the ladder of a machine by its rows; null of one that is refused. */
    numberOf: (own: readonly LimitRow[]): number | null => order.indexOf(nameOf(zonesOf(own))) + 1 || null,
  };
}
