import { DuckDBInstance, type DuckDBValue } from "@duckdb/node-api";

const instance = await DuckDBInstance.create(":memory:");
const connection = await instance.connect();

/** The columns of a query, a portion at a time. */
export async function* portions(sql: string): AsyncGenerator<DuckDBValue[][]> {
  const result = await connection.stream(sql);
  for (let chunk = await result.fetchChunk(); chunk !== null && chunk.rowCount > 0; chunk = await result.fetchChunk()) {
    yield chunk.getColumns();
  }
}

/** What an expression gives for each value of its operand `x`, which may be NULL. */
export async function answersTo(
  sql: string,
  values: readonly (number | null)[],
  kind: "DOUBLE" | "FLOAT" = "DOUBLE",
): Promise<DuckDBValue[]> {
  const rows = values.map((value, i) => `(${i}, ${value === null ? "NULL" : `'${value}'::${kind}`})`).join(", ");
  const query = `SELECT ${sql} FROM (VALUES ${rows}) AS t(i, x) ORDER BY i`;
  return (await connection.runAndReadAll(query)).getRows().map(([answer]) => answer as DuckDBValue);
}

/** The first value of the first row of a query. */
export async function single(sql: string): Promise<DuckDBValue> {
  return (await connection.runAndReadAll(sql)).getRows()[0]?.[0] as DuckDBValue;
}

/** All rows of the last of several statements. */
export async function allRows(sql: string): Promise<DuckDBValue[][]> {
  return (await connection.runAndReadAll(sql)).getRows();
}
