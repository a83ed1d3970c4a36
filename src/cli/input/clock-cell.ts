import { plainNumeral } from "../../core/index";
import { lastDigit } from "./even-times";
import { hasTimeOfDayForm, writtenTimeOfDay } from "./time-of-day";
import { writtenDate } from "./written-date";

export const SECONDS_A_DAY = 86_400;

/** What a cell says that may be a time: a bare number, or seconds of a date or of a day. */
interface ClockCell {
  readonly value: number;
  readonly isDate: boolean;
  readonly isOfDay: boolean;
  /** The last digit that it is written to; 0 where that is not known. */
  readonly digit: number;
}

/** The last digit that a date or a time of day is written to, in seconds. */
function clockDigit(written: string): number {
  const clock = /\d:\d\d(?<seconds>:\d\d(?:[.,](?<part>\d+))?)?/.exec(written)?.groups;
  if (clock === undefined) return SECONDS_A_DAY;
  if (clock.seconds === undefined) return 60;
  return 10 ** -(clock.part?.length ?? 0);
}

/** A cell that says none. */
export const NO_TIME: ClockCell = { value: Number.NaN, isDate: false, isOfDay: false, digit: 0 };

/** The time that a cell may say. */
export function clockCell(cell: string, decimalComma: boolean): ClockCell | undefined {
  const text = cell.trim();
  const pointed = decimalComma ? text.replace(",", ".") : text;
  if (plainNumeral.test(pointed)) {
    return { value: Number(pointed), isDate: false, isOfDay: false, digit: lastDigit(text, decimalComma) };
  }
  const isOfDay = hasTimeOfDayForm(text);
  const date = isOfDay ? writtenTimeOfDay(text) : writtenDate(text);
  return date && { value: date.at["day-first"] / 1e6, isDate: true, isOfDay, digit: clockDigit(text) };
}
