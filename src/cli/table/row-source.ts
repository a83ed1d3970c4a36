import type { VeladisError } from "../../core/index";

/** The written form of a table: what stands between cells, rows, and before all. */
export interface TableForm {
  readonly separator: string;
  readonly lineEnd: string;
  /** The bytes that mark a text as UTF-8, where the input began with them. */
  readonly mark: string;
  /** What the numbers of rows count. */
  readonly counted: "line" | "row";
}

/** One who is shown a table row by row. Raw rows are texts of one character a byte, so that any encoding passes. */
export interface RowVisitor {
  header(cells: readonly string[], raw: string, form: TableForm): void;
  /** @param line - the line of the file on which the row ends, or the number of the row */
  row(cells: readonly string[], raw: string, line: number): void;
  /** A row that the source itself cannot read whole. */
  refused(error: VeladisError, cells: readonly string[], raw: string, line: number): void;
  /** After each portion, with the share of the input read so far where that is known. */
  pause(share: number | undefined): void | Promise<void>;
}

/** Bytes of UTF-8 as a text of one character a byte. */
export function bytesOf(text: string): string {
  return /^[\x20-\x7e]*$/.test(text) ? text : Buffer.from(text, "utf8").toString("latin1");
}

/** A text as a cell of CSV: in quotes where it must be. */
export function quotedCell(text: string, separator: string): string {
  const plain = !text.includes(separator) && !/["\r\n]/.test(text);
  return plain ? text : `"${text.replaceAll('"', '""')}"`;
}
