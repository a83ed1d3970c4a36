import { cachedWithRefusals, type ErrorPlace, inPlace, shown, VeladisError } from "../core/index";
import { calendarDay } from "./calendar-day";
import type { CalendarDay } from "./plant-machine";

const DAY = /^\d{4}-\d\d-\d\d$/;

/** The day of a text, each looked up once. */
const known = /* @__PURE__ */ cachedWithRefusals((day) => calendarDay(day));

/**
 * The day itself if the calendar has it and it is written year first.
 *
 * @throws {@link VeladisError} `syntax` for another form, `out-of-range` for a day that no calendar has
 */
export function knownDay(day: CalendarDay, place: ErrorPlace): CalendarDay {
  const expected = "a day with the year first, such as 2026-03-31";
  if (typeof day !== "string" || !DAY.test(day))
    throw new VeladisError("syntax", { expected, received: shown(day), ...place });
  return inPlace(place, () => known(day));
}
