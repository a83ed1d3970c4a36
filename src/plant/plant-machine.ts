import type { Device, DeviceBand, TripSettings } from "../device/index";
import type { Amplitude } from "../reading/index";
import type { OwnLimits } from "../setpoints/index";
import type { Machine } from "../severity/index";
import type { PlantColumn } from "./columns";

/** A calendar day, written `2026-03-31`. */
export type CalendarDay = string;

/** A check of the device against a known vibration, as it was recorded. */
export interface RecordedCheck {
  readonly date: CalendarDay;
  readonly known?: Amplitude;
  readonly asFound?: Amplitude;
  readonly asLeft?: Amplitude;
  /** As written: `"5 %"` or an amount. */
  readonly tolerance?: string;
  readonly by?: string;
}

/** A baseline as it was recorded. */
export interface RecordedBaseline {
  readonly level: Amplitude;
  readonly date?: CalendarDay;
  readonly count?: number;
  readonly deviation?: Amplitude;
}

/** A machine of a plant: what its row in the list says. What the row leaves empty is left out. */
export interface PlantMachine {
  readonly tag: string;
  /** Line of its row in the file; the heading is line 1. */
  readonly line: number;
  readonly description?: string;
  /** The nameplate, as `judge` takes it. */
  readonly machine: Machine;
  /** Seconds from the start until it runs steadily. */
  readonly startUp?: number;
  /** Seconds from the trip until it stands. */
  readonly coastDown?: number;
  /** The id of a table of limits. */
  readonly table?: string;
  readonly limits?: OwnLimits;
  readonly ceiling?: Amplitude;
  readonly sensor?: string;
  readonly loop?: string;
  readonly band?: Pick<DeviceBand, "lowest" | "highest">;
  readonly alarm?: Amplitude;
  readonly alarmDelay?: number;
  readonly trip?: Amplitude;
  readonly tripDelay?: number;
  /** What is known of the other settings of the trip. */
  readonly settings: Partial<Omit<TripSettings, "threshold" | "onDelay">>;
  /** How the device stores a setpoint. */
  readonly device: Device;
  readonly baseline?: RecordedBaseline;
  readonly check?: RecordedCheck;
  /** The largest error allowed, also of a device that was never checked. */
  readonly tolerance?: string;
  /** Months from one check to the next. */
  readonly interval?: number;
  /**
   * Cells of the list's columns as they stand in the file, by heading, with a point for decimals; an empty one is left out.
   * A record of changes is held against them.
   */
  readonly cells?: Readonly<Partial<Record<PlantColumn, string>>>;
  /** Cells of columns that are none of the list's, by heading. */
  readonly own: Readonly<Record<string, string>>;
}

/** A cell, or a whole row, that could not be read: no verdict is given for its machine. */
export interface RefusedRow {
  readonly line: number;
  /** Empty where the tag itself cannot be read. */
  readonly tag: string;
  /** The heading of the cell, if it is one. */
  readonly column?: string;
  readonly code: string;
  readonly message: string;
}

/** A plant: its machines, and the rows that were refused. */
export interface Plant {
  readonly machines: readonly PlantMachine[];
  readonly refused: readonly RefusedRow[];
  /** Headings that are none of the list's; their cells are kept. */
  readonly ownColumns: readonly string[];
}
