import { dialectOf, type SqlDialect } from "./dialects";
import { columnList, type LimitRow, typeName } from "./limit-columns";
import { numberLiteral, textLiteral } from "./literal";

function cell(value: string | number | null, kind: "text" | "real" | "whole", dialect: SqlDialect): string {
  if (value === null) return "NULL";
  if (kind === "whole") return String(value);
  return kind === "real" ? numberLiteral(value as number) : textLiteral(value as string, dialect, "texts of a table");
}

/** Rows of limits as a query that gives them as a table, all columns or some, with their names and types. */
export function rowsAsTable(rows: readonly LimitRow[], dialect: SqlDialect, columns = columnList): string {
  const lines = rows.map((row) => `(${columns.map(([key, [, kind]]) => cell(row[key], kind, dialect)).join(", ")})`);
  const list = lines.join(",\n");
  const form = dialectOf(dialect).rows;
  if (form === "typed") {
    const typed = columns.map(([, [name, kind]]) => `${name} Nullable(${typeName(dialect, kind)})`).join(", ");
    return `SELECT * FROM VALUES('${typed}',\n${list})`;
  }
  const inner = (name: string, i: number): string => (form === "numbered" ? `column${i + 1}` : name);
  const cast = columns.map(([, [name, kind]], i) => `CAST(${inner(name, i)} AS ${typeName(dialect, kind)}) AS ${name}`);
  const names = form === "numbered" ? "" : ` AS listed(${columns.map(([, [name]]) => name).join(", ")})`;
  return `SELECT ${cast.join(", ")}\nFROM (VALUES\n${list})${names}`;
}
