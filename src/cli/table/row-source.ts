import type { DelimitedVisitor } from "../delimited/read-delimited";

/** One who is shown a table row by row, and may take a breath. Raw rows are texts of one character a byte. */
export interface RowVisitor extends DelimitedVisitor {
  /** After each portion, with the share of the input read so far where that is known. */
  pause(share: number | undefined): void | Promise<void>;
}
