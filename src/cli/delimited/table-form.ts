import type { Encoding } from "./encodings";

/** The written form of a table: what stands between cells, rows, and before all. */
export interface TableForm {
  /** What stands between cells; of one column, what cells behind it are parted by. */
  readonly separator: string;
  readonly lineEnd: string;
  /** The mark of the encoding that the input began with, as the bytes of UTF-8, or nothing. */
  readonly mark: string;
  /** What the numbers of rows count. */
  readonly counted: "line" | "row";
  /** UTF-8 where it is not said. */
  readonly encoding?: Encoding;
  /** The lines above the header, with their ends. */
  readonly preamble?: string;
  /** A quotation mark is a plain character. */
  readonly quotes?: "none";
  /** There is one column, whose cells may hold the separator. */
  readonly single?: boolean;
}

/** A row of units below the header. */
export interface UnitsRow {
  readonly cells: readonly string[];
  readonly raw: string;
  readonly line: number;
}
