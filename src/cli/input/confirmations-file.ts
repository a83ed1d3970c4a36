import { basename } from "node:path";
import { text } from "node:stream/consumers";
import { VeladisError } from "../../core/index";
import type { Confirmation } from "../../severity/index";
import { accountOf, readDelimited } from "../delimited/read-delimited";
import type { ConfirmationColumn } from "./confirmation-columns";
import {
  confirmationCells,
  confirmationHeader,
  confirmationOfRow,
  hasDecimalComma,
  isFilledIn,
} from "./confirmation-row";
import { signatures } from "./confirmation-signature";
import { confirmationsOfJson } from "./confirmations-json";
import { openFile } from "./open-file";

/** What a file of confirmations holds. */
export interface ConfirmationsRead {
  /** Each with the line on which it stands. */
  readonly confirmations: readonly Confirmation[];
  /** What is wrong with rows that hold none, with their lines. */
  readonly faults: readonly VeladisError[];
  /** Lines that were passed over as remarks. */
  readonly remarks: number;
}

/** Why the reader refused a row; a row with the sign of remarks in front may be one that somebody struck out. */
function rowFault({ code, expected, received }: VeladisError, raw: string, at: string): VeladisError {
  const wanted = raw.startsWith("#")
    ? "a row without # in front, or a remark, which has other cells than a row"
    : expected;
  return new VeladisError(code, { expected: `${at}: ${wanted}`, received });
}

/** The confirmations of delimited text; rows in which nothing is filled in are passed over. */
async function ofDelimited(path: string, name: string): Promise<ConfirmationsRead> {
  let columns: readonly ConfirmationColumn[] = [];
  const rows: { readonly cells: readonly string[]; readonly line: number }[] = [];
  const faults: VeladisError[] = [];
  const stream = await openFile(path);
  const written = { decimalComma: false };
  const reading = readDelimited(stream, name, written, {
    header(cells) {
      columns = confirmationHeader(cells, `the header of ${name}`);
    },
    row: (cells, _, line) => void rows.push({ cells, line }),
    refused: (error, raw, line) => void faults.push(rowFault(error, raw, `line ${line} of ${name}`)),
  });
  const { torn, separator, skipped } = await accountOf(reading);
  if (torn) {
    throw new VeladisError("syntax", {
      expected: `a line end behind the last row of ${name}`,
      received: "none: the file may be torn off there",
    });
  }
  const cells = rows.map((row) => row.cells);
  const decimalComma = separator !== "comma" && hasDecimalComma(columns, cells);
  const { take, signed } = signatures();
  const confirmations = rows.flatMap((row) => {
    const at = `line ${row.line} of ${name}`;
    const cells = confirmationCells(columns, row.cells);
    try {
      if (take(cells, at) || !isFilledIn(cells)) return [];
      return confirmationOfRow(signed(cells), at, decimalComma);
    } catch (error) {
      if (!(error instanceof VeladisError)) throw error;
      faults.push(error);
      return [];
    }
  });
  return { confirmations, faults, remarks: skipped.remarks };
}

/**
 * The confirmations that a file holds, CSV or JSON.
 *
 * @throws {@link VeladisError} `missing-fact` for what cannot be read and for a file in which nothing is filled in, and
 *   whatever is wrong with the file as a whole
 */
export async function confirmationsOfFile(path: string): Promise<ConfirmationsRead> {
  const name = basename(path);
  const isJson = path.toLowerCase().endsWith(".json");
  const read = isJson
    ? { ...confirmationsOfJson(await text(await openFile(path)), name), remarks: 0 }
    : await ofDelimited(path, name);
  if (read.confirmations.length + read.faults.length > 0) return read;
  throw new VeladisError("missing-fact", {
    expected: `a confirmation in ${name}`,
    received: "no row that is filled in",
  });
}
