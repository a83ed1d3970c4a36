export type { NameQuotes, SqlOperand } from "./identifier";
export { type SchemeToSqlOptions, schemeToSql } from "./scheme-to-sql";
export { type SqlFrequency, type ToSqlOptions, toSql } from "./to-sql";
