import { shown, VeladisError } from "../../core/index";
import { sinceMidnight, type WrittenDate } from "./written-date";

/** Microseconds of a day. */
const DAY = 86_400e6;

const ofDay = /^(\d\d?:\d\d:\d\d(?:[.,]\d+)?)(?: *([AP]M))?$|^(\d\d?:\d\d) *([AP]M)$/i;
const short = /^\d\d?:\d\d$/;

/** Whether a cell has the form of a time of day without a date. */
export function hasTimeOfDayForm(cell: string): boolean {
  return ofDay.test(cell.trim());
}

/**
 * The time of day that a cell says, in microseconds since midnight, or undefined where it has the form of none.
 *
 * @throws {@link VeladisError} `out-of-range` for a time that no clock shows, `syntax` for one such as 08:15
 */
export function writtenTimeOfDay(cell: string): WrittenDate | undefined {
  const text = cell.trim();
  if (short.test(text)) {
    throw new VeladisError("syntax", {
      expected: "a time of day with its seconds such as 08:15:00, since 08:15 may be minutes and seconds",
      received: shown(text),
    });
  }
  const [, clock, half = "", plain, halfOfPlain] = ofDay.exec(text) ?? [];
  if (clock === undefined && plain === undefined) return undefined;
  const at = sinceMidnight(clock ?? plain, halfOfPlain ?? half);
  if (Number.isNaN(at)) {
    throw new VeladisError("out-of-range", {
      expected: "a time from 00:00:00 to below 24:00:00",
      received: shown(text),
    });
  }
  const form = `a time of day${(halfOfPlain ?? half) === "" ? "" : " with AM or PM"}`;
  return { form, at: { "day-first": at, "month-first": at }, zone: "" };
}

/**
 * Times of day as one history: one that falls by more than half a day lies behind a midnight. A smaller fall stays one.
 *
 * @param passed - is told the index of each row behind a midnight
 */
export function pastMidnights(times: readonly number[], passed: (index: number) => void): number[] {
  let days = 0;
  return times.map((time, i) => {
    if (i > 0 && time < (times[i - 1] as number) - DAY / 2) {
      days++;
      passed(i);
    }
    return time + days * DAY;
  });
}
