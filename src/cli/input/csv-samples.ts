import type { Readable } from "node:stream";
import { plainNumeral, shown, VeladisError } from "../../core/index";
import { accountText } from "../delimited/account-text";
import { columnIndex } from "../delimited/column-index";
import { readDelimited } from "../delimited/read-delimited";
import type { WrittenAs } from "../delimited/written-as";
import { BadRows } from "./bad-rows";
import type { Io } from "./io";
import { levelCell } from "./level-cell";

/** How the samples of a file of delimited text are to be read. */
export interface CsvSettings {
  /** What the file is called. */
  readonly file: string;
  readonly written: WrittenAs;
  /** Name or number of the column; not needed where there is only one. */
  readonly column: string | undefined;
  readonly scale: number;
  /** Whether what is told is told as JSON. */
  readonly json: boolean;
}

/** A word that is no failed number: `nan` and `inf` in a first row are samples to refuse, not the name of a column. */
const titleWord = /^(?!nan$|[+-]?inf)[^\d\s+.,-]/i;

const SPACED = "samples are evenly spaced, so none can be left out: those behind it would move in time";

/** Which cell of a row holds the sample, and whether the first row is a header. */
interface Layout {
  readonly index: number;
  readonly header: boolean;
}

/**
 * The layout that a first row shows. It is the header where it was told to be (`--header-line`), or where the sample's
 * cell is a word; it is a sample where no cell of the row is a word. A number beside words may be either, such as
 * channel 2 in a header `time,1,2`, and is refused.
 */
function layoutOf(first: readonly string[], { column, written, file }: CsvSettings): Layout {
  const cells = first.map((cell) => cell.trim());
  const isTold = written.headerLine !== undefined;
  const words = cells.map((cell) => isTold || titleWord.test(cell));
  const isHeader = words.includes(true);
  const names = isHeader ? cells : cells.map((_, i) => `${i + 1}`);
  if (column === undefined && cells.length > 1) {
    throw new VeladisError("missing-fact", {
      expected: "which of the columns holds the samples, as in --column 2, or --decimal-comma for numbers such as 7,1",
      received: `${cells.length} columns`,
      allowed: names,
    });
  }
  const index = column === undefined ? 0 : columnIndex(names, column);
  if (!isHeader || words[index]) return { index, header: isHeader };
  throw new VeladisError("missing-fact", {
    expected: "--header-line 1 to say that the first row is the header",
    received: `${shown(cells[index])} beside words in the first row of ${file}`,
  });
}

/**
 * The samples of one column of a stream of delimited text, a portion of the file at a time. A file may do without a
 * header: its first row is a sample then, and counted as one.
 *
 * How many rows there were is told on standard error.
 *
 * @throws {@link VeladisError} `missing-fact` when the column is not told; `not-a-number`, at the end, for rows that hold
 *   no sample
 */
export async function* csvSamples(io: Io, stream: Readable, settings: CsvSettings): AsyncGenerator<Float64Array> {
  const { file, written, scale, json } = settings;
  const { decimalComma } = written;
  const bad = new BadRows();
  let layout: Layout = { index: 0, header: true };
  let samples = new Float64Array(1 << 16);
  let count = 0;
  let read = 0;

  const take = (cells: readonly string[], line: number): void => {
    const cell = cells[layout.index] as string;
    const value = plainNumeral.test(cell) && !decimalComma ? Number(cell) : levelCell(cell, decimalComma);
    if (typeof value === "object") bad.add(line, value);
    else if (!Number.isFinite(value * scale)) bad.add(line, { what: shown(cell) });
    else {
      if (count === samples.length) {
        const longer = new Float64Array(2 * count);
        longer.set(samples);
        samples = longer;
      }
      samples[count++] = value * scale;
      read++;
    }
  };
  const portions = readDelimited(stream, file, written, {
    header(cells) {
      layout = layoutOf(cells, settings);
      if (!layout.header) take(cells, 1);
    },
    row: (cells, _, line) => take(cells, line),
    refused: (error, _, line) => bad.add(line, { what: error.code === "length-mismatch" ? "ragged" : "no row" }),
  });
  let portion = await portions.next();
  while (!portion.done) {
    // what comes behind a row without a sample stands at another time
    if (count > 0 && bad.rows === 0) yield samples.slice(0, count);
    count = 0;
    portion = await portions.next();
  }
  if (count > 0 && bad.rows === 0) yield samples.slice(0, count);
  const rows = portion.value;
  const more = layout.header ? 0 : 1;
  const account = { ...rows, rowsIn: rows.rowsIn + more, rows: rows.rows + more };
  io.progress?.("");
  io.err(accountText(account, { answered: read, refused: bad.rows }, json));
  bad.check({
    what: "a sample",
    file,
    decimalComma,
    skipBad: { cannot: SPACED },
    overRange: "over range is a signal beyond what can be read: the record is clipped",
  });
}
