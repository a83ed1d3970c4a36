import { largestOf, visibleText } from "../../core/index";
import { type Column, tableLine } from "./text-table";

/** A column whose cells may take several lines: those they come in, and more where it is broken to fit. */
export interface WrappedColumn extends Column {
  /** Shares what is left of the width with the others that do, and is broken at spaces. */
  readonly wraps?: true;
}

/** A text in lines of a width; a word that is longer is cut. */
function linesIn(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  // a number and what it is of stay together
  for (const word of text.split(/(?<!\d) | (?=\()/)) {
    let rest = word;
    if (line !== "" && line.length + 1 + rest.length > width) {
      lines.push(line);
      line = "";
    }
    while (rest.length > width) {
      lines.push(rest.slice(0, width));
      rest = rest.slice(width);
    }
    line = line === "" ? rest : `${line} ${rest}`;
  }
  return [...lines, line];
}

/**
 * Rows as a table of text no wider than `width`: a cell is a list of lines, and a column that wraps is broken to fit.
 *
 * A column that is empty in all rows is left out.
 */
export function wrappedTable(
  columns: readonly WrappedColumn[],
  rows: readonly (readonly (readonly string[])[])[],
  width = 100,
): string {
  const isUsed = columns.map((_column, i) => rows.some((row) => row[i]?.some((line) => line !== "")));
  const used = columns.filter((_column, i) => isUsed[i]);
  const shown = rows.map((row) => row.filter((_cell, i) => isUsed[i]).map((lines) => lines.map(visibleText)));
  const own = used.map(({ title }, i) =>
    largestOf([title.length, ...shown.map((row) => largestOf((row[i] ?? []).map((line) => line.length)))]),
  );
  const wraps = used.map((column) => column.wraps === true);
  const fixed = own.reduce((sum, one, i) => (wraps[i] ? sum : sum + one), 2 * (used.length - 1));
  const asked = own.reduce((sum, one, i) => (wraps[i] ? sum + one : sum), 0);
  const left = Math.max(width - fixed, 10 * wraps.filter(Boolean).length);
  // by the square root of what each asks for, so that a long one does not starve a short one
  const weight = own.map((one, i) => (wraps[i] ? Math.sqrt(one) : 0));
  const sum = weight.reduce((a, b) => a + b, 0);
  const widths = own.map((one, i) =>
    !wraps[i] || asked <= left ? one : Math.max(8, Math.floor((left * (weight[i] as number)) / sum)),
  );
  const lineOf = (cells: readonly string[]): string => tableLine(cells, used, widths);
  const body = shown.flatMap((row) => {
    const cells = row.map((lines, i) =>
      wraps[i] ? lines.flatMap((line) => linesIn(line, widths[i] as number)) : lines,
    );
    const height = largestOf(cells.map((lines) => lines.length));
    return Array.from({ length: height }, (_, k) => lineOf(cells.map((lines) => lines[k] ?? "")));
  });
  const titles = lineOf(used.map(({ title }) => title));
  const rule = lineOf(widths.map((one) => "-".repeat(one)));
  return [titles, rule, ...body].map((line) => `${line}\n`).join("");
}
