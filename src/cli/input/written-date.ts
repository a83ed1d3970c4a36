import { midnight, shown, VeladisError } from "../../core/index";

/** Which number of a date such as `03/04/2026` comes first. */
export type DateOrder = "day-first" | "month-first";

/** A date and time of day as a cell has it, in whole microseconds since 1970, UTC. */
export interface WrittenDate {
  /** How it is written; dates of one column are written alike. */
  readonly form: string;
  /** Read with the day first, and with the month first: the same where the year stands first. NaN for no date. */
  readonly at: Readonly<Record<DateOrder, number>>;
  /** Its zone as it was written, such as `Z` or `+02:00`; empty without one. */
  readonly zone: string;
}

const yearFirst = /^(\d{4})-(\d\d)-(\d\d)(?:(?:T| +)(\d\d:\d\d(?::\d\d(?:[.,]\d+)?)?) *(Z|[+-]\d\d:?\d\d)?)?$/;
const yearLast = /^(\d\d?)([./-])(\d\d?)\2(\d{4})(?: +(\d\d?:\d\d(?::\d\d(?:[.,]\d+)?)?)(?: *([AP]M))?)?$/i;
const shortYear = /^\d\d?([./-])\d\d?\1\d\d(?!\d)/;

/** Microseconds since midnight; NaN for what no clock shows, such as 24:00. */
export function sinceMidnight(clock = "00:00", half = ""): number {
  const [hours = 0, minutes = 0, seconds = 0, fraction = 0] = clock
    .split(/[:.,]/)
    .map((digits, i) => Number(i === 3 ? `0.${digits}` : digits));
  const isHour = half === "" ? hours < 24 : hours >= 1 && hours <= 12;
  if (!isHour || minutes > 59 || seconds > 59) return Number.NaN;
  const hour = half === "" ? hours : (hours % 12) + (/p/i.test(half) ? 12 : 0);
  return (hour * 3600 + minutes * 60 + seconds) * 1e6 + Math.round(fraction * 1e6);
}

/** Microseconds that a zone is ahead of UTC; NaN for one that there is not. */
function ahead(zone: string): number {
  if (zone === "" || zone === "Z") return 0;
  const [, sign, hours, minutes] = /^([+-])(0\d|1[0-4]):?([0-5]\d)$/.exec(zone) ?? [];
  return (sign === "-" ? -6e7 : 6e7) * (Number(hours) * 60 + Number(minutes));
}

function datesOf(cell: string): WrittenDate | undefined {
  const [, year, month, day, clock, zone = ""] = yearFirst.exec(cell) ?? [];
  if (year !== undefined) {
    const at = 1000 * midnight(Number(year), Number(month), Number(day)) + sinceMidnight(clock) - ahead(zone);
    const form = `year first, ${clock === undefined ? "no time" : `a time ${zone === "" ? "without" : "with"} its zone`}`;
    return { form, at: { "day-first": at, "month-first": at }, zone };
  }
  const [, first, sign, second, last, time, half] = yearLast.exec(cell) ?? [];
  if (first === undefined) return undefined;
  const later = sinceMidnight(time, half);
  const at = {
    "day-first": 1000 * midnight(Number(last), Number(second), Number(first)) + later,
    "month-first": 1000 * midnight(Number(last), Number(first), Number(second)) + later,
  };
  const clockForm = time === undefined ? "no time" : half === undefined ? "a time" : "a time with AM or PM";
  return { form: `year last with ${sign}, ${clockForm}`, at, zone: "" };
}

/** Whether a cell has the form of a date, of one that no calendar has too. */
export function hasDateForm(cell: string): boolean {
  const written = cell.trim();
  return yearFirst.test(written) || yearLast.test(written) || shortYear.test(written);
}

/**
 * The date that a cell says, or undefined where it has the form of none.
 *
 * Without a zone it is read as UTC, so that a history is the same wherever it is read.
 *
 * @throws {@link VeladisError} `syntax` for a year of two digits, `out-of-range` for a date that no calendar has
 */
export function writtenDate(cell: string): WrittenDate | undefined {
  const written = cell.trim();
  const date = datesOf(written);
  if (date === undefined) {
    if (!shortYear.test(written)) return undefined;
    throw new VeladisError("syntax", { expected: "a date with a year of four digits", received: shown(written) });
  }
  if (Number.isFinite(date.at["day-first"]) || Number.isFinite(date.at["month-first"])) return date;
  throw new VeladisError("out-of-range", {
    expected: "a day of the calendar, and a time from 00:00:00 to below 24:00:00",
    received: shown(written),
  });
}

/** A date as text, in UTC; parts of a second only where there are any. */
export function dateText(microseconds: number): string {
  return new Date(Math.round(microseconds / 1000))
    .toISOString()
    .replace("T", " ")
    .replace(/(?:\.000)?Z$/, "");
}
