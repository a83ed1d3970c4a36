export { calendarDay, type DayOrder, monthsAfter } from "./calendar-day";
export type { CellOptions } from "./cell-readers";
export { type CellKind, type ColumnGroup, type PlantColumn, type PlantColumnEntry, plantColumns } from "./columns";
export { type RowOptions, UNSAID_SOURCE } from "./machine-of-row";
export { type PlantOptions, type PlantTable, parsePlant } from "./parse-plant";
export type { CalendarDay, Plant, PlantMachine, RecordedBaseline, RecordedCheck, RefusedRow } from "./plant-machine";
