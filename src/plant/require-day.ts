import { cached, type ErrorPlace, shown, VeladisError } from "../core/index";
import type { CalendarDay } from "./plant-machine";

const DAY = /^\d{4}-\d\d-\d\d$/;

/** Whether a calendar has a day that is written year first. */
const isReal = /* @__PURE__ */ cached((day) => {
  const [year, month, date] = day.split("-").map(Number) as [number, number, number];
  const found = new Date(0);
  found.setUTCFullYear(year, month - 1, date);
  return found.getUTCMonth() === month - 1 && found.getUTCDate() === date;
});

/**
 * The day itself if the calendar has it and it is written year first.
 *
 * @throws {@link VeladisError} `syntax` for another form, `out-of-range` for a day that no calendar has
 */
export function requireDay(day: CalendarDay, place?: ErrorPlace): CalendarDay {
  const expected = "a day with the year first, such as 2026-03-31";
  if (typeof day !== "string" || !DAY.test(day))
    throw new VeladisError("syntax", { expected, received: shown(day), ...place });
  if (isReal(day)) return day;
  throw new VeladisError("out-of-range", { expected, received: `${shown(day)}, which no calendar has`, ...place });
}
