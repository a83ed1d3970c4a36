import { shown, VeladisError } from "../../core/index";
import { type Layout, signOf } from "./layout";
import { hasBareDecimal } from "./quoted-decimals";
import { hasLoneReturn, hasProperQuotes, splitOutsideQuotes } from "./quotes";
import { endlessRow, LONGEST, refusedFile } from "./refused-file";
import { isQuoteError, RowParser } from "./row-parser";
import { separators } from "./separators";
import type { TableForm, UnitsRow } from "./table-form";
import type { WrittenAs } from "./written-as";

/** One who is shown a table row by row. Raw rows are bytes of UTF-8, as texts of one character a byte. */
export interface DelimitedVisitor {
  /** @param units - the row of units below the header, which is no row of the table */
  header(cells: readonly string[], raw: string, form: TableForm, units?: UnitsRow): void;
  /** @param line - the line of the file on which the row begins */
  row(cells: readonly string[], raw: string, line: number): void;
  /** A row that is none of this table; the reader counts it as refused. */
  refused(error: VeladisError, raw: string, line: number, cells: readonly string[]): void;
}

/** What is known of a file before its rows are read. */
export interface Opened {
  readonly layout: Layout;
  readonly form: TableForm;
  readonly as: WrittenAs;
  readonly name: string;
}

/** Rows being read: bytes from the header on are taken, portion by portion. */
export interface RowReading {
  take(bytes: Buffer): Promise<void>;
  end(): Promise<void>;
  /** The line that was read last. */
  readonly line: number;
  readonly counts: {
    rows: number;
    refused: number;
    blank: number;
    remarks: number;
    readonly behindSkipped: { first: number; later: number };
    torn: boolean;
  };
}

const NEWLINE = 10;
const QUOTE = 34;
const RETURN = 13;
/** Bytes that a parser may leave for the next portion, though the row ends in them. */
const HELD_BACK = 4;

function utf8(raw: string): string {
  return Buffer.from(raw, "latin1").toString("utf8");
}

