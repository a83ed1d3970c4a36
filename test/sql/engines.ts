import { PGlite } from "@electric-sql/pglite";
import { Session } from "chdb";
import { allRows, single } from "./duckdb";
import { type Engine, sqlite } from "./sqlite";

export { type Engine, sqlite };

const server = new PGlite();
// it takes its seconds to start: before any test runs
await server.waitReady;

/** PostgreSQL, as WebAssembly. */
export const postgres: Engine = async (sql) => {
  const results = await server.exec(sql, { rowMode: "array" });
  return (results.at(-1)?.rows ?? []) as unknown as unknown[][];
};

/** DuckDB. */
export const duckdb: Engine = async (sql) => [[await single(sql)]];

/** DuckDB, all rows; statements with semicolons between. */
export const duckdbRows: Engine = allRows;

const clicks = new Session();

/** ClickHouse, in process; statements with semicolons and line ends between. */
export const clickhouse: Engine = async (sql) => {
  let last = "";
  for (const one of sql.split(";\n")) last = clicks.query(one, "JSONCompactEachRow");
  return last
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line) as unknown[]);
};
