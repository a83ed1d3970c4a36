import { type ErrorPlace, requireText, shown, VeladisError } from "../core/index";
import type { CalendarDay } from "./plant-machine";

const FORM = /^(\d{4})-(\d\d)-(\d\d)$/;

/** Days of 400 years, after which the calendar comes again. */
const ERA = 146_097;

/** Days from 0000-03-01 to 1970-01-01. */
const EPOCH = 719_468;

/** Days since 1970-01-01 of a date; a month counts from March, so that the leap day is the last of a year. */
function numberOf(year: number, month: number, day: number): number {
  const from = month > 2 ? year : year - 1;
  const era = Math.floor(from / 400);
  const inEra = from - era * 400;
  const inYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return era * ERA + inEra * 365 + Math.floor(inEra / 4) - Math.floor(inEra / 100) + inYear - EPOCH;
}

/** Year, month and day of days since 1970-01-01. */
function partsOf(number: number): readonly [year: number, month: number, day: number] {
  const at = number + EPOCH;
  const era = Math.floor(at / ERA);
  const inEra = at - era * ERA;
  const year = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) / 365,
  );
  const inYear = inEra - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const from = Math.floor((5 * inYear + 2) / 153);
  const month = from + (from < 10 ? 3 : -9);
  return [year + era * 400 + (month <= 2 ? 1 : 0), month, inYear - Math.floor((153 * from + 2) / 5) + 1];
}

function textOf(year: number, month: number, day: number): CalendarDay {
  const two = (one: number): string => `${one}`.padStart(2, "0");
  return `${`${year}`.padStart(4, "0")}-${two(month)}-${two(day)}`;
}

/** The last day that four digits of a year can write. */
const LAST: CalendarDay = "9999-12-31";

/** The number of a day that is known to be one. */
function numberOfDay(day: CalendarDay): number {
  const [year, month, date] = day.split("-").map(Number) as [number, number, number];
  return numberOf(year, month, date);
}

/**
 * The day itself if it is one of the calendar, written `2026-03-31`.
 *
 * @throws {@link VeladisError} `syntax` for another form, `out-of-range` for a day that no calendar has
 */
export function requireDay(written: CalendarDay, what: string, place?: ErrorPlace): CalendarDay {
  const expected = `${what}, a day such as "2026-03-31"`;
  const [, year, month, day] = FORM.exec(requireText(written, expected, place)) ?? [];
  if (year === undefined) throw new VeladisError("syntax", { expected, received: shown(written), ...place });
  const parts = [Number(year), Number(month), Number(day)] as const;
  const isMonth = parts[1] >= 1 && parts[1] <= 12;
  if (isMonth && parts[2] >= 1 && textOf(...partsOf(numberOf(...parts))) === written) return written;
  throw new VeladisError("out-of-range", {
    expected: `${what}, a day that the calendar has`,
    received: shown(written),
    ...place,
  });
}

/** Days from one day to another; below zero where the other is before. */
export function daysBetween(from: CalendarDay, to: CalendarDay): number {
  return numberOfDay(to) - numberOfDay(from);
}

/** The day so many days later. */
export function daysAfter(day: CalendarDay, days: number): CalendarDay {
  return textOf(...partsOf(Math.min(numberOfDay(day) + days, numberOfDay(LAST))));
}

/** Days of the shortest month, by which a part of a month is counted: never later than any other. */
const SHORTEST = 28;

/**
 * The day so many months later by the calendar: the day of the month stays, or is the last where the month is shorter.
 *
 * A part of a month is so much of 28 days, in whole days and not rounded up.
 */
export function monthsAfter(day: CalendarDay, months: number): CalendarDay {
  const [year, month, date] = day.split("-").map(Number) as [number, number, number];
  const whole = Math.floor(months);
  const count = year * 12 + (month - 1) + whole;
  const [toYear, toMonth] = [Math.floor(count / 12), (count % 12) + 1];
  if (toYear > 9999) return LAST;
  const next = toMonth === 12 ? numberOf(toYear + 1, 1, 1) : numberOf(toYear, toMonth + 1, 1);
  const last = next - numberOf(toYear, toMonth, 1);
  return daysAfter(textOf(toYear, toMonth, Math.min(date, last)), Math.floor((months - whole) * SHORTEST + 1e-9));
}
