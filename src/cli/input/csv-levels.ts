import type { Readable } from "node:stream";
import { VeladisError } from "../../core/index";
import type { RowAccount } from "../delimited/read-delimited";
import { headedColumn } from "./headed-column";
import { cellShown, faultWord, levelCell, type Unread } from "./level-cell";
import { readSeries, type SeriesSettings } from "./read-series";
import { NotedRows } from "./row-lines";
import type { SeriesTold } from "./series-told";
import { TimeColumn, type TimesWritten } from "./time-column";

/** Levels from a file of delimited text with their times in seconds from the first. */
export interface CsvLevels {
  /** NaN where the cell says that there was no good signal. */
  readonly levels: Float64Array;
  /** Empty when no times are read. */
  readonly times: Float64Array;
  /** The first time by the clock, where the file has dates. */
  readonly begins?: { readonly seconds: number; readonly zone: string };
  readonly told: SeriesTold;
}

/** Which columns are read, and how. */
export interface CsvLevelsOptions extends SeriesSettings {
  /** Name or number, from 1. */
  readonly column: string;
  /** Name or number, from 1; no times are read without it. */
  readonly time?: string;
  readonly times?: TimesWritten;
  /**
   * What stands for a sensor fault: nothing can, nothing does, an empty cell or the word fault, or a cell that says over
   * range too.
   */
  readonly faults: "never" | "none" | "said" | "said or over range";
  /** Whether the levels are evenly spaced, so that a blank line among them may be one that is missing. */
  readonly even: boolean;
}

const OVER_RANGE = "over range is above all that can be read, so write the end of the range in its place";

/** Refuses a file of one column with a blank line between two levels that are evenly spaced. */
function checkNoHole(file: string, line: number, { skipped }: RowAccount): void {
  if (line === 0 || skipped.blank === 0) return;
  throw new VeladisError("missing-fact", {
    expected: `a level in each row of ${file}, with no blank line among levels that are evenly spaced`,
    received: `one above line ${line}, where a level may be missing`,
  });
}

/** The time of a row, taken; what stands there where it says none. */
function takeTime(times: TimeColumn, cell: string, line: number): Unread | undefined {
  try {
    times.add(cell, line);
    return undefined;
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    return { what: `time ${cellShown(cell.trim())}`, expected: error.expected };
  }
}

/**
 * The levels of a column, with the times in seconds from the first.
 *
 * @throws {@link VeladisError} for cells that are no level or no time, all told together, and for times that may mean two
 *   things
 */
export async function csvLevels(stream: Readable, options: CsvLevelsOptions): Promise<CsvLevels> {
  const { column, time, faults, written } = options;
  const { decimalComma } = written;
  const levels: number[] = [];
  const overRange = new NotedRows();
  const times = time === undefined ? undefined : new TimeColumn(options.times, decimalComma);
  let index = { level: 0, time: 0 };
  let last = 0;
  let hole = 0;

  const levelOf = (cell: string, line: number): number | Unread => {
    if (faults.startsWith("said") && faultWord.test(cell.trim())) return Number.NaN;
    const level = levelCell(cell, decimalComma);
    if (faults !== "said or over range" || typeof level === "number" || level.never !== "over range") return level;
    overRange.note(line);
    return Number.NaN;
  };
  const rows = await readSeries(stream, options, {
    what: times === undefined ? "a level" : "a time and a level",
    overRange: faults !== "never" ? `${OVER_RANGE}, or use --sensor-fault alarm` : OVER_RANGE,
    header(cells) {
      index = {
        level: headedColumn(cells, column, written),
        time: time === undefined ? -1 : headedColumn(cells, time, written),
      };
    },
    row(cells, line) {
      if (options.even && cells.length === 1 && last > 0 && line !== last + 1) hole ||= line;
      last = line;
      const level = levelOf(cells[index.level] as string, line);
      if (typeof level !== "number") return level;
      const unread = times && takeTime(times, cells[index.time] as string, line);
      if (unread === undefined) levels.push(level);
      return unread;
    },
  });
  checkNoHole(options.file, hole, rows.account);
  const read = times?.read();
  const told: SeriesTold = {
    ...rows,
    ...(overRange.rows > 0 && { overRange: overRange.noted() }),
    ...(read !== undefined && { times: read.told }),
  };
  return {
    levels: Float64Array.from(levels),
    times: read?.times ?? new Float64Array(0),
    ...(read?.begins !== undefined && { begins: read.begins }),
    told,
  };
}
