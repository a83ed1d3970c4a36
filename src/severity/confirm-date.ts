import { shown, VeladisError } from "../core/index";

const written = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * The day itself if it is one, written as 2024-03-04.
 *
 * @throws {@link VeladisError} `wrong-type` or `syntax`
 */
export function requireDay(given: unknown, what: string): string {
  const day = typeof given === "string" ? given.trim() : "";
  const [, year, month, date] = (written.exec(day) ?? []).map(Number) as [number, number, number, number];
  const at = new Date(Date.UTC(year, month - 1, date));
  // of the 30th of February a Date makes the 2nd of March
  if (written.test(day) && at.getUTCMonth() === month - 1 && at.getUTCDate() === date) return day;
  throw new VeladisError(typeof given === "string" ? "syntax" : given === undefined ? "missing-fact" : "wrong-type", {
    expected: `${what}, as a day of the calendar such as 2024-03-04`,
    received: shown(given),
  });
}

/** The day it is now where the day is furthest on: a person there is not refused as of tomorrow. */
export function latestDay(): string {
  return new Date(Date.now() + 14 * 3600 * 1000).toISOString().slice(0, 10);
}
