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
  type AuditCode,
  type AuditOptions,
  type AuditRule,
  auditChanges,
  auditPlant,
  auditRules,
  type BenchDevice,
  type BenchRound,
  type BenchSetting,
  benchRound,
  type CalendarDay,
  type CellKind,
  type CellOptions,
  type ChangeAuditOptions,
  type ChangeColumn,
  type ChangedSetting,
  type ChangeFinding,
  type ChangeRecord,
  type ChangeRule,
  type ChangeRuleEntry,
  type ColumnGroup,
  changeCautions,
  changeColumns,
  changeRules,
  changeTitles,
  type DayOrder,
  type DoubtfulPeriod,
  type DueCheck,
  type DueOptions,
  type DueState,
  type DueStateEntry,
  doubtfulPeriods,
  dueChecks,
  dueStates,
  type FindingSeverity,
  findingSeverities,
  type LeftOut,
  type LimitsTaken,
  type OpenResult,
  type Plant,
  type PlantAudit,
  type PlantChange,
  type PlantColumn,
  type PlantColumnEntry,
  type PlantFinding,
  type PlantMachine,
  type PlantOptions,
  type PlantTable,
  parseChanges,
  parsePlant,
  plantColumns,
  type RecordedBaseline,
  type RecordedCheck,
  type RefusedRow,
  type ResultColumn,
  type ResultOptions,
  type RoundOptions,
  type RowOptions,
  type RuleNotChecked,
  resultColumns,
  resultTitles,
  type TakenResult,
  type TakenResults,
  takeResults,
} from "../plant/index";
