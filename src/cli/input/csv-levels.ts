import type { Readable } from "node:stream";
import { parseNumeral, shown, VeladisError } from "../../core/index";
import { headedColumn } from "../delimited/column-index";
import { csvRows } from "./csv-rows";
import { type WrittenTime, writtenTime } from "./written-time";

/** Levels from a CSV file with their times in seconds from the first. */
export interface CsvLevels {
  /** NaN where the cell says that there was no good signal. */
  readonly levels: Float64Array;
  /** Empty when the file has no column of times. */
  readonly times: Float64Array;
  /** The first time by the clock, where the file has dates. */
  readonly begins?: WrittenTime;
}

/** Which columns of a CSV file are read. */
export interface CsvLevelsOptions {
  readonly file: string;
  /** Name or number, from 1. */
  readonly column: string;
  /** Name or number, from 1; no times are read without it. */
  readonly time?: string;
  /** Whether an empty cell, or one that says fault, stands for a sensor fault. */
  readonly faults: boolean;
}

function levelOf(cell: string, faults: boolean): number {
  if (faults && /^(fault|nan)?$/i.test(cell.trim())) return Number.NaN;
  return parseNumeral(cell, "a level");
}

/**
 * The levels of a CSV file, with the times in seconds from the first.
 *
 * @throws {@link VeladisError} with the line in its message for a cell that is no level or no time
 */
export async function csvLevels(stream: Readable, options: CsvLevelsOptions): Promise<CsvLevels> {
  const { file, column, time, faults } = options;
  const levels: number[] = [];
  const times: number[] = [];
  let columns: { level: number; time: number } | undefined;
  let start: WrittenTime | undefined;
  for await (const { cells, line } of csvRows(stream)) {
    if (columns === undefined) {
      columns = { level: headedColumn(cells, column), time: time === undefined ? -1 : headedColumn(cells, time) };
      continue;
    }
    try {
      levels.push(levelOf(cells[columns.level] ?? "", faults));
      if (columns.time >= 0) {
        const at = writtenTime(cells[columns.time] ?? "");
        start ??= at;
        if ((start.zone === undefined) !== (at.zone === undefined)) {
          throw new VeladisError("syntax", {
            expected: `a time written as the first one, ${start.zone === undefined ? "in s" : "a date and time"}`,
            received: shown(cells[columns.time]),
          });
        }
        const later = at.seconds - start.seconds;
        if (later < (times[times.length - 1] ?? 0)) {
          throw new VeladisError("out-of-range", {
            expected: "times that never fall",
            received: shown(cells[columns.time]),
          });
        }
        times.push(later);
      }
    } catch (error) {
      if (!(error instanceof VeladisError)) throw error;
      const { code, expected, received } = error;
      throw new VeladisError(code, { expected: `${expected}, at line ${line} of ${file}`, received });
    }
  }
  if (levels.length > 0) {
    return {
      levels: Float64Array.from(levels),
      times: Float64Array.from(times),
      ...(start?.zone !== undefined && { begins: start }),
    };
  }
  throw new VeladisError("missing-fact", { expected: "a CSV file with a header and rows", received: shown(file) });
}
