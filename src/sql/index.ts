export type { NameQuotes, SqlOperand } from "./identifier";
export { type MachineToSqlOptions, machineToSql } from "./machine-to-sql";
export { type SchemeToSqlOptions, schemeToSql } from "./scheme-to-sql";
export { type SqlFrequency, type ToSqlOptions, toSql } from "./to-sql";
export type { ZoneAnswer } from "./zone-case";
