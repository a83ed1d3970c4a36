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
export { auditChanges, type ChangeAuditOptions } from "./audit-changes";
export {
  type BenchDevice,
  type BenchRound,
  type BenchSetting,
  benchRound,
  type LeftOut,
  type RoundOptions,
} from "./bench-round";
export { daysBetween } from "./calendar";
export { calendarDay, type DayOrder } from "./calendar-day";
export type { CellOptions } from "./cell-readers";
export { changeCautions } from "./change-cautions";
export { changeChain, changesBySetting } from "./change-chain";
export { type ChangeColumn, changeColumns, changeTitles } from "./change-columns";
export type { ChangeFinding } from "./change-finding";
export { type ChangeRule, type ChangeRuleEntry, changeRules, LONG_BYPASS_DAYS } from "./change-rules";
export { type CellKind, type ColumnGroup, type PlantColumn, type PlantColumnEntry, plantColumns } from "./columns";
export { rowsByTag } from "./compared-tag";
export { type DoubtfulPeriod, doubtfulPeriods } from "./doubtful-periods";
export { type DueCheck, type DueOptions, dueChecks } from "./due-checks";
export { type DueState, type DueStateEntry, dueStates } from "./due-states";
export { pointKey } from "./earlier-route";
export { STATED_BY_LIST } from "./fitted-proposal";
export { type JudgeRouteOptions, judgeRoute } from "./judge-route";
export { levelText } from "./level-text";
export type { RowOptions } from "./machine-of-row";
export { type LimitsChosenBy, limitsOfRow, machineVerdict } from "./machine-verdict";
export { type ChangeCells, changedSettings, changeOfCells, parseChanges } from "./parse-changes";
export { type PlantOptions, type PlantTable, parsePlant } from "./parse-plant";
export type { ChangedSetting, ChangeRecord, PlantChange } from "./plant-change";
export { plantHeadings } from "./plant-headings";
export type { CalendarDay, Plant, PlantMachine, RecordedBaseline, RecordedCheck, RefusedRow } from "./plant-machine";
export { refusedReading } from "./refused-reading";
export { type ResultColumn, resultColumns, resultTitles } from "./result-columns";
export type { RouteReading } from "./route-reading";
export type {
  AllowedChange,
  BaselineInType,
  JudgedRoute,
  RefusedReading,
  RouteBasis,
  RouteChange,
  RouteLimit,
  RouteVerdict,
} from "./route-verdict";
export { isSameCell } from "./same-cell";
export {
  type ScheduledMachine,
  type ScheduleOptions,
  type SetpointSchedule,
  scheduleSetpoints,
  type UnscheduledMachine,
} from "./schedule-setpoints";
export type { ScheduledSetting, SetpointChange } from "./setpoint-change";
export { type OpenResult, type TakenResults, takeResults } from "./take-results";
export type { ResultOptions, TakenResult } from "./taken-result";
