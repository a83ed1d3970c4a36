import type { VeladisError } from "../../core/index";
import type { Answer, Tail } from "./row-answers";
import { bytesOf, quotedCell, type TableForm } from "./row-source";

/** How answered and refused rows are written; all texts are of one character a byte. */
export interface RowOutput {
  header(raw: string): string;
  row(raw: string, cells: readonly string[], line: number, answer: Answer): string;
  refusedHeader(raw: string): string;
  refusedRow(raw: string, cells: readonly string[], line: number, error: VeladisError): string;
}

/** Rows as they were, with cells behind them; refused rows with the line and the reason before them. */
export function csvOutput(titles: readonly string[], { separator, lineEnd, mark }: TableForm): RowOutput {
  const cell = (text: string): string => bytesOf(quotedCell(text, separator));
  let lastTail: Tail | undefined;
  let lastText = "";
  const texts = new WeakMap<Tail, string>();
  const textOf = (tail: Tail): string => {
    if (tail === lastTail) return lastText;
    let text = texts.get(tail);
    if (text === undefined) {
      text = `${tail.cells.map((one) => separator + cell(one)).join("")}${lineEnd}`;
      texts.set(tail, text);
    }
    lastTail = tail;
    lastText = text;
    return text;
  };
  return {
    header: (raw) => `${mark}${raw}${titles.map((title) => separator + cell(title)).join("")}${lineEnd}`,
    row(raw, _cells, _line, { values, tail }) {
      let row = raw;
      for (const value of values) row += separator + value;
      return row + textOf(tail);
    },
    refusedHeader: (raw) => `${mark}${["line", "refused", "reason"].join(separator)}${separator}${raw}${lineEnd}`,
    refusedRow: (raw, _cells, line, { code, message }) =>
      `${line}${separator}${code}${separator}${cell(message)}${separator}${raw}${lineEnd}`,
  };
}

/** Each row an object on a line: the line of the file, the cells by their titles, what is added by its own. */
export function jsonOutput(titles: readonly string[], header: readonly string[]): RowOutput {
  const line = (value: object): string => bytesOf(`${JSON.stringify(value)}\n`);
  const named = (cells: readonly string[]): object => Object.fromEntries(header.map((title, i) => [title, cells[i]]));
  return {
    header: () => "",
    row(_raw, cells, at, { values, tail }) {
      const added = [...values, ...tail.cells];
      return line({ line: at, row: named(cells), ...Object.fromEntries(titles.map((title, i) => [title, added[i]])) });
    },
    refusedHeader: () => "",
    refusedRow: (_raw, cells, at, { name, message, ...detail }) =>
      line({ line: at, row: named(cells), error: { ...detail, message } }),
  };
}
