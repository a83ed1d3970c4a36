import type { SqlDialect } from "./dialects";
import { type laddersOf, mostSteps, rowsByMachine, stepsFrom } from "./ladders";
import type { LimitRow } from "./limit-columns";
import { type Cell, type CellKind, cellsAsTable } from "./rows-as-table";

/** The least of numbers; null of none. */
function least(values: readonly number[]): number | null {
  return values.length === 0 ? null : Math.min(...values);
}

/** The lowest limits of a step: of those that decide the zone, and of all. */
function limitsAt(rows: readonly LimitRow[], step: number): readonly (number | null)[] {
  const at = rows.filter((row) => row.step === step);
  const of = (some: readonly LimitRow[]): number | null => least(some.map(({ limit }) => limit as number));
  return [of(at.filter(({ decides }) => decides === "zone")), of(at)];
}

/** The rows that the library made as a query with one row a machine. */
export function ladderRows(
  rows: readonly LimitRow[],
  { ladders, numberOf }: ReturnType<typeof laddersOf>,
  dialect: SqlDialect,
): string {
  const all = stepsFrom(1, mostSteps(ladders));
  const cells = [...rowsByMachine(rows)].map(([machine, own]): readonly Cell[] => {
    const { open, assumed, refused } = own[0] as LimitRow;
    return [machine, numberOf(own), ...all.flatMap((step) => limitsAt(own, step)), open, assumed, refused];
  });
  const columns: readonly (readonly [name: string, kind: CellKind])[] = [
    ["machine", "text"],
    ["ladder", "whole"],
    ...all.flatMap((step) => [[`limit_${step}`, "real"] as const, [`least_${step}`, "real"] as const]),
    ["open_above", "whole"],
    ["all_assumed", "text"],
    ["told_refusal", "text"],
  ];
  return cellsAsTable(cells, columns, dialect);
}
