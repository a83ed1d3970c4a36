import { frozen, requireChoice } from "../core/index";

/** How an engine writes what differs. To add one, add its row here. */
interface Dialect {
  /** The sign about a name. */
  readonly quote: '"' | "`";
  /** True where a backslash in a text, or in a name, begins a code. */
  readonly codes: "nowhere" | "texts" | "texts and names";
  /** True where `${name}` in a query is replaced by a variable, within quotes too. */
  readonly hasVariables: boolean;
  /** The types of texts, of 64-bit numbers and of whole numbers. */
  readonly text: string;
  readonly real: string;
  readonly whole: string;
  /** How a list of rows becomes a table with named columns. */
  readonly rows: "named" | "numbered" | "typed";
  /** How a column of texts gets no answer: the engine refuses it, or takes no text for a number, or the type is asked for. */
  readonly texts: "refused" | "refused behind a plus" | "type asked for";
  /** True to its column, or each cell of a type of its own, whatever the column says. */
  readonly cells: "typed by column" | "typed each";
}

/** The dialects by the engine that reads them. */
// biome-ignore format: a row of a table is a line
const dialects = /* @__PURE__ */ frozen({
  duckdb:     { quote: '"', codes: "nowhere",         hasVariables: false, text: "VARCHAR", real: "DOUBLE",           whole: "INTEGER", rows: "named",    texts: "refused behind a plus", cells: "typed by column" },
  postgresql: { quote: '"', codes: "nowhere",         hasVariables: false, text: "TEXT",    real: "DOUBLE PRECISION", whole: "INTEGER", rows: "named",    texts: "refused behind a plus", cells: "typed by column" },
  sqlite:     { quote: '"', codes: "nowhere",         hasVariables: false, text: "TEXT",    real: "REAL",             whole: "INTEGER", rows: "numbered", texts: "refused behind a plus", cells: "typed each" },
  clickhouse: { quote: '"', codes: "texts and names", hasVariables: false, text: "String",  real: "Float64",          whole: "Int32",   rows: "typed",    texts: "refused", cells: "typed by column" },
  spark:      { quote: "`", codes: "texts",           hasVariables: true,  text: "STRING",  real: "DOUBLE",           whole: "INT",     rows: "named",    texts: "type asked for", cells: "typed by column" },
  trino:      { quote: '"', codes: "nowhere",         hasVariables: false, text: "VARCHAR", real: "DOUBLE",           whole: "INTEGER", rows: "named",    texts: "refused behind a plus", cells: "typed by column" },
} as const satisfies Record<SqlDialect, Dialect>);

/** The engine that reads an expression. */
export type SqlDialect = "duckdb" | "postgresql" | "sqlite" | "clickhouse" | "spark" | "trino";

/** The engines that an expression can be written for. */
export const sqlDialects: readonly SqlDialect[] = /* @__PURE__ */ Object.freeze(
  /* @__PURE__ */ Object.keys(dialects) as SqlDialect[],
);

/** The engine told, checked at run time; DuckDB if none is. */
export function checkedDialect(dialect: SqlDialect = "duckdb"): SqlDialect {
  return requireChoice(dialect, sqlDialects, "the engine that reads the expression", { option: "dialect" });
}

/** How an engine writes what differs. */
export function dialectOf(dialect: SqlDialect): Dialect {
  return dialects[dialect];
}
