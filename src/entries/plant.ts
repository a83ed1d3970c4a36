/**
 * A plant's list: every machine with its limits, its switch and its proof, as data without a file system.
 *
 * @example
 * ```ts
 * import { parsePlant } from "veladis/plant";
 *
 * const heading = ["tag", "kind", "power", "speed", "alarm", "trip"];
 * const rows = [["LU-01", "fan", "132 kW", "1485 r/min", "5.6 mm/s rms", "9 mm/s rms"]];
 * parsePlant({ heading, rows }).machines[0]?.machine;
 * // => { power: "132 kW", type: "fan", speed: { hertz: 24.75 } }
 * ```
 *
 * @module veladis/plant
 */
export { VeladisError } from "../core/index";
export {
  type AllowedChange,
  type BaselineInType,
  type AuditCode,
  type AuditOptions,
  type AuditRule,
  auditPlant,
  auditRules,
  type CalendarDay,
  type CellKind,
  type CellOptions,
  type ColumnGroup,
  type DayOrder,
  type JudgedRoute,
  type JudgeRouteOptions,
  judgeRoute,
  type LimitsChosenBy,
  machineVerdict,
  type FindingSeverity,
  findingSeverities,
  type LimitsTaken,
  type Plant,
  type PlantAudit,
  type PlantColumn,
  type PlantColumnEntry,
  type PlantFinding,
  type PlantMachine,
  type PlantOptions,
  type PlantTable,
  parsePlant,
  plantColumns,
  type RecordedBaseline,
  type RecordedCheck,
  type RefusedReading,
  type RefusedRow,
  type RouteBasis,
  type RouteChange,
  type RouteLimit,
  type RouteReading,
  type RouteVerdict,
  type RowOptions,
  type ScheduledMachine,
  type ScheduledSetting,
  type ScheduleOptions,
  type SetpointChange,
  type SetpointSchedule,
  scheduleSetpoints,
  type UnscheduledMachine,
  type RuleNotChecked,
} from "../plant/index";
