import { isReading } from "../../reading/index";
import { faultWord, levelCell } from "./level-cell";
import { hasTimeOfDayForm } from "./time-of-day";
import { hasDateForm } from "./written-date";

/**
 * Whether a cell says what a row does, by the readers of cells: a number in either way of writing, over range, a fault,
 * nothing at all, a date or a time of day, or a whole reading such as `4.1 mm/s rms`.
 */
export function saysValue(cell: string, decimalComma: boolean): boolean {
  const text = cell.trim();
  const level = levelCell(text, decimalComma);
  if (typeof level === "number" || level.never !== undefined || faultWord.test(text)) return true;
  return (
    hasDateForm(text) || hasTimeOfDayForm(text) || isReading(decimalComma ? text.replace(/^([+-]?\d*),/, "$1.") : text)
  );
}
