/** A column of a text table. */
export interface Column {
  readonly title: string;
  /** Numbers stand to the right. */
  readonly align?: "left" | "right";
}

/** Rows as a table of text: columns as wide as their widest cell, two spaces between. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map(({ title }, i) => Math.max(title.length, ...rows.map((row) => (row[i] ?? "").length)));
  const line = (cells: readonly string[]): string =>
    columns
      .map(({ align }, i) => {
        const cell = cells[i] ?? "";
        const width = widths[i] as number;
        return align === "right" ? cell.padStart(width) : cell.padEnd(width);
      })
      .join("  ")
      .trimEnd();
  const rule = widths.map((width) => "-".repeat(width));
  return [line(columns.map(({ title }) => title)), line(rule), ...rows.map(line)].map((text) => `${text}\n`).join("");
}
