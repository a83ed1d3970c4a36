import { parseNumeral, shown, VeladisError } from "../../core/index";

/** A time as a file has it. */
export interface WrittenTime {
  /** Of a date: since 1970. */
  readonly seconds: number;
  /** Of a date: its zone as it was written, such as `Z` or `+02:00`; empty without one. Left out for a bare number. */
  readonly zone?: string;
}

/** The time that a cell says: a number of seconds, or a date with a time of day. */
export function writtenTime(cell: string): WrittenTime {
  if (/^[+-]?[\d.]/.test(cell) && !/^\d{4}-\d\d-\d\d/.test(cell)) {
    return { seconds: parseNumeral(cell, "a time in s") };
  }
  // Without a zone a date is read as UTC, so that a history is the same wherever it is read.
  const plain = cell.trim().replace(" ", "T");
  const zone = /(?:Z|[+-]\d\d:?\d\d)$/.exec(plain.slice(10))?.[0] ?? "";
  const milliseconds = Date.parse(zone === "" ? `${plain}Z` : plain);
  if (Number.isFinite(milliseconds)) return { seconds: milliseconds / 1000, zone };
  throw new VeladisError("syntax", {
    expected: 'a time in s, or a date and time such as "2020-02-08 17:07:11"',
    received: shown(cell),
  });
}
