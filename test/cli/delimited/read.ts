import { Readable } from "node:stream";
import { accountText } from "../../../src/cli/delimited/account-text";
import {
  accountOf,
  type DelimitedVisitor,
  type RowAccount,
  readDelimited,
} from "../../../src/cli/delimited/read-delimited";
import type { TableForm } from "../../../src/cli/delimited/table-form";
import type { WrittenAs } from "../../../src/cli/delimited/written-as";

/** A row as it was shown. */
interface ShownRow {
  readonly cells: readonly string[];
  readonly raw: string;
  readonly line: number;
}

/** A row that was refused: with which code, what was expected, and what received. */
interface RefusedRow extends ShownRow {
  readonly why: string;
  readonly expected: string;
  readonly received: string;
}

/** All that reading a file gave. */
export interface ReadFile {
  readonly header: readonly string[];
  readonly form: TableForm;
  readonly rows: readonly ShownRow[];
  readonly refused: readonly RefusedRow[];
  readonly account: RowAccount;
  /** The line of the account, as it is printed. */
  readonly told: string;
}

/** Reads a text or bytes that come in pieces cut at these places; the account is checked. */
export async function readText(
  content: string | Buffer,
  as: Partial<WrittenAs> = {},
  cuts: readonly number[] = [],
): Promise<ReadFile> {
  const bytes = Buffer.from(content);
  const places = [0, ...cuts.map((cut) => cut % (bytes.length + 1)).sort((a, b) => a - b), bytes.length];
  const pieces = places.slice(1).map((end, i) => bytes.subarray(places[i], end));
  const rows: ShownRow[] = [];
  const refused: RefusedRow[] = [];
  let opened: { header: readonly string[]; form: TableForm } | undefined;
  const visitor: DelimitedVisitor = {
    header(header, _raw, form) {
      opened = { header, form };
    },
    row: (cells, raw, line) => void rows.push({ cells, raw, line }),
    refused: ({ code, expected, received }, raw, line, cells) =>
      void refused.push({ cells, raw, line, why: code, expected, received }),
  };
  const reading = readDelimited(Readable.from(pieces), "file.csv", { decimalComma: false, ...as }, visitor);
  const account = await accountOf(reading);
  const told = accountText(account, { answered: rows.length, refused: refused.length }, false);
  return { ...(opened as NonNullable<typeof opened>), rows, refused, account, told };
}
