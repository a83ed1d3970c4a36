/** The characters that may separate, in the order in which a row counts them. */
export const candidates = ["tab", "semicolon", "pipe", "comma"] as const;

/** A row of the first part of a file: where it stands, and how often each candidate stands in it outside quotes. */
export interface SampleRow {
  readonly start: number;
  /** Where its line end begins. */
  readonly end: number;
  readonly counts: readonly [tab: number, semicolon: number, pipe: number, comma: number];
  /** Its line, from 1. */
  readonly line: number;
  /** Whether it has a line end. */
  readonly ended: boolean;
}

const columns: Readonly<Record<number, 0 | 1 | 2 | 3>> = { 9: 0, 59: 1, 124: 2, 44: 3 };
const QUOTE = 34;

/** The text of a row of the sample, cut where it is long. */
export function rowText(bytes: Buffer, { start, end }: SampleRow): string {
  return bytes.toString("utf8", start, Math.min(end, start + 4096)).trim();
}

/** How a sample is to be read. */
export interface SampledAs {
  readonly start: number;
  /** The line on which it starts. */
  readonly line: number;
  readonly lineEnd: "\n" | "\r";
  readonly sign: string | undefined;
  readonly quotes: boolean;
}

/** Whether only spaces and tabs stand there. */
function isBlank(bytes: Buffer, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (bytes[at] !== 32 && bytes[at] !== 9 && bytes[at] !== 13) return false;
  return true;
}

/**
 * The first rows of a table, without blank lines and remarks; a quote opens where a cell does, whatever separates.
 *
 * @param most - how many rows are wanted
 */
export function sampleRows(bytes: Buffer, most: number, as: SampledAs): SampleRow[] {
  const { lineEnd, sign, quotes } = as;
  const end = lineEnd.charCodeAt(0);
  const remark = sign === undefined ? undefined : Buffer.from(sign);
  const rows: SampleRow[] = [];
  let { start, line } = as;
  while (start < bytes.length && rows.length < most) {
    const isRemark = remark?.equals(bytes.subarray(start, start + remark.length)) === true;
    const counts: [number, number, number, number] = [0, 0, 0, 0];
    let quoted = false;
    let opens = true;
    let lines = 1;
    let at = start;
    for (; at < bytes.length; at++) {
      const byte = bytes[at] as number;
      if (byte === end) {
        if (!quoted) break;
        lines++;
      } else if (quoted) {
        if (byte === QUOTE && bytes[at + 1] === QUOTE) at++;
        else if (byte === QUOTE) quoted = false;
      } else if (byte === QUOTE && opens && quotes && !isRemark) quoted = true;
      else {
        const column = columns[byte];
        if (column !== undefined) counts[column]++;
        opens = column !== undefined;
      }
    }
    if (!isRemark && !isBlank(bytes, start, at)) {
      rows.push({ start, end: at, counts, line, ended: at < bytes.length });
    }
    start = at + 1;
    line += lines;
  }
  return rows;
}
