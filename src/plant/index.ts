export { type CellKind, type ColumnGroup, type PlantColumn, type PlantColumnEntry, plantColumns } from "./columns";
export type { CalendarDay, Plant, PlantMachine, RecordedBaseline, RecordedCheck, RefusedRow } from "./plant-machine";
