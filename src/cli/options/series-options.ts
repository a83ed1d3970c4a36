import type { OptionRow } from "./option-row";

/** Options of the commands that read a series of levels. */

export const skipBad = {
  help: "leave rows out in which something is no level or no time, and tell how many; over range is never left out",
} as const satisfies OptionRow;

export const times = {
  argument: "<how>",
  help: "how times are written: seconds, serial (spreadsheet dates), dates day-first or month-first (31/03/2026)",
  example: "day-first",
  values: ["seconds", "serial", "day-first", "month-first"],
  otherwise: "as the column shows; refused where it may be two",
} as const satisfies OptionRow;
