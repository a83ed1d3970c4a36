export { calendarDay, type DayOrder, monthsAfter } from "./calendar-day";
export type { CellOptions } from "./cell-readers";
export { type CellKind, type ColumnGroup, type PlantColumn, type PlantColumnEntry, plantColumns } from "./columns";
export { type RowOptions, UNSAID_SOURCE } from "./machine-of-row";
export { type PlantOptions, type PlantTable, parsePlant } from "./parse-plant";
export type { CalendarDay, Plant, PlantMachine, RecordedBaseline, RecordedCheck, RefusedRow } from "./plant-machine";
export { type JudgeRouteOptions, judgeRoute } from "./judge-route";
export { type LimitsChosenBy, limitsOfRow, machineVerdict } from "./machine-verdict";
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
export {
  type ScheduledMachine,
  type ScheduleOptions,
  type SetpointSchedule,
  scheduleSetpoints,
  type UnscheduledMachine,
} from "./schedule-setpoints";
export type { ScheduledSetting, SetpointChange } from "./setpoint-change";