/** Reads rows and shows them to a visitor; memory for one portion and one row. */
export function rowReading({ layout, form, as, name }: Opened, visitor: DelimitedVisitor): RowReading {
  const { rowEnd } = layout;
  const separator = separators[layout.separator];
  const end = rowEnd.charCodeAt(0);
  const sign = signOf(as);
  const signBytes = Buffer.from(sign ?? "");
  const quotes = as.quotes === undefined;
  const isCommaTwice = as.decimalComma && separator === ",";
  const counts = { rows: 0, refused: 0, blank: 0, remarks: 0, behindSkipped: { first: 0, later: 0 }, torn: false };
  let line = layout.preamble + 1;
  let buffer: Buffer = Buffer.alloc(0);
  /** Places in the text: of the first byte kept, of the row that has not ended, of the parser's start. */
  let base = 0;
  let begun = 0;
  let origin = 0;
  let width = 0;
  /** Lines skipped when the row above was read. */
  let skippedAbove = 0;
  let parser: RowParser | undefined;
  /** Whether such characters stand in what is kept, or for the parser, in anything so far. */
  let withQuotes = false;
  let withRemarks = false;
  let withReturns = false;

  const refuse = (error: VeladisError, raw: string, at: number, cells: readonly string[]): void => {
    counts.refused++;
    visitor.refused(error, raw, at, cells);
  };

  /** Notes a row below the header that stands behind lines that were skipped. */
  const noteSkipped = (at: number): void => {
    const skipped = counts.blank + counts.remarks;
    if (skipped === skippedAbove) return;
    skippedAbove = skipped;
    const { behindSkipped: noted } = counts;
    if (width > 0 && counts.rows + counts.refused === 0) noted.first = at;
    else if (width > 0) noted.later ||= at;
  };

  /** A line that begins with the sign of remarks: one, unless it may be a row. */
  const remark = (raw: string, at: number): void => {
    const plain = raw.split(separator);
    const cells = plain.length !== width && quotes ? splitOutsideQuotes(raw, separator) : plain;
    if (as.remarks !== undefined || width < 2 || cells.length !== width) {
      counts.remarks++;
      return;
    }
    const expected = `a row or a remark: --remarks "${sign}" where all such lines are remarks, --remarks none where all are rows`;
    refuse(new VeladisError("syntax", { expected, received: shown(utf8(raw)) }), raw, at, cells.map(utf8));
  };

  /** Passes over blank lines and remarks that stand before a row; gives where that begins. */
  const passOver = (from: number, to: number): number => {
    let at = from;
    while (at < to) {
      const isRemark = sign !== undefined && signBytes.equals(buffer.subarray(at, at + signBytes.length));
      const wide = buffer[at] === RETURN && buffer[at + 1] === NEWLINE && end === NEWLINE;
      if (!isRemark && !wide && buffer[at] !== end) break;
      const found = buffer.indexOf(end, at);
      const stop = found < 0 || found >= to ? to : found;
      if (isRemark) remark(buffer.toString("latin1", at, stop).replace(/\r$/, ""), line);
      else counts.blank++;
      line++;
      at = stop + 1;
    }
    return Math.max(from, Math.min(at, to));
  };

  const check = (raw: string, at: number): void => {
    if (raw.length > LONGEST) throw endlessRow(at, name);
    // the parser lets a sign of remarks stand behind a closing quote
    if (withRemarks && raw.includes(`"${sign}`) && quotes && !hasProperQuotes(raw, separator)) throw oddQuotes(raw, at);
  };
  const oddQuotes = (raw: string, at: number): VeladisError =>
    refusedFile(
      "quotation marks about whole cells, doubled within them (--quotes none: they are plain characters)",
      shown(utf8(raw.slice(0, 256))),
      at,
      name,
    );

  const each = (cells: readonly string[], stop: number): void => {
    const place = origin + stop;
    let from = begun - base;
    let to = place - base;
    const first = buffer[from];
    if (first === NEWLINE || first === RETURN || (sign !== undefined && first === signBytes[0]))
      from = passOver(from, to);
    counts.torn = buffer[to - 1] !== end;
    if (!counts.torn) to--;
    if (!counts.torn && end === NEWLINE && to > from && buffer[to - 1] === RETURN) to--;
    const raw = buffer.toString("latin1", from, to);
    const at = line++;
    begun = place;
    if (withQuotes && raw.includes(rowEnd)) line += raw.split(rowEnd).length - 1;
    check(raw, at);
    if (cells.length === 1 && raw.trim() === "") {
      counts.blank++;
      counts.torn = false;
      return;
    }
    noteSkipped(at);
    const lone = withReturns && hasLoneReturn(raw, quotes);
    if (width === 0) {
      if (lone) throw refusedFile("a header without a carriage return in it", shown(utf8(raw)), at, name);
      width = cells.length;
      visitor.header(cells, raw, form);
    } else if (lone) {
      const expected = "rows that end with a line feed, and no carriage return without one but in quotes";
      refuse(new VeladisError("syntax", { expected, received: shown(utf8(raw)) }), raw, at, cells);
    } else if (cells.length !== width) {
      // what is added would stand in another column
      const expected = `${width} ${width === 1 ? "cell" : "cells"}, as the header has`;
      refuse(new VeladisError("length-mismatch", { expected, received: `${cells.length}` }), raw, at, cells);
    } else if (isCommaTwice && hasBareDecimal(raw)) {
      const expected = 'a number in quotes, as in "4,1" or "4", where a comma stands for decimals and between cells';
      refuse(new VeladisError("syntax", { expected, received: shown(utf8(raw)) }), raw, at, cells);
    } else {
      counts.rows++;
      visitor.row(cells, raw, at);
    }
  };

  const told = async (act: Promise<void>): Promise<void> => {
    await act.catch((error: unknown) => {
      if (!isQuoteError(error)) throw error;
      const from = passOver(begun - base, buffer.length);
      throw oddQuotes(buffer.toString("latin1", from).split(rowEnd, 1)[0] as string, line);
    });
  };

  return {
    counts,
    get line() {
      return line + buffer.toString("latin1", begun - base).split(rowEnd).length - 1;
    },
    async take(bytes) {
      buffer = Buffer.concat([buffer.subarray(begun - base), bytes]);
      base = begun;
      withQuotes = buffer.includes(QUOTE);
      const remarks = sign !== undefined && (buffer.indexOf(signBytes) === 0 || buffer.includes(`${rowEnd}${sign}`));
      const returns = end === NEWLINE && buffer.includes(RETURN);
      let fresh = bytes;
      if (parser === undefined || (remarks && !withRemarks) || (returns && !withReturns)) {
        // a parser that looks for more begins anew at the row
        withRemarks ||= remarks;
        withReturns ||= returns;
        const lineEnds = withReturns ? ["\n", "\r\n"] : [rowEnd];
        parser = new RowParser({ separator, lineEnds, quotes, sign: withRemarks ? sign : undefined }, each);
        origin = begun;
        fresh = buffer;
      }
      await told(parser.taken(fresh));
      // what is passed over is no part of a long row
      begun = base + passOver(begun - base, buffer.lastIndexOf(end) + 1);
      if (base + buffer.length - begun > LONGEST + HELD_BACK) throw endlessRow(line, name);
    },
    async end() {
      if (parser !== undefined) await told(parser.ended());
      passOver(begun - base, buffer.length);
    },
  };
}
