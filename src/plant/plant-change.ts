import type { PlantColumn } from "./columns";
import type { CalendarDay, RefusedRow } from "./plant-machine";

/** What was changed: a cell of the list, or protection that was bypassed. */
export type ChangedSetting = Exclude<PlantColumn, "tag"> | "bypass";

/** An entry of a record of changes. What it leaves empty is left out. */
export interface PlantChange {
  /** Line of its row in the file; the heading is line 1. */
  readonly line: number;
  readonly date: CalendarDay;
  readonly tag: string;
  readonly setting: ChangedSetting;
  /** The cell before; empty where nothing stood there. */
  readonly old: string;
  readonly new: string;
  readonly reason: string;
  readonly who: string;
  readonly approvedBy?: string;
  /** The last day of a bypass, or of a change for a time. */
  readonly until?: CalendarDay;
  /** The day on which the old state was restored. */
  readonly putBack?: CalendarDay;
}

/** A record of changes as read: its entries, and the rows that were refused. */
export interface ChangeRecord {
  readonly changes: readonly PlantChange[];
  readonly refused: readonly RefusedRow[];
}
