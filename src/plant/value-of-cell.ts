import { calendarDay } from "./calendar-day";
import { amountText, type CellOptions, numberOf, pointed, pointedValue, readingOf } from "./cell-readers";
import { type CellKind, type PlantColumn, plantColumns } from "./columns";

const readers: Readonly<Record<CellKind, (cell: string, options: CellOptions, what: string) => string>> = {
  text: (cell, options) => pointed(cell, options),
  choice: (cell) => cell,
  date: (cell, { dates }) => calendarDay(cell, dates),
  number(cell, options, what) {
    numberOf(cell, options, what);
    return pointedValue(cell, options);
  },
  reading(cell, options) {
    readingOf(cell, options);
    return pointedValue(cell, options);
  },
  amount: (cell, options, what) => amountText(cell, options, what, true),
};

/**
 * The text of a cell of a column of the list, with a point for decimals.
 *
 * @throws {@link VeladisError} for what is none of what the column holds
 */
export function valueOfCell(column: PlantColumn, cell: string, options: CellOptions): string {
  const { holds, says } = plantColumns[column];
  return readers[holds](cell, options, says);
}
