import type { Readable } from "node:stream";
import { isAnswered, shown } from "../../core/index";
import { readingType } from "../../reading/index";
import { parseUncertain } from "../../uncertainty/index";
import { columnIndex } from "../delimited/column-index";
import { typeTold } from "../delimited/heading-agrees";
import { type RowRefused, rowUnitsRefusal } from "../delimited/row-units";
import { columnRead } from "./column-read";
import { levelCell, type Unread } from "./level-cell";
import { readSeries, type SeriesSettings } from "./read-series";
import type { SeriesTold } from "./series-told";

/** Known and indicated levels, and what is told of how they were read. */
export interface CsvPoints {
  readonly points: readonly { readonly known: string; readonly indicated: string }[];
  readonly told: SeriesTold;
}

/** Index of the column that a word heads, whatever its case, with or without a unit in brackets. */
function headedBy(header: readonly string[], word: string): number {
  const plain = header.map((title) => title.replace(/\s*(?:\(.*\)|\[.*\])\s*$/, "").trim());
  const found = plain.flatMap((title, i) => (title.toLowerCase() === word ? [i] : []));
  return found.length === 1
    ? (found[0] as number)
    : columnIndex(
        header.map((title, i) => (plain[i]?.toLowerCase() === word ? word : title)),
        word,
      );
}

type PointCell = string | Unread;

/** The reading that a cell says, with its uncertainty where it has one, or what stands there instead. */
function pointCell(cell: string, decimalComma: boolean, type: string): PointCell {
  const level = levelCell(cell, decimalComma);
  if (typeof level === "number") return `${level} ${type}`;
  if (level.never !== "uncertainty") return level;
  const isMixed = decimalComma && cell.includes(".");
  const written = `${decimalComma ? cell.trim().replace(/(\d),(\d)/g, "$1.$2") : cell.trim()} ${type}`;
  return !isMixed && isAnswered(() => parseUncertain(written)) ? written : { ...level, never: "uncertain level" };
}

/**
 * Known and indicated levels from delimited text with columns of these names.
 *
 * @throws {@link VeladisError} for cells that are no level, all told together
 */
export async function csvPoints(stream: Readable, from: string, settings: SeriesSettings): Promise<CsvPoints> {
  const type = readingType(from);
  const { decimalComma } = settings.written;
  const points: { known: string; indicated: string }[] = [];
  let columns: readonly [known: number, indicated: number] = [0, 0];
  let header: readonly string[] = [];
  let unitRefused: RowRefused = () => undefined;
  const rows = await readSeries(stream, settings, {
    what: "a known and an indicated level",
    overRange: "a device that shows over range at a known level fails there: take the row out and say so",
    header(cells, headings) {
      header = headings;
      columns = [headedBy(cells, "known"), headedBy(cells, "indicated")];
      unitRefused = rowUnitsRefusal(
        headings,
        { read: columns },
        typeTold(`--from ${shown(from)}`, type),
        settings.written,
      );
    },
    row(cells) {
      const otherUnit = unitRefused(cells);
      if (otherUnit !== undefined) return { what: otherUnit.received, never: "unit" };
      const [known, indicated] = columns.map((column) => pointCell(cells[column] as string, decimalComma, type)) as [
        PointCell,
        PointCell,
      ];
      if (typeof known === "object") return known;
      if (typeof indicated === "object") return indicated;
      points.push({ known, indicated });
      return undefined;
    },
  });
  const [known, indicated] = columns;
  const read = { known: columnRead(header, known), indicated: columnRead(header, indicated) };
  return { points, told: { columns: read, ...rows } };
}
