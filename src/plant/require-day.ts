import { type ErrorPlace, shown, VeladisError } from "../core/index";
import type { CalendarDay } from "./plant-machine";

const DAY = /^(\d{4})-(\d\d)-(\d\d)$/;

/**
 * The day itself if the calendar has it and it is written year first.
 *
 * @throws {@link VeladisError} `syntax` for another form, `out-of-range` for a day that no calendar has
 */
export function requireDay(day: CalendarDay, place?: ErrorPlace): CalendarDay {
  const expected = "a day with the year first, such as 2026-03-31";
  const [, year, month, date] = (typeof day === "string" && DAY.exec(day)) || [];
  if (year === undefined) throw new VeladisError("syntax", { expected, received: shown(day), ...place });
  const found = new Date(Date.UTC(Number(year), Number(month) - 1, Number(date)));
  if (found.toISOString().slice(0, 10) === day) return day;
  throw new VeladisError("out-of-range", { expected, received: `${shown(day)}, which no calendar has`, ...place });
}
