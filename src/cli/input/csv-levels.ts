import type { Readable } from "node:stream";
import type { SignalSource } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import { timeUnitSaid, typeTold } from "../delimited/heading-agrees";
import { type RowRefused, rowUnitsRefusal } from "../delimited/row-units";
import type { TimeUnitSymbol } from "../delimited/time-units";
import { type ColumnsRead, columnRead } from "./column-read";
import { cellShown, faultWord, levelCell, takeTime, type Unread } from "./level-cell";
import { readSeries, type SeriesSettings } from "./read-series";
import { requireNoHole } from "./require-no-hole";
import { NotedRows } from "./row-lines";
import { type ColumnsTold, seriesColumns } from "./series-columns";
import type { SeriesTold } from "./series-told";
import { type SignalColumn, signalColumn } from "./signal-column";
import { type Begins, TimeColumn, type TimesWritten } from "./time-column";
import { type Spacing, TimesBeside } from "./times-beside";

/** Levels from a file of delimited text with their times in seconds from the first. */
export interface CsvLevels {
  /** NaN where the cell says that there was no good signal. */
  readonly levels: Float64Array;
  /** Those of further channels. */
  readonly others: readonly Float64Array[];
  /** The operating mode at each; empty when none is read. */
  readonly modes: readonly string[];
  /** Empty when no times are read. */
  readonly times: Float64Array;
  /** The first time as the file has it; left out where that is 0 s. */
  readonly begins?: Begins;
  readonly told: SeriesTold;
}

/** Which columns are read, and how. */
export interface CsvLevelsOptions extends SeriesSettings, ColumnsTold {
  readonly times?: TimesWritten;
  /** The reading type that the levels are written in, as it was told. */
  readonly from: string;
  /** What turns levels in volts, mA or per cent into vibrations. */
  readonly source?: SignalSource;
  /**
   * What stands for a sensor fault: nothing can, nothing does, an empty cell or the word fault, or a cell that says over
   * range too.
   */
  readonly faults: "never" | "none" | "said" | "said or over range";
  /** How evenly spaced levels are, so that a line that is skipped among them may be one that is missing. */
  readonly even?: Spacing | undefined;
}

/** The unit that times written so are in; dates say their own. */
const askedUnits: Partial<Record<TimesWritten, TimeUnitSymbol>> = { seconds: "s", serial: "d" };

const OVER_RANGE = "over range is above all that can be read, so write the end of the range in its place";

/**
 * The vibration of a signal; NaN for a fault where one is taken.
 *
 * @param below - called where it is the start of the range of its loop
 */
function signalLevel(signal: SignalColumn, level: number, takesFaults: boolean, below: () => void): number | Unread {
  try {
    const { value, state } = signal.vibration(level);
    if (state === "above range") return { what: cellShown(`${level}`), never: "over range" };
    if (state === "below range") below();
    return value;
  } catch (error) {
    if (!(error instanceof VeladisError) || error.code !== "sensor-fault") throw error;
    if (takesFaults) return Number.NaN;
    return { what: `${level} mA`, expected: error.expected };
  }
}

/**
 * The levels of a column, with the times in seconds from the first.
 *
 * @throws {@link VeladisError} for cells that are no level or no time, all told together, and for times that may mean two
 *   things
 */
export async function csvLevels(stream: Readable, options: CsvLevelsOptions): Promise<CsvLevels> {
  const { timed, faults, written } = options;
  const { decimalComma } = written;
  const levels: number[] = [];
  const others = (options.others ?? []).map((): number[] => []);
  const modes: string[] = [];
  const overRange = new NotedRows();
  const signal = signalColumn(options.from, options.source ?? {});
  const types = signal?.told ?? typeTold(`--from ${shown(options.from)}`, options.from);
  const belowRange = new NotedRows();
  let beside: TimesBeside | undefined;
  let times: TimeColumn | undefined;
  let unitRefused: RowRefused = () => undefined;
  let index: ReturnType<typeof seriesColumns> = { level: 0, others: [], mode: undefined, time: undefined };
  let columns: ColumnsRead = {};

  const levelOf = (cell: string, line: number): number | Unread => {
    if (faults.startsWith("said") && faultWord.test(cell.trim())) return Number.NaN;
    const said = levelCell(cell, decimalComma);
    if (typeof said === "number" && said < 0 && signal?.isLoop !== true) {
      return { what: `negative ${cellShown(cell.trim())}`, expected: "a level of zero or more" };
    }
    const level =
      typeof said === "number" && signal !== undefined
        ? signalLevel(signal, said, faults.startsWith("said"), () => belowRange.note(line))
        : said;
    if (faults !== "said or over range" || typeof level === "number" || level.never !== "over range") return level;
    overRange.note(line);
    return Number.NaN;
  };
  const rows = await readSeries(stream, options, {
    what: timed ? "a time and a level" : "a level",
    overRange: faults !== "never" ? `${OVER_RANGE}, or use --sensor-fault alarm` : OVER_RANGE,
    header(cells, headings) {
      index = seriesColumns(cells, options, written);
      const { level, others: more, mode, time } = index;
      unitRefused = rowUnitsRefusal(
        headings,
        { read: [level, ...more], others: time === undefined ? [] : [time] },
        types,
        written,
      );
      if (options.even !== undefined) beside = new TimesBeside(options.even, headings, level, written);
      if (time !== undefined) {
        const asked = options.times === undefined ? undefined : askedUnits[options.times];
        const told = asked && { by: `--times ${options.times}`, unit: asked };
        times = new TimeColumn(options.times, decimalComma, timeUnitSaid(headings, time, told, written));
      }
      columns = {
        level: columnRead(headings, level),
        ...(more.length > 0 && { others: more.map((one) => columnRead(headings, one)) }),
        ...(mode !== undefined && { mode: columnRead(headings, mode) }),
        ...(index.time !== undefined && { time: columnRead(headings, index.time) }),
      };
    },
    row(cells, line) {
      const otherUnit = unitRefused(cells);
      if (otherUnit !== undefined) return { what: otherUnit.received, never: "unit" };
      const level = levelOf(cells[index.level] as string, line);
      if (typeof level !== "number") return level;
      const more: number[] = [];
      for (const other of index.others) {
        const one = levelOf(cells[other] as string, line);
        if (typeof one !== "number") return one;
        more.push(one);
      }
      const mode = index.mode === undefined ? undefined : (cells[index.mode] as string).trim();
      if (mode === "") return { what: "empty", expected: "the operating mode of the reading" };
      const time = cells[index.time ?? 0] as string;
      const unread = times && takeTime(time, () => times?.add(time, line));
      if (unread !== undefined) return unread;
      levels.push(level);
      for (const [i, one] of more.entries()) others[i]?.push(one);
      if (mode !== undefined) modes.push(mode);
      beside?.add(cells);
      return undefined;
    },
  });
  beside?.check();
  if (options.even !== undefined) requireNoHole(options.file, "a level", rows.account.behindSkipped.later);
  const read = times?.read();
  const told: SeriesTold = {
    columns,
    ...rows,
    ...(overRange.rows > 0 && { overRange: overRange.noted() }),
    ...(belowRange.rows > 0 && { belowRange: belowRange.noted() }),
    ...(read !== undefined && { times: read.told }),
  };
  return {
    levels: Float64Array.from(levels),
    others: others.map((one) => Float64Array.from(one)),
    modes,
    times: read?.times ?? new Float64Array(0),
    ...(read?.begins !== undefined && { begins: read.begins }),
    told,
  };
}
