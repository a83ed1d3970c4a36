import type { Readable } from "node:stream";
import { isAnswered, plainNumerals, shown, VeladisError } from "../../core/index";
import type { Amplitude } from "../../reading/index";
import { readingType } from "../../reading/index";
import { parseUncertain, uncertainAmplitude } from "../../uncertainty/index";
import { columnIndex } from "../delimited/column-index";
import { typeTold } from "../delimited/heading-agrees";
import { type RowRefused, rowUnitsRefusal } from "../delimited/row-units";
import { type ColumnRead, columnRead } from "./column-read";
import { cellShown, levelCell, type Unread } from "./level-cell";
import { pointFrequencies } from "./point-frequencies";
import { readSeries, type SeriesSettings } from "./read-series";
import type { SeriesTold } from "./series-told";
import { unreadColumns } from "./unread-columns";

/** One point of a check as a row says it. */
export interface CsvPoint {
  readonly point: string;
  readonly known: string | Amplitude;
  readonly indicated: string | Amplitude;
}

/** Known and indicated levels, and what is told of how they were read. */
export interface CsvPoints {
  readonly points: readonly CsvPoint[];
  /** Whether each has a frequency of its own, from a column of them. */
  readonly atFrequencies: boolean;
  /** The columns that play no part. */
  readonly notRead: readonly ColumnRead[];
  readonly told: SeriesTold;
}

/** What the levels of a file are written in. */
export interface PointsWritten extends SeriesSettings {
  /** One type for all; without one each cell says unit and detector. */
  readonly from: string | undefined;
  /** What makes a level of a cell with its own unit, also of one in volts, milliamperes or per cent. */
  readonly levelOf: (written: string) => string | Amplitude;
}

/** A heading without a unit in brackets, in small letters. */
function plainHeading(title: string): string {
  return title
    .replace(/\s*(?:\(.*\)|\[.*\])\s*$/, "")
    .trim()
    .toLowerCase();
}

/** Index of the column that a word heads, whatever its case, with or without a unit in brackets. */
function headedBy(header: readonly string[], word: string): number {
  const plain = header.map(plainHeading);
  const found = plain.flatMap((title, i) => (title === word ? [i] : []));
  return found.length === 1
    ? (found[0] as number)
    : columnIndex(
        header.map((title, i) => (plain[i] === word ? word : title)),
        word,
      );
}

type PointCell = string | Amplitude | Unread;

const isUnread = (cell: PointCell): cell is Unread => typeof cell === "object" && "what" in cell;

/** The reading that a cell says in one type, with its uncertainty where it has one, or what stands there instead. */
function typedCell(cell: string, decimalComma: boolean, type: string): PointCell {
  const level = levelCell(cell, decimalComma);
  if (typeof level === "number") return `${level} ${type}`;
  if (level.never !== "uncertainty") return level;
  const isMixed = decimalComma && cell.includes(".");
  const written = `${decimalComma ? cell.trim().replace(/(\d),(\d)/g, "$1.$2") : cell.trim()} ${type}`;
  return !isMixed && isAnswered(() => parseUncertain(written)) ? written : { ...level, never: "uncertain level" };
}

/** The reading that a cell says with its own unit, or the signal. */
function readingCell(cell: string, decimalComma: boolean, levelOf: PointsWritten["levelOf"]): PointCell {
  const level = levelCell(cell, decimalComma);
  if (typeof level === "object" && level.never === "over range") return level;
  try {
    const written = decimalComma ? plainNumerals(cell.trim(), { decimal: "," }) : cell.trim();
    const reading = levelOf(written);
    return typeof reading === "string" ? uncertainAmplitude(reading) : reading;
  } catch (error) {
    if (!VeladisError.is(error)) throw error;
    return { what: cellShown(cell.trim()), expected: error.expected ?? "a reading with unit and detector" };
  }
}

/**
 * Known and indicated levels from delimited text with columns of these names; a column `frequency` or `speed` says at
 * which each is, a column `point` what it is called.
 *
 * @throws {@link VeladisError} for cells that are no level, all told together
 */
export async function csvPoints(stream: Readable, settings: PointsWritten): Promise<CsvPoints> {
  const { from, levelOf, written } = settings;
  const type = from === undefined ? undefined : readingType(from);
  const { decimalComma } = written;
  const points: CsvPoint[] = [];
  let columns: readonly [known: number, indicated: number] = [0, 0];
  let named: number | undefined;
  let placed: ReturnType<typeof pointFrequencies>;
  let header: readonly string[] = [];
  let notRead: readonly ColumnRead[] = [];
  let unitRefused: RowRefused = () => undefined;
  const cellOf = (cell: string): PointCell =>
    type === undefined ? readingCell(cell, decimalComma, levelOf) : typedCell(cell, decimalComma, type);
  const rows = await readSeries(stream, settings, {
    what: "a known and an indicated level",
    overRange: "a device that shows over range at a known level fails there: take the row out and say so",
    header(cells, headings) {
      header = headings;
      columns = [headedBy(cells, "known"), headedBy(cells, "indicated")];
      named = cells.map(plainHeading).indexOf("point");
      placed = pointFrequencies(cells.map(plainHeading), headings, decimalComma);
      const asked = [...columns, ...(named < 0 ? [] : [named]), ...(placed === undefined ? [] : [placed.index])];
      // a column of units is held against the type of all
      const unitColumns =
        type === undefined
          ? []
          : headings.flatMap((one, i) => (/^(?:units?|detectors?)$/i.test(one.trim()) ? [i] : []));
      notRead = unreadColumns(headings, [...asked, ...unitColumns]);
      if (type === undefined) return;
      unitRefused = rowUnitsRefusal(headings, { read: columns }, typeTold(`--from ${shown(from)}`, type), written);
    },
    row(cells) {
      const otherUnit = unitRefused(cells);
      if (otherUnit !== undefined) return { what: otherUnit.received, never: "unit" };
      const [known, indicated] = columns.map((column) => cellOf(cells[column] as string)) as [PointCell, PointCell];
      if (isUnread(known)) return known;
      // whatever stands there: at a known level the device has not shown a level, which is no pass
      if (isUnread(indicated)) return { never: "no level shown", ...indicated };
      const at = placed?.place(cells[placed.index] as string, known);
      if (at !== undefined && "what" in at) return at;
      const point = named === undefined || named < 0 ? "" : (cells[named] as string).trim();
      points.push({ point, known: at?.known ?? known, indicated });
      return undefined;
    },
  });
  const [known, indicated] = columns;
  const read = {
    ...(named !== undefined && named >= 0 && { point: columnRead(header, named) }),
    known: columnRead(header, known),
    indicated: columnRead(header, indicated),
    ...(placed !== undefined && { frequency: columnRead(header, placed.index) }),
  };
  return { points, atFrequencies: placed !== undefined, notRead, told: { columns: read, ...rows } };
}
