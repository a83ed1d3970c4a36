import { shown, VeladisError } from "../../core/index";
import { bytesOf, quotedCell } from "../delimited/cells";
import type { RowAccount } from "../delimited/row-account";
import type { DelimitedVisitor } from "../delimited/row-reading";
import { parquetRows } from "./parquet-rows";
import type { Fault } from "./portions";

/** Why a row with these faults is refused. */
function refusalOf(faults: readonly Fault[], names: readonly string[]): VeladisError {
  const told = faults.map(({ column, reason }) => `${reason} in column ${shown(names[column])}`);
  return new VeladisError("syntax", { expected: "cells that can be told as text", received: told.join(", ") });
}

/** What became of the rows of a Parquet file. */
export interface ParquetRead {
  /** Rows in are those that the description of the file tells of. */
  readonly account: RowAccount;
  /** Whether each page has a checksum, so that no damage goes unseen. */
  readonly summed: boolean;
}

/**
 * Shows the rows of a Parquet file to a visitor, as CSV; memory for one row group. Yields after each portion with the share
 * of the rows that is read.
 *
 * @throws {@link VeladisError} `unreadable` when hyparquet is not installed or the file cannot be read, `syntax` for
 *   what is no whole Parquet
 */
export async function* readParquet(path: string, visitor: DelimitedVisitor): AsyncGenerator<number, ParquetRead> {
  const form = { separator: ",", lineEnd: "\n", mark: "", counted: "row" } as const;
  const rawOf = (cells: readonly string[]): string => bytesOf(cells.map((cell) => quotedCell(cell, ",")).join(","));
  let names: readonly string[] = [];
  let rows = 0;
  let number = 0;
  let refused = 0;
  let summed = true;
  for await (const portion of parquetRows(path)) {
    if ("names" in portion) {
      names = portion.names;
      rows = portion.rows;
      visitor.header(names, rawOf(names), form);
      continue;
    }
    const { text, ends, faults, share } = portion;
    const faulty = new Map<number, Fault[]>();
    for (const fault of faults) faulty.set(fault.row, [...(faulty.get(fault.row) ?? []), fault]);
    let at = 0;
    for (let first = 0; first < ends.length; first += names.length) {
      const cells = names.map((_, i) => {
        const from = at;
        at = ends[first + i] as number;
        return text.slice(from, at);
      });
      number++;
      const own = faulty.get(first / names.length);
      if (own === undefined) visitor.row(cells, rawOf(cells), number);
      else {
        refused++;
        visitor.refused(refusalOf(own, names), rawOf(cells), number, cells);
      }
    }
    if (!portion.summed) summed = false;
    yield share;
  }
  yield 1;
  const skipped = { blank: 0, remarks: 0, preamble: 0 };
  const account = {
    rowsIn: rows,
    rows: number - refused,
    refused,
    skipped,
    behindSkipped: { first: 0, later: 0 },
    separator: undefined,
    torn: false,
  };
  return { account, summed };
}
