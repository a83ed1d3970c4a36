import type { OptionRows } from "./option-row";
import { confirmed, fileOptions } from "./shared-options";

const { "file-units": _, ...written } = fileOptions;

/** How a plant's list is written, for every command that reads one. */
export const plantFileOptions = {
  ...written,
  dates: {
    argument: "<order>",
    help: "the order of day and month in dates such as 31.03.2026",
    example: "day-first",
    values: ["day-first", "month-first"],
    otherwise: "dates have the year first, as 2026-03-31; others are refused",
  },
  worksheet: {
    argument: "<name>",
    help: "of a workbook (.xlsx, by the package read-excel-file beside veladis) the sheet with the list",
    example: "plant",
    otherwise: "the only one with cells",
  },
  own: {
    argument: "<heading>",
    help: "a column of your own whose heading is nearly one of the list's; may be given several times",
    example: "steps",
    several: true,
    otherwise: "such a heading is refused, others are kept",
  },
} as const satisfies OptionRows;

/** The tables that the rows of a list may name. */
export const plantTables = {
  scheme: {
    argument: "<file>",
    help: "a .json file with a table of limits of your own, which rows name by its id; may be given several times",
    example: "site-rule.json",
    several: true,
  },
  confirmed,
} as const satisfies OptionRows;

/** What a command on a list takes beside its options. */
export const plantTexts = {
  most: 1,
  what: "one file with the list, such as plant.csv, or - for standard input",
} as const;
