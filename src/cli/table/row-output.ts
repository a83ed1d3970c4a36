import { cellText, jsonText, shown, VeladisError } from "../../core/index";
import { bytesOf } from "../delimited/cells";
import { delimitedWriter } from "../delimited/delimited-writer";
import type { TableForm } from "../delimited/table-form";
import type { ByteSink } from "./byte-sink";
import type { Answer, Tail } from "./row-answers";

/** A row as it was read: its text, its cells and its number. */
interface ReadRow {
  readonly raw: string;
  readonly cells: readonly string[];
  readonly line: number;
}

/** How answered and refused rows are written; all texts are bytes of UTF-8, one character a byte. */
export interface RowOutput {
  /** The same bytes in the encoding of the output. */
  encoded(bytes: Buffer): Buffer;
  /** @param units - the row of units below it */
  header(raw: string, units?: string): string;
  /** Adds a row, or throws and adds nothing. */
  row(into: ByteSink, read: ReadRow, answer: Answer): void;
  refusedHeader(raw: string): string;
  refusedRow(read: ReadRow, error: VeladisError): string;
}

/** Rows as they were, with cells behind them; refused rows with the line and the reason before them. */
export function csvOutput(titles: readonly string[], form: TableForm, decimalComma: boolean): RowOutput {
  const { separator, lineEnd, counted } = form;
  const { start, cell, number, kept, encoded } = delimitedWriter(form, decimalComma);
  // behind line and reason nothing can be shifted
  const asRead = (raw: string): string => (form.quotes === undefined ? kept(raw) : raw);
  let lastTail: Tail | undefined;
  let lastBytes: Buffer = Buffer.alloc(0);
  const ends = new WeakMap<Tail, Buffer>();
  const bytesBehind = (tail: Tail): Buffer => {
    if (tail === lastTail) return lastBytes;
    let bytes = ends.get(tail);
    if (bytes === undefined) {
      bytes = Buffer.from(`${tail.cells.map((one) => separator + cell(cellText(one))).join("")}${lineEnd}`, "latin1");
      ends.set(tail, bytes);
    }
    lastTail = tail;
    lastBytes = bytes;
    return bytes;
  };
  return {
    encoded,
    header(raw, units) {
      const header = `${start}${kept(raw)}${titles.map((title) => separator + cell(title)).join("")}${lineEnd}`;
      // with nothing below the new titles, which say their units themselves
      return units === undefined ? header : `${header}${kept(units)}${separator.repeat(titles.length)}${lineEnd}`;
    },
    row(into, { raw }, { values, tail }) {
      let row = kept(raw);
      for (const value of values) row += separator + number(value);
      const behind = bytesBehind(tail);
      into.text(row);
      into.bytes(behind);
    },
    refusedHeader: (raw) =>
      `${start}${[counted, "refused", "reason"].join(separator)}${separator}${asRead(raw)}${lineEnd}`,
    refusedRow: ({ raw, line }, { code, message }) =>
      `${line}${separator}${code}${separator}${cell(cellText(message))}${separator}${asRead(raw)}${lineEnd}`,
  };
}

/** Each row an object on a line: its number, the cells by their titles, and what is added. */
export function jsonOutput(titles: readonly string[], header: readonly string[], { counted }: TableForm): RowOutput {
  const twice = header.find((title, i) => header.indexOf(title) !== i);
  if (twice !== undefined) {
    throw new VeladisError("syntax", {
      expected: "columns with names of their own, for JSON",
      received: `two columns ${shown(twice)}`,
    });
  }
  const lineOf = (value: object): string => bytesOf(`${jsonText(value)}\n`);
  const named = (cells: readonly string[]): object => Object.fromEntries(header.map((title, i) => [title, cells[i]]));
  return {
    encoded: (bytes) => bytes,
    header: () => "",
    row(into, { cells, line: at }, { values, tail, explained }) {
      const added = [...values, ...tail.cells];
      into.text(
        lineOf({
          [counted]: at,
          cells: named(cells),
          ...Object.fromEntries(titles.map((title, i) => [title, added[i]])),
          ...explained,
        }),
      );
    },
    refusedHeader: () => "",
    refusedRow: ({ cells, line: at }, { name, message, ...detail }) =>
      lineOf({ [counted]: at, cells: named(cells), error: { ...detail, message } }),
  };
}
