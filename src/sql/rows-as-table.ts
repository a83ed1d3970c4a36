import { dialectOf, type SqlDialect } from "./dialects";
import { columnList, type LimitRow, typeName } from "./limit-columns";
import { numberLiteral, textLiteral } from "./literal";

/** What a column of a table holds. */
export type CellKind = "text" | "real" | "whole";

/** A value of a table. */
export type Cell = string | number | null;

/** A value of a table as SQL. */
export function literalOf(value: Cell, kind: CellKind, dialect: SqlDialect): string {
  if (value === null) return "NULL";
  if (kind === "whole") return String(value);
  return kind === "real" ? numberLiteral(value as number) : textLiteral(value as string, dialect, "texts of a table");
}

/** Rows of cells as a query that gives them as a table, with the names and types of its columns. */
export function cellsAsTable(
  rows: readonly (readonly Cell[])[],
  columns: readonly (readonly [name: string, kind: CellKind])[],
  dialect: SqlDialect,
): string {
  const literals = (row: readonly Cell[]): string =>
    columns.map(([, kind], i) => literalOf(row[i] as Cell, kind, dialect)).join(", ");
  const list = rows.map((row) => `(${literals(row)})`).join(",\n");
  const form = dialectOf(dialect).rows;
  if (form === "typed") {
    const typed = columns.map(([name, kind]) => `${name} Nullable(${typeName(dialect, kind)})`).join(", ");
    return `SELECT * FROM VALUES('${typed}',\n${list})`;
  }
  const inner = (name: string, i: number): string => (form === "numbered" ? `column${i + 1}` : name);
  const cast = columns.map(([name, kind], i) => `CAST(${inner(name, i)} AS ${typeName(dialect, kind)}) AS ${name}`);
  const names = form === "numbered" ? "" : ` AS listed(${columns.map(([name]) => name).join(", ")})`;
  return `SELECT ${cast.join(", ")}\nFROM (VALUES\n${list})${names}`;
}

/** Rows of limits as a query that gives them as a table. */
export function rowsAsTable(rows: readonly LimitRow[], dialect: SqlDialect): string {
  const cells = rows.map((row) => columnList.map(([key]) => row[key]));
  return cellsAsTable(
    cells,
    columnList.map(([, column]) => column),
    dialect,
  );
}
