import { counted } from "../../core/index";

/** Rows by number, and the lines on which the first of them begin. */
export interface RowLines {
  readonly rows: number;
  readonly lines: readonly number[];
}

/** Lines that are told one by one. */
export const MOST_LINES = 10;

/** Rows noted one by one, their lines up to {@link MOST_LINES}. */
export class NotedRows implements RowLines {
  rows = 0;
  readonly lines: number[] = [];

  note(line: number): void {
    this.rows++;
    if (this.lines.length < MOST_LINES) this.lines.push(line);
  }

  /** The same as data that no longer grows. */
  noted(): RowLines {
    return { rows: this.rows, lines: this.lines };
  }
}

/** How many rows, in words. */
export function rowsText(rows: number): string {
  return counted(rows, "row");
}

/** The lines in words, with how many are not told. */
export function linesText({ rows, lines }: RowLines): string {
  const more = rows > lines.length ? `, and ${rows - lines.length} more` : "";
  return `${lines.length === 1 ? "line" : "lines"} ${lines.join(", ")}${more}`;
}
