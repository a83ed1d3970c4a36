import type { Readable } from "node:stream";
import { VeladisError } from "../../core/index";
import { type RowCounts, wholeAccount } from "../delimited/account-text";
import { accountOf, type RowAccount, readDelimited } from "../delimited/read-delimited";
import type { RowsReader } from "../delimited/rows-reader";
import { headingsOf } from "../delimited/units-row";
import type { WrittenAs } from "../delimited/written-as";
import { BadRows, type LeftOut, type RowsWanted } from "./bad-rows";
import type { Unread } from "./level-cell";

/** How the rows of a series are read. */
export interface SeriesSettings {
  /** What the file is called. */
  readonly file: string;
  readonly written: WrittenAs;
  readonly skipBad: RowsWanted["skipBad"];
}

/** What a row says, taken where it is read. */
export interface SeriesVisitor extends Pick<RowsWanted, "what" | "overRange"> {
  /** @param headings - the same with the units of a row below them */
  header(cells: readonly string[], headings: readonly string[]): void;
  /** What stands there in the place of what was to be read; undefined where it was. */
  row(cells: readonly string[], line: number): Unread | undefined;
}

/** How many rows were read, and which were left out. */
export interface SeriesRows {
  readonly account: RowAccount;
  readonly counts: RowCounts;
  readonly leftOut?: LeftOut;
}

/** What the reader refused as no row; a ragged one needs no more words. */
export function unreadRow({ code, expected }: VeladisError): Unread {
  return code === "length-mismatch" ? { what: "ragged" } : { what: "no row of the table", expected };
}

/**
 * Shows each row of a series to a visitor.
 *
 * @param source - a stream of delimited text, or what shows the rows of a file
 *
 * @throws {@link VeladisError} `not-a-number` for rows that say nothing, all told together; `missing-fact` for no rows;
 *   and all of {@link readDelimited}
 */
export async function readSeries(
  source: Readable | RowsReader,
  settings: SeriesSettings,
  visitor: SeriesVisitor,
): Promise<SeriesRows> {
  const { file, written, skipBad } = settings;
  const { what, overRange } = visitor;
  const bad = new BadRows();
  let read = 0;
  const rows: RowsReader =
    typeof source === "function" ? source : (shown) => readDelimited(source, file, written, shown);
  const reading = rows({
    header: (cells, _raw, _form, units) => visitor.header(cells, headingsOf(cells, units, written)),
    row: (cells, _, line) => {
      const unread = visitor.row(cells, line);
      if (unread === undefined) read++;
      else bad.add(line, unread);
    },
    refused: (error, _, line) => bad.add(line, unreadRow(error)),
  });
  const account = await accountOf(reading);
  const counts = { answered: read, refused: bad.rows };
  const { in: all } = wholeAccount(account, counts);
  bad.check({ what, file, all, decimalComma: written.decimalComma, skipBad, overRange });
  if (read === 0) {
    throw new VeladisError("missing-fact", {
      expected: `${what} in a row below the header of ${file}`,
      received: "none",
    });
  }
  const leftOut = bad.leftOut();
  return { account, counts, ...(leftOut !== undefined && { leftOut }) };
}
