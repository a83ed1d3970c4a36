import { VeladisError } from "../../core/index";
import type { RowsReader } from "../delimited/rows-reader";
import { secondsIn } from "../delimited/time-units";
import { secondsFrom } from "./bare-times";
import { type EvenTimes, lastDigit, TimeSpread } from "./even-times";
import { cellShown, takeTime, type Unread } from "./level-cell";
import { readSeries } from "./read-series";
import { BARE, cellTime } from "./time-column";
import { requireTimeUnit, type TimedColumns, type TimedSettings, timedColumns } from "./timed-columns";

/** The times of a record, with where its samples stand. */
export interface SteadyTimes {
  readonly even: EvenTimes;
  readonly columns: TimedColumns;
  /** Whether they are bare numbers whose heading says no unit, so that they are taken as seconds. */
  readonly taken: boolean;
}

/** What ends the reading of times that have to be held. */
class Held extends Error {}

/**
 * The times of a record in constant memory: bare numbers, and dates that begin with their year. Undefined for other times,
 * which say what they mean only when all of them are known.
 *
 * @throws {@link VeladisError} for cells that are no time, all told together, for times that fall, stand still or are not
 *   written alike, and all of {@link timedColumns}
 */
export async function steadyTimes(rows: RowsReader, settings: TimedSettings): Promise<SteadyTimes | undefined> {
  const { file, written } = settings;
  const { decimalComma } = written;
  const spread = new TimeSpread();
  let columns: TimedColumns = { time: 0, sample: 1, said: undefined };
  let form: string | undefined;
  let begin = 0;
  let last = 0;
  let digit = Number.POSITIVE_INFINITY;
  const secondsOf = (cell: string): number => {
    const time = cellTime(cell, decimalComma);
    const at = time.at["day-first"];
    if (form === undefined) {
      if (time.form !== BARE && !time.form.startsWith("year first")) throw new Held();
      form = time.form;
      begin = at;
    }
    if (time.form !== form) {
      throw new VeladisError("syntax", {
        expected: "a time written as the first one",
        received: cellShown(cell.trim()),
      });
    }
    last = at;
    if (form !== BARE) return (at - begin) / 1e6;
    digit = Math.min(digit, lastDigit(cell, decimalComma));
    return secondsIn(columns.said ?? "s", secondsFrom(begin, at));
  };
  try {
    await readSeries(
      rows,
      { file, written, skipBad: { cannot: "none can be left out" } },
      {
        what: "a time",
        overRange: "over range is no time",
        header(cells, headings) {
          columns = timedColumns(cells, headings, settings);
        },
        row(cells): Unread | undefined {
          const cell = cells[columns.time] as string;
          let seconds = 0;
          const unread = takeTime(cell, () => {
            seconds = secondsOf(cell);
          });
          if (unread === undefined) spread.add(seconds);
          return unread;
        },
      },
    );
  } catch (error) {
    if (error instanceof Held) return undefined;
    throw error;
  }
  const isBare = form === BARE;
  if (isBare) requireTimeUnit(columns.said, begin, last);
  const even = spread.read(isBare ? secondsIn(columns.said ?? "s", digit) : 0);
  return { even, columns, taken: isBare && columns.said === undefined };
}
