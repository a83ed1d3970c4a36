import { VeladisError } from "../../core/index";
import { chosenSeparator, separatorLine } from "./chosen-separator";
import { requireQuotedDecimals } from "./quoted-decimals";
import { endlessRow, LONGEST, refusedFile } from "./refused-file";
import { rowText, type SampleRow, sampleRows } from "./sample-rows";
import type { SeparatorName } from "./separators";
import type { WrittenAs } from "./written-as";

/** The rows, and the bytes, from which a separator is chosen. */
const MOST_ROWS = 1000;
const MOST_BYTES = 1 << 22;

/** What the first part of a file says of the whole. */
export interface Layout {
  /** The character that ends a row; before a line feed a carriage return may stand. */
  readonly rowEnd: "\n" | "\r";
  /** The line end of the header, for rows that are written. */
  readonly lineEnd: string;
  /** Where what is below the preamble begins. */
  readonly start: number;
  /** Lines above that. */
  readonly preamble: number;
  readonly separator: SeparatorName;
}

/** The sign of remarks, if there are any. */
export function signOf({ remarks = "#" }: WrittenAs): string | undefined {
  return remarks === "none" ? undefined : remarks;
}

/** A carriage return ends rows only where no line feed stands in the first megabyte; undefined until that is known. */
function rowEndOf(bytes: Buffer, whole: boolean): "\n" | "\r" | undefined {
  const first = bytes.subarray(0, LONGEST);
  if (first.includes(10)) return "\n";
  if (!whole && bytes.length < LONGEST) return undefined;
  return first.includes(13) ? "\r" : "\n";
}

/** Where the line after so many lines begins, or undefined where the bytes end before. */
function lineAfter(bytes: Buffer, lines: number, rowEnd: string): number | undefined {
  let start = 0;
  for (let line = 0; line < lines; line++) {
    const end = bytes.indexOf(rowEnd, start);
    if (end < 0) return undefined;
    start = end + 1;
  }
  return start;
}

/** The separator that options and a line above the header tell. */
function toldSeparator({ separator }: WrittenAs, line: SeparatorName | undefined) {
  if (separator === undefined || line === undefined || separator === line) return separator ?? line;
  throw new VeladisError("unknown-option", {
    expected: "one separator",
    received: `--separator ${separator}, and a line in the file that says ${line}`,
  });
}

/**
 * What the first part of a file says of the whole; undefined where more of it is needed.
 *
 * @param whole - whether that part is all there is
 * @throws {@link VeladisError} where there is no header, two separators are possible, or a comma may be either
 */
export function layoutOf(bytes: Buffer, whole: boolean, as: WrittenAs, name: string): Layout | undefined {
  const rowEnd = rowEndOf(bytes, whole);
  if (rowEnd === undefined) return undefined;
  const enough = whole || bytes.length >= MOST_BYTES;
  const first = bytes.toString("utf8", 0, Math.min(16, Math.max(bytes.indexOf(rowEnd), 0)));
  const told = as.headerLine === 1 ? undefined : separatorLine(first);
  const preamble = as.headerLine === undefined ? (told === undefined ? 0 : 1) : as.headerLine - 1;
  const start = lineAfter(bytes, preamble, rowEnd);
  const separator = toldSeparator(as, told);
  if (start === undefined) {
    if (!enough) return undefined;
    throw refusedFile("a header there", "fewer lines above", preamble + 1, name);
  }
  const isCommaTwice = separator === "comma" && as.decimalComma;
  const wanted = separator === undefined || isCommaTwice ? MOST_ROWS + 1 : 1;
  const sampled = { start, line: preamble + 1, lineEnd: rowEnd, sign: signOf(as), quotes: as.quotes === undefined };
  const found = sampleRows(bytes, wanted, sampled);
  const rows = whole ? found : found.filter(({ ended }) => ended);
  if (rows.length < wanted && !enough) return undefined;
  const header = rows[0];
  if (header === undefined) {
    if (!whole) throw endlessRow(preamble + 1, name);
    throw new VeladisError("missing-fact", { expected: "a header line, and rows below it", received: "nothing" });
  }
  if (as.headerLine !== undefined && header.line !== as.headerLine) {
    throw refusedFile(
      "a header there, where --header-line says it is (--remarks none for one that begins with the sign of remarks)",
      "a blank line or a remark",
      as.headerLine,
      name,
    );
  }
  if (isCommaTwice) {
    const below = found.slice(1).map((row) => rowText(bytes, row));
    requireQuotedDecimals(below, as.quotes === undefined);
  }
  const lineEnd = rowEnd === "\n" && bytes[header.end - 1] === 13 ? "\r\n" : rowEnd;
  const chosen = separator ?? chosenSeparator({ bytes, rows: rows as SampleRow[], name }, as.decimalComma);
  return { rowEnd, lineEnd, start, preamble, separator: chosen };
}
