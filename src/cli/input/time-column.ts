import { plainNumeral, shown, VeladisError } from "../../core/index";
import { secondsIn, type TimeUnitSymbol } from "../delimited/time-units";
import { requireSeconds, secondsFrom, serialDate } from "./bare-times";
import { type CellAt, cellText, DateOrders } from "./date-order";
import { levelCell } from "./level-cell";
import { linesText, NotedRows, type RowLines, rowsText } from "./row-lines";
import { pastMidnights, writtenTimeOfDay } from "./time-of-day";
import { type DateOrder, dateText, writtenDate } from "./written-date";

/** How the times of a column are written, where it is told. */
export type TimesWritten = "seconds" | "serial" | DateOrder;

/** How the times of a file were read. */
export interface TimesTold {
  /** The unit of bare numbers, where the heading says it and it is not the second. */
  readonly unit?: TimeUnitSymbol;
  readonly as: "seconds" | "serial dates" | "dates" | "dates, day first" | "dates, month first" | "times of day";
  /** The first, as it is written, and by the clock where it is a date. */
  readonly first: string;
  readonly clock?: string;
  /** The line of the date that admits this order of day and month alone, where it was not told. */
  readonly provedBy?: number;
  /** Rows behind a midnight, where the times of day are without a date. */
  readonly midnights?: RowLines;
  /** Rows at the time of the row above them. */
  readonly equal: RowLines;
}

/** When a history begins: since 1970, since midnight, or as the file counts. */
export interface Begins {
  readonly seconds: number;
  readonly zone: string;
  readonly by: "date" | "time of day" | "file";
}

/** The times of a column. */
export interface ReadTimes {
  /** In seconds from the first. */
  readonly times: Float64Array;
  /** The first as the column has it; left out where that is 0 s. */
  readonly begins?: Begins;
  readonly told: TimesTold;
}

/** How a cell says its time: a bare number, or microseconds since 1970. */
interface CellTime {
  readonly form: string;
  readonly at: Readonly<Record<DateOrder, number>>;
  readonly zone?: string;
}

/** The form of a time that is a number alone. */
export const BARE = "a bare number";

const askedForms = {
  seconds: "a time in s, as --times seconds says",
  serial: "a serial date from 61 to 2958465, as --times serial says",
  "day-first": "a date with the day first such as 31.03.2026, as --times day-first says",
  "month-first": "a date with the month first such as 03/31/2026, as --times month-first says",
} as const satisfies Record<TimesWritten, string>;

/** The time that a cell says, in the forms that there are. */
export function cellTime(cell: string, decimalComma: boolean): CellTime {
  const date = writtenDate(cell) ?? writtenTimeOfDay(cell);
  if (date !== undefined) return date;
  const number = levelCell(cell, decimalComma);
  if (typeof number === "number") return { form: BARE, at: { "day-first": number, "month-first": number } };
  const isComma = !decimalComma && plainNumeral.test(cell.trim().replace(",", "."));
  throw new VeladisError("syntax", {
    expected: `a time in s${isComma ? " (--decimal-comma for a comma)" : ""}, or a date and time such as "2026-03-04 17:07:11"`,
    received: shown(cell.trim()),
  });
}

/** Whether a time is written as it was told. */
function isAsAsked({ form, at }: CellTime, asked: TimesWritten): boolean {
  if (asked === "seconds") return form === BARE;
  if (asked === "serial") return form === BARE && Number.isFinite(serialDate(at["day-first"]));
  return form.startsWith("year last") && Number.isFinite(at[asked]);
}

/** Times of a history, taken row by row and read as one column. */
export class TimeColumn {
  readonly #asked: TimesWritten | undefined;
  readonly #decimalComma: boolean;
  readonly #unit: TimeUnitSymbol | undefined;
  readonly #lines: number[] = [];
  readonly #at: Readonly<Record<DateOrder, number[]>> = { "day-first": [], "month-first": [] };
  readonly #orders = new DateOrders();
  #first: (CellAt & CellTime) | undefined;
  #other: CellAt | undefined;

