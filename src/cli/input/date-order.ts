import { shown, VeladisError } from "../../core/index";
import { type DateOrder, dateText } from "./written-date";

/** A cell and the line on which its row begins. */
export interface CellAt {
  readonly cell: string;
  readonly line: number;
}

/** A cell and its line, for messages. */
export function cellText({ cell, line }: CellAt): string {
  return `${shown(cell.trim())} at line ${line}`;
}

/** Which order of day and month the dates of a column admit. */
export interface OrderFound {
  /** Undefined where each date is the same in both. */
  readonly order: DateOrder | undefined;
  /** The first date that admits it alone. */
  readonly provedBy?: CellAt;
}

/** Finds the order of day and month from dates as they come. */
export class DateOrders {
  #first: (Readonly<Record<DateOrder, number>> & CellAt) | undefined;
  readonly #only: Partial<Record<DateOrder, CellAt>> = {};

  /** Takes a date that is one in one order at least. */
  add(at: Readonly<Record<DateOrder, number>>, where: CellAt): void {
    if (at["day-first"] === at["month-first"]) return;
    this.#first ??= { ...at, ...where };
    if (Number.isNaN(at["month-first"])) this.#only["day-first"] ??= where;
    if (Number.isNaN(at["day-first"])) this.#only["month-first"] ??= where;
  }

  /**
   * The order in which every date is one.
   *
   * @throws {@link VeladisError} `syntax` where there is none, `missing-option` where both are
   */
  found(): OrderFound {
    const { "day-first": day, "month-first": month } = this.#only;
    if (day !== undefined && month !== undefined) {
      throw new VeladisError("syntax", {
        expected: "dates of one order of day and month",
        received: `${cellText(day)}, which has the day first, and ${cellText(month)}, which has the month first`,
      });
    }
    if (day !== undefined) return { order: "day-first", provedBy: day };
    if (month !== undefined) return { order: "month-first", provedBy: month };
    const first = this.#first;
    if (first === undefined) return { order: undefined };
    throw new VeladisError("missing-option", {
      expected: "--times day-first or --times month-first, since these dates may be either",
      received: `${cellText(first)}: ${dateText(first["day-first"])}, or ${dateText(first["month-first"])}`,
    });
  }
}
