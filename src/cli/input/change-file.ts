import { constants } from "node:fs";
import { lstat, open } from "node:fs/promises";
import { cellText, shown, VeladisError } from "../../core/index";
import { type ChangeCells, type ChangeRecord, changeTitles, parseChanges } from "../../plant/index";
import { bytesOf, quotedCell } from "../delimited/cells";
import { accountOf, readDelimited } from "../delimited/read-delimited";
import type { TableForm } from "../delimited/table-form";
import type { WrittenAs } from "../delimited/written-as";
import { openFile } from "./open-file";

/** How dates in a record are written. */
type Dates = "day-first" | "month-first" | undefined;

/** A record of changes as read, and how a row is added to its file. */
export interface ChangeFile {
  readonly record: ChangeRecord;
  /** The bytes of an entry, with what must stand before it, as the file is written. */
  bytesOf(cells: ChangeCells): Buffer;
  /** The line on which the next row begins. */
  readonly line: number;
  /** Bytes of the file as it was read; 0 for one that is not there. */
  readonly size: number;
}

/** The record in a file of delimited text; refused rows are among those that it refuses. */
export async function changeFile(path: string, as: WrittenAs, dates: Dates): Promise<ChangeFile> {
  if ((await lstat(path).catch(() => undefined)) === undefined) return newFile(as);
  let heading: readonly string[] = [];
  let form: TableForm | undefined;
  const rows: (readonly string[])[] = [];
  const lines: number[] = [];
  const torn: ChangeRecord["refused"][number][] = [];
  const stream = await openFile(path);
  const account = await accountOf(
    readDelimited(stream, path, as, {
      header(cells, _raw, told) {
        heading = cells;
        form = told;
      },
      row(cells, _raw, line) {
        rows.push(cells);
        lines.push(line);
      },
      refused: ({ code, message }, _raw, line) => void torn.push({ line, tag: "", code, message }),
    }),
  );
  const { changes, refused } = parseChanges(
    { heading, rows, lines },
    { ...(as.decimalComma && { decimal: "," }), ...(dates !== undefined && { dates }) },
  );
  const all = [...refused, ...torn].sort((a, b) => a.line - b.line);
  const last = Math.max(0, ...lines, ...torn.map(({ line }) => line));
  if (account.torn && all.some(({ line }) => line === last)) {
    throw new VeladisError("syntax", {
      expected: "a record whose last row is whole: mend it first, for a row behind it would become a part of it",
      received: `${shown(path)}, torn at line ${last}`,
    });
  }
  const told = form as TableForm;
  const names = heading.map((text) => text.trim().toLowerCase().replace(/[\s_-]+/g, " "));
  return {
    record: { changes, refused: all },
    line: Math.max(1, last) + 1,
    size: stream.bytesRead,
    bytesOf: (cells) => encodedRow(names.map((name) => cells[name as keyof ChangeCells] ?? ""), told, account.torn),
  };
}

/** A row as the file is written, behind a last row that has no line end yet. */
function encodedRow(cells: readonly string[], { separator, lineEnd, encoding = "utf-8", quotes }: TableForm, torn: boolean): Buffer {
  if (encoding !== "utf-8") {
    throw new VeladisError("out-of-range", { expected: "a record of changes in UTF-8, to add a row to", received: encoding });
  }
  if (quotes !== undefined) {
    throw new VeladisError("out-of-range", { expected: "a record of changes with quotation marks about cells", received: "--quotes none" });
  }
  const row = `${cells.map((cell) => quotedCell(cellText(cell), separator)).join(separator)}${lineEnd}`;
  return Buffer.from(bytesOf(torn ? lineEnd + row : row), "latin1");
}

/** A file that is not there yet begins with the headings. */
function newFile({ decimalComma }: WrittenAs): ChangeFile {
  const form = { separator: decimalComma ? ";" : ",", lineEnd: "\n", mark: "", counted: "line" } as TableForm;
  return {
    record: { changes: [], refused: [] },
    line: 2,
    size: 0,
    bytesOf: (cells) =>
      Buffer.concat([encodedRow(changeTitles, form, false), encodedRow(changeTitles.map((title) => cells[title]), form, false)]),
  };
}

const MAKE = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | (constants.O_NOFOLLOW ?? 0);
const APPEND = constants.O_WRONLY | constants.O_APPEND | (constants.O_NOFOLLOW ?? 0);

/**
 * Adds bytes to the end of a file, in one write and brought to the disk; one that is not there is made. Nothing that stands
 * there is written again, so that of two who write at once each row is kept.
 *
 * @throws {@link VeladisError} `unwritable`, also for a file that another has changed since it was read
 */
export async function appended(path: string, { size }: ChangeFile, bytes: Buffer): Promise<void> {
  const refuse = (received: string): never => {
    throw new VeladisError("unwritable", { expected: "a record of changes that can be added to", received: `${shown(path)}: ${received}` });
  };
  const file = await open(path, size === 0 ? MAKE : APPEND, 0o666).catch(({ code }: NodeJS.ErrnoException) => refuse(`${code}`));
  try {
    const found = await file.stat();
    if (!found.isFile()) refuse("no plain file");
    if (found.size !== size) refuse("changed since it was read; try again");
    const { bytesWritten } = await file.write(bytes);
    if (bytesWritten < bytes.length) refuse("no room for the whole row: look at its last line");
    await file.sync();
  } finally {
    await file.close();
  }
}
