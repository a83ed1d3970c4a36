import { Readable } from "node:stream";
import { CsvError, parse } from "csv-parse";
import { VeladisError } from "../../core/index";

/** One row of CSV: its line in the file, its cells, and itself as it was written. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  readonly raw: string;
}

/** The separator that a header line uses: comma, semicolon or tab, whichever it has most of. */
export function separatorOf(header: string): string {
  const count = (separator: string): number => header.split(separator).length;
  return [",", ";", "\t"].reduce((best, next) => (count(next) > count(best) ? next : best));
}

/** A row without the line ends behind it. */
function withoutEnd(raw: string): string {
  // a pattern would search anew from each of the empty lines before the row
  let end = raw.length;
  while (raw[end - 1] === "\n" || raw[end - 1] === "\r") end--;
  return raw.slice(0, end);
}

/** The rows of a stream of CSV, header first; memory for one chunk. */
export async function* csvRows(stream: Readable): AsyncGenerator<CsvRow> {
  const chunks = stream[Symbol.asyncIterator]();
  const { value: first } = await chunks.next();
  if (first === undefined) return;
  const start = String(first);
  const delimiter = separatorOf(start.slice(0, start.search(/[\r\n]|$/)));
  const whole = Readable.from(
    (async function* () {
      yield first;
      yield* { [Symbol.asyncIterator]: () => chunks };
    })(),
  );
  const rows = whole.pipe(
    parse({ bom: true, delimiter, raw: true, info: true, relax_column_count: true, skip_empty_lines: true }),
  );
  try {
    for await (const { record, raw, info } of rows) yield { line: info.lines, cells: record, raw: withoutEnd(raw) };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new VeladisError("syntax", { expected: "CSV, with quotes doubled within quotes", received: error.message });
  }
}
