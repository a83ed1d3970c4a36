import { VeladisError } from "../../core/index";
import { type Plant, type PlantOptions, parsePlant, type RefusedRow } from "../../plant/index";
import { accountOf, type RowAccount, readDelimited } from "../delimited/read-delimited";
import type { WrittenAs } from "../delimited/written-as";
import type { Io } from "./io";
import { inputStream } from "./open-file";
import { spellingHints } from "./spelling-hints";
import { isWorkbook, workbookTable } from "./workbook";

/** A list as read, and what became of the rows of its file; no account of a workbook. */
export interface PlantFile {
  readonly plant: Plant;
  readonly account: RowAccount | undefined;
  /** What options would read rows that were refused. */
  readonly hints: readonly string[];
}

/** The file of a list, and how it is written. */
export interface ListFile {
  readonly file: string;
  readonly as: WrittenAs;
  /** Of a workbook, the sheet with the list. */
  readonly worksheet?: string | undefined;
}

/** A list is read whole: it is of hundreds of machines, not of millions. */
const MOST_ROWS = 100_000;

/** Rows of a list, or of a file that goes with one, and those that the reader of files refused. */
export interface ListRows {
  readonly heading: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly lines: readonly number[];
  readonly refused: readonly RefusedRow[];
  readonly account?: RowAccount;
}

/** The rows of a file that goes with a list, its headings first. */
export async function delimitedRows(io: Io, file: string, as: WrittenAs): Promise<ListRows> {
  const stream = await inputStream(io, file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "a list piped in, or the name of its file in place of -",
      received: "nothing",
    });
  }
  let heading: readonly string[] = [];
  const rows: (readonly string[])[] = [];
  const lines: number[] = [];
  const refused: RefusedRow[] = [];
  const reading = readDelimited(stream, file, as, {
    header(cells, _raw, _form, units) {
      heading = cells;
      if (units === undefined) return;
      throw new VeladisError("syntax", {
        expected: "machines below the headings: a list has no row of units, since each cell says its own",
        received: `a row of units at line ${units.line} of ${file}`,
      });
    },
    row(cells, _raw, line) {
      if (rows.length === MOST_ROWS) {
        throw new VeladisError("out-of-range", {
          expected: `a list of at most ${MOST_ROWS} machines`,
          received: `more in ${file}`,
        });
      }
      rows.push(cells);
      lines.push(line);
    },
    refused: ({ code, message }, _raw, line) => void refused.push({ line, tag: "", code, message }),
  });
  const account = await accountOf(reading);
  return { heading, rows, lines, refused, account };
}

/**
 * The list in a file of delimited text or a workbook; rows that cannot be read are among those that it refuses, by line.
 *
 * @throws {@link VeladisError} for a file or headings that cannot be read
 */
export async function plantOfFile(
  io: Io,
  { file, as, worksheet }: ListFile,
  options: PlantOptions,
): Promise<PlantFile> {
  const told = isWorkbook(file)
    ? { ...(await workbookTable(file, as, worksheet)), refused: [] }
    : await delimitedRows(io, file, as);
  const { refused, account, ...table }: ListRows = told;
  const plant = parsePlant(table, { ...options, ...(as.decimalComma && { decimal: "," }) });
  const all = [...plant.refused, ...refused].sort((a, b) => a.line - b.line);
  const hints = spellingHints({ ...table, refused: all }, { decimalComma: as.decimalComma, dates: options.dates });
  return { plant: { ...plant, refused: all }, account, hints };
}
