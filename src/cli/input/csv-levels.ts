import type { Readable } from "node:stream";
import { parseNumeral, shown, VeladisError } from "../../core/index";
import { headedColumn } from "./column-index";
import { csvRows } from "./csv-rows";

/** Levels from a CSV file with their times in seconds from the first. */
export interface CsvLevels {
  /** NaN where the cell says that there was no good signal. */
  readonly levels: Float64Array;
  /** Empty when the file has no column of times. */
  readonly times: Float64Array;
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

/** Seconds of a time: a number of seconds, or a date with a time of day. */
function secondsOf(written: string): number {
  if (/^[+-]?[\d.]/.test(written) && !/^\d{4}-\d\d-\d\d/.test(written)) return parseNumeral(written, "a time in s");
  // Without a zone a date is read as UTC, so that a history is the same wherever it is read.
  const plain = written.trim().replace(" ", "T");
  const zoned = /(?:Z|[+-]\d\d:?\d\d)$/.test(plain) ? plain : `${plain}Z`;
  const milliseconds = Date.parse(zoned);
  if (Number.isFinite(milliseconds)) return milliseconds / 1000;
  throw new VeladisError("syntax", {
    expected: 'a time in s, or a date and time such as "2020-02-08 17:07:11"',
    received: shown(written),
  });
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
  let start: number | undefined;
  for await (const { cells, line } of csvRows(stream)) {
    if (columns === undefined) {
      columns = { level: headedColumn(cells, column), time: time === undefined ? -1 : headedColumn(cells, time) };
      continue;
    }
    try {
      levels.push(levelOf(cells[columns.level] ?? "", faults));
      if (columns.time >= 0) {
        const at = secondsOf(cells[columns.time] ?? "");
        start ??= at;
        if (at - start < (times[times.length - 1] ?? 0)) {
          throw new VeladisError("out-of-range", {
            expected: "times that never fall",
            received: shown(cells[columns.time]),
          });
        }
        times.push(at - start);
      }
    } catch (error) {
      if (!(error instanceof VeladisError)) throw error;
      const { code, expected, received } = error;
      throw new VeladisError(code, { expected: `${expected}, at line ${line} of ${file}`, received });
    }
  }
  if (levels.length > 0) return { levels: Float64Array.from(levels), times: Float64Array.from(times) };
  throw new VeladisError("missing-fact", { expected: "a CSV file with a header and rows", received: shown(file) });
}
