import { attempt } from "../core/index";
import { requireDay } from "./calendar";
import type { CalendarDay } from "./plant-machine";

/** What a sheet is numbered by: its device, and the day of its round. */
export interface SheetNumber {
  readonly tag: string;
  readonly on: CalendarDay;
}

/** The number of a sheet: `LU-01-2026-12-01`. */
export function sheetNumber({ tag, on }: SheetNumber): string {
  return `${tag}-${on}`;
}

/** What a number stands for; undefined for what is no number of a sheet. */
export function sheetOfNumber(number: string): SheetNumber | undefined {
  const [, tag, on] = /^(.+)-(\d{4}-\d\d-\d\d)$/s.exec(number.trim()) ?? [];
  if (tag === undefined || on === undefined) return undefined;
  return attempt(() => requireDay(on, "the day of a sheet")).ok ? { tag, on } : undefined;
}
