import type { VeladisError } from "../../core/index";
import type { Answer } from "./row-answers";
import { bytesOf, quotedCell, type TableForm } from "./row-source";

/** How answered and refused rows are written; all texts are of one character a byte. */
export interface RowOutput {
  header(raw: string): string;
  row(raw: string, cells: readonly string[], line: number, added: readonly Answer[]): string;
  refusedHeader(raw: string): string;
  refusedRow(raw: string, cells: readonly string[], line: number, error: VeladisError): string;
}

/** Rows as they were, with cells behind them; refused rows with the line and the reason before them. */
export function csvOutput(titles: readonly string[], { separator, lineEnd, mark }: TableForm): RowOutput {
  const known = new Map<string, string>();
  const cell = (text: string): string => {
    let written = known.get(text);
    if (written === undefined) {
      written = bytesOf(quotedCell(text, separator));
      if (known.size > 1000) known.clear();
      known.set(text, written);
    }
    return written;
  };
  const reason = (text: string): string => bytesOf(quotedCell(text, separator));
  return {
    header: (raw) => `${mark}${raw}${titles.map((title) => separator + cell(title)).join("")}${lineEnd}`,
    row(raw, _cells, _line, added) {
      let row = raw;
      for (const one of added) row += separator + (typeof one === "number" ? one : cell(one));
      return row + lineEnd;
    },
    refusedHeader: (raw) => `${mark}${["line", "refused", "reason"].join(separator)}${separator}${raw}${lineEnd}`,
    refusedRow: (raw, _cells, line, { code, message }) =>
      `${line}${separator}${code}${separator}${reason(message)}${separator}${raw}${lineEnd}`,
  };
}

/** Each row an object on a line: the line of the file, the cells by their titles, what is added by its own. */
export function jsonOutput(titles: readonly string[], header: readonly string[]): RowOutput {
  const line = (value: object): string => bytesOf(`${JSON.stringify(value)}\n`);
  const named = (cells: readonly string[]): object => Object.fromEntries(header.map((title, i) => [title, cells[i]]));
  return {
    header: () => "",
    row: (_raw, cells, at, added) =>
      line({ line: at, row: named(cells), ...Object.fromEntries(titles.map((title, i) => [title, added[i]])) }),
    refusedHeader: () => "",
    refusedRow: (_raw, cells, at, { name, message, ...detail }) =>
      line({ line: at, row: named(cells), error: { ...detail, message } }),
  };
}
