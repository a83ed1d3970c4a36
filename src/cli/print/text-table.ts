import { largestOf, visibleText } from "../../core/index";

/** A column of a text table. */
export interface Column {
  readonly title: string;
  /** Numbers stand to the right. */
  readonly align?: "left" | "right";
}

/** A column of numbers. */
export function numberColumn(title: string): Column {
  return { title, align: "right" };
}

/** Cells as a line of a table: each as wide as its column, two spaces between. */
export function tableLine(cells: readonly string[], columns: readonly Column[], widths: readonly number[]): string {
  return columns
    .map(({ align }, i) => {
      const cell = cells[i] ?? "";
      const width = widths[i] as number;
      return align === "right" ? cell.padStart(width) : cell.padEnd(width);
    })
    .join("  ")
    .trimEnd();
}

/** Rows as a table of text, which may come from outside: columns as wide as their widest cell, two spaces between. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const titles = columns.map(({ title }) => visibleText(title));
  const shown = rows.map((row) => row.map(visibleText));
  const widths = titles.map((title, i) => largestOf([title.length, ...shown.map((row) => (row[i] ?? "").length)]));
  const line = (cells: readonly string[]): string => tableLine(cells, columns, widths);
  const rule = widths.map((width) => "-".repeat(width));
  return [line(titles), line(rule), ...shown.map(line)].map((text) => `${text}\n`).join("");
}