  /** @param unit - that of bare numbers, where the heading of the column says it */
  constructor(asked: TimesWritten | undefined, decimalComma: boolean, unit?: TimeUnitSymbol) {
    this.#asked = asked;
    this.#unit = unit;
    this.#decimalComma = decimalComma;
  }

  /**
   * Takes the time of a row.
   *
   * @throws {@link VeladisError} `syntax` or `out-of-range` for a cell that says none, or not as it was told
   */
  add(cell: string, line: number): void {
    const time = cellTime(cell, this.#decimalComma);
    if (this.#asked !== undefined && !isAsAsked(time, this.#asked)) {
      throw new VeladisError("syntax", { expected: askedForms[this.#asked], received: shown(cell.trim()) });
    }
    const where = { cell, line };
    this.#first ??= { ...time, ...where };
    if (time.form !== this.#first.form) this.#other ??= where;
    this.#orders.add(time.at, where);
    this.#at["day-first"].push(time.at["day-first"]);
    if (time.form.startsWith("year last")) this.#at["month-first"].push(time.at["month-first"]);
    this.#lines.push(line);
  }

  /**
   * All times, when the last of one or more is taken.
   *
   * @throws {@link VeladisError} `syntax` for times that are not written alike, `missing-fact` for those that may mean two
   *   things, `out-of-range` for times that fall
   */
  read(): ReadTimes {
    const first = this.#first as CellAt & CellTime;
    if (this.#other !== undefined) {
      throw new VeladisError("syntax", {
        expected: `times written as the first one, ${cellText(first)}`,
        received: cellText(this.#other),
      });
    }
    const { at, ...said } = this.#read(first);
    const isClock = said.as !== "seconds";
    const isOfDay = said.as === "times of day";
    const [start = 0] = at;
    const unit = this.#unit ?? "s";
    const times = Float64Array.from(at, (one) =>
      isClock ? (one - start) / 1e6 : secondsIn(unit, secondsFrom(start, one)),
    );
    const equal = this.#equalTimes(times);
    const told = {
      ...said,
      first: first.cell.trim(),
      ...(isClock ? { clock: isOfDay ? first.cell.trim() : dateText(start) } : unit !== "s" && { unit }),
      equal,
    };
    const by = isOfDay ? "time of day" : isClock ? "date" : "file";
    const begins: Begins = { seconds: isClock ? start / 1e6 : secondsIn(unit, start), zone: first.zone ?? "", by };
    return { times, ...((isClock || start !== 0) && { begins }), told };
  }

  #read(first: CellAt & CellTime): { at: readonly number[] } & Pick<TimesTold, "as" | "provedBy" | "midnights"> {
    const at = this.#at["day-first"];
    const asked = this.#asked;
    if (first.form === BARE) {
      if (asked === "serial") return { at: at.map(serialDate), as: "serial dates" };
      if (asked === undefined && this.#unit === undefined) requireSeconds(at, cellText(first));
      return { at, as: "seconds" };
    }
    if (first.form.startsWith("a time of day")) {
      const midnights = new NotedRows();
      const all = pastMidnights(at, (i) => midnights.note(this.#lines[i] as number));
      return { at: all, as: "times of day", midnights: midnights.noted() };
    }
    if (!first.form.startsWith("year last")) return { at, as: "dates" };
    const { order, provedBy } = asked === undefined ? this.#orders.found() : { order: asked as DateOrder };
    if (order === undefined) return { at, as: "dates" };
    const as = order === "day-first" ? "dates, day first" : "dates, month first";
    return { at: this.#at[order], as, ...(provedBy !== undefined && { provedBy: provedBy.line }) };
  }

  /** The rows at the time of the row above them; refuses those before it. */
  #equalTimes(times: Float64Array): RowLines {
    const equal = new NotedRows();
    const falling = new NotedRows();
    for (let i = 1; i < times.length; i++) {
      const line = this.#lines[i] as number;
      const later = (times[i] as number) - (times[i - 1] as number);
      if (later === 0) equal.note(line);
      if (later < 0) falling.note(line);
    }
    if (falling.rows === 0) return equal.noted();
    throw new VeladisError("out-of-range", {
      expected: "times that never fall, row below row",
      received: `${rowsText(falling.rows)} before the row above: ${linesText(falling)}`,
    });
  }
}
