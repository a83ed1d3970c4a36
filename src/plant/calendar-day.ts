import { midnight, shown, VeladisError } from "../core/index";
import type { CalendarDay } from "./plant-machine";

/** Which number of a date such as `03/04/2026` comes first; without it only dates with the year first are read. */
export type DayOrder = "day-first" | "month-first";

const yearFirst = /^(\d{4})-(\d\d)-(\d\d)$/;
const yearLast = /^(\d\d?)([./-])(\d\d?)\2(\d{4})$/;

const FORM = "a date such as 2026-03-31";

/** Year, month and day of a text, in their places by its form. */
function partsOf(text: string, order: DayOrder | undefined): readonly [year: number, month: number, day: number] {
  const [, year, month, day] = yearFirst.exec(text) ?? [];
  if (year !== undefined) return [Number(year), Number(month), Number(day)];
  const [, first, , second, last] = yearLast.exec(text) ?? [];
  if (first === undefined) throw new VeladisError("syntax", { expected: FORM, received: shown(text) });
  if (order === undefined) {
    throw new VeladisError("missing-option", {
      expected: `${FORM}, or day-first or month-first said of all dates: which number of this one is the day is not guessed`,
      received: shown(text),
    });
  }
  return order === "day-first"
    ? [Number(last), Number(second), Number(first)]
    : [Number(last), Number(first), Number(second)];
}

/**
 * The calendar day that a text says.
 *
 * @throws {@link VeladisError} `syntax`, `out-of-range` for a day that no calendar has, `missing-option` for a date whose
 *   order of day and month nobody told
 */
export function calendarDay(text: string, order?: DayOrder): CalendarDay {
  const written = text.trim();
  const [year, month, day] = partsOf(written, order);
  if (Number.isNaN(midnight(year, month, day))) {
    throw new VeladisError("out-of-range", { expected: `${FORM}, a day of the calendar`, received: shown(written) });
  }
  return [`${year}`.padStart(4, "0"), `${month}`.padStart(2, "0"), `${day}`.padStart(2, "0")].join("-");
}

export { monthsAfter } from "./calendar";
