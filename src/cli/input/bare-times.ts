import { shown, VeladisError } from "../../core/index";
import { dateText } from "./written-date";

/** Serial dates of the years 1954 to 2119: bare numbers there may be either. */
const SERIAL = [20_000, 80_000] as const;
/** Days, or seconds, from row to row of a history whose numbers may be either. */
const NEAR = 40;
/** Serial dates that there are: from 1 March 1900, before which spreadsheets count a day too many, to the year 9999. */
const ALL_SERIAL = [61, 2_958_466] as const;
/** Days from 30 December 1899, on which serial dates begin, to 1970. */
const TO_1970 = 25_569;
/** Beyond the year 5000 in seconds since 1970: milliseconds, or the digits of a date. */
export const NO_SECONDS = 1e11;

/** Whether a bare number may be the serial date of a spreadsheet. */
export function maySerial(one: number): boolean {
  return one > SERIAL[0] && one <= SERIAL[1];
}

/** Microseconds since 1970 of a serial date (days since 30 December 1899), to the millisecond; NaN for none. */
export function serialDate(days: number): number {
  const isOne = days >= ALL_SERIAL[0] && days < ALL_SERIAL[1];
  return isOne ? Math.round((days - TO_1970) * 86_400_000) * 1000 : Number.NaN;
}

/**
 * Refuses bare numbers that may be another thing than seconds.
 *
 * @param where - the first of them, with its line, for the message
 * @throws {@link VeladisError} `missing-option`
 */
export function requireSeconds(numbers: readonly number[], where: string): void {
  const [first = 0] = numbers;
  if (numbers.every((one, i) => maySerial(one) && Math.abs(one - (numbers[i - 1] ?? one)) < NEAR)) {
    throw new VeladisError("missing-option", {
      expected: "--times seconds or --times serial, since these numbers may be either",
      received: `${where}: ${shown(first)} s, or as the serial date of a spreadsheet ${dateText(serialDate(first))}`,
    });
  }
  if (numbers.some((one) => one < NO_SECONDS)) return;
  throw new VeladisError("missing-option", {
    expected: "times in s or dates; --times seconds for seconds as large as these",
    received: `${where}: milliseconds, or the digits of a date?`,
  });
}

/** Seconds from the first, without the noise of large numbers. */
export function secondsFrom(first: number, later: number): number {
  const seconds = later - first;
  // a double of a time since 1970 holds no more than microseconds
  return Math.abs(first) < 1e6 ? seconds : Math.round(seconds * 1e6) / 1e6;
}
