export {
  type AuditOptions,
  auditPlant,
  type LimitsTaken,
  type PlantAudit,
  type PlantFinding,
  type RuleNotChecked,
} from "./audit/audit-plant";
export { type FindingSeverity, findingSeverities } from "./audit/audit-rule";
export { type AuditCode, auditRules } from "./audit/audit-rules";
export type { DayOrder } from "./calendar-day";
export type { CellOptions } from "./cell-readers";
export { type CellKind, type ColumnGroup, type PlantColumn, type PlantColumnEntry, plantColumns } from "./columns";
export type { RowOptions } from "./machine-of-row";
export { type PlantOptions, type PlantTable, parsePlant } from "./parse-plant";
export type { CalendarDay, Plant, PlantMachine, RecordedBaseline, RecordedCheck, RefusedRow } from "./plant-machine";
