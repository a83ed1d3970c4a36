import { plainFile } from "../input/plain-file";
import { byteSource } from "./byte-source";
import { cellText } from "./cell-text";
import { readFooter } from "./footer";
import { type ColumnValues, type GroupColumns, groupColumns } from "./group-columns";

/** A cell that cannot be told. */
export interface Fault {
  /** Index of the row within its portion, and of the column. */
  readonly row: number;
  readonly column: number;
  readonly reason: string;
}

/** What a file shows, in a form that goes from one thread to another quickly. */
export type Portion =
  | { readonly names: readonly string[]; readonly rows: number }
  /** The cells of some rows, one behind the other; `ends` are their ends in the text. */
  | {
      readonly text: string;
      readonly ends: Uint32Array<ArrayBuffer>;
      readonly faults: readonly Fault[];
      readonly share: number;
      /** Whether each page that they stand in has a checksum. */
      readonly summed: boolean;
    };

/** Rows of a portion, so that what is on its way stays small beside a row group. */
const ROWS = 4096;

function portionOf({ columns, summed }: GroupColumns, from: number, to: number, share: number): Portion {
  const ends = new Uint32Array((to - from) * columns.length);
  const faults: Fault[] = [];
  let text = "";
  let cell = 0;
  for (let row = from; row < to; row++) {
    for (let column = 0; column < columns.length; column++) {
      const written = cellText((columns[column] as ColumnValues)[row]);
      if (typeof written === "string") text += written;
      else faults.push({ row: row - from, column, reason: written.reason });
      ends[cell++] = text.length;
    }
  }
  return { text, ends, faults, share, summed };
}

/**
 * Reads a Parquet file: its columns, then its rows in portions; memory for one row group.
 *
 * @param beat - is called whenever something is done
 * @throws {@link VeladisError} `unreadable` for a file that cannot be read, `syntax` for what is no whole Parquet
 */
export async function* parquetPortions(path: string, beat: () => void): AsyncGenerator<Portion> {
  const opened = await plainFile(path);
  try {
    const file = byteSource(path, opened);
    const footer = await readFooter(file);
    yield { names: footer.names, rows: footer.rows };
    let done = 0;
    for (const [index, { num_rows }] of footer.metadata.row_groups.entries()) {
      const rows = Number(num_rows);
      if (rows === 0) continue;
      const group = await groupColumns(file, footer, index, beat);
      for (let from = 0; from < rows; from += ROWS) {
        const to = Math.min(from + ROWS, rows);
        yield portionOf(group, from, to, (done + to) / footer.rows);
      }
      done += rows;
    }
    await opened.requireUnchanged();
  } finally {
    await opened.close();
  }
}
