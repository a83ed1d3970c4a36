import type { SeparatorName } from "./separators";

/** What became of the rows of a file. */
export interface RowAccount {
  /** All lines but that of the header, counted from the bytes; a row with line ends in its quotes is one. */
  readonly rowsIn: number;
  /** Rows that were handed over. */
  readonly rows: number;
  /** Rows that the reader refused. */
  readonly refused: number;
  /** Lines that are no rows. */
  readonly skipped: {
    readonly blank: number;
    readonly remarks: number;
    readonly preamble: number;
    /** 1 where a row of units stands below the header. */
    readonly units?: number;
  };
  /** That row. */
  readonly units?: { readonly line: number; readonly cells: readonly string[] };
  /** The lines of the first row, and of the first later one, that stand behind such a line below the header; 0 for none. */
  readonly behindSkipped: { readonly first: number; readonly later: number };
  /** None where the file is no delimited text. */
  readonly separator: SeparatorName | undefined;
  /** Whether the last row has no line end. */
  readonly torn: boolean;
}
