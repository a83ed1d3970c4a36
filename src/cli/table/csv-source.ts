import type { Readable } from "node:stream";
import { CsvError, Parser } from "csv-parse";
import { VeladisError } from "../../core/index";
import { separatorOf } from "../input/csv-rows";
import type { RowVisitor } from "./row-source";

/** A row beyond this has an opening quote that nothing closes. */
const LONGEST = 1 << 20;
const UTF8_MARK = "\u00ef\u00bb\u00bf";

/** The bytes of a stream in UTF-8, where it begins with the mark of UTF-16 translated. */
async function* utf8Of(stream: Readable): AsyncGenerator<Buffer> {
  let decoder: InstanceType<typeof TextDecoder> | undefined;
  let first = true;
  for await (const chunk of stream) {
    const bytes: Buffer = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
    if (first && bytes[0] === 0xff && bytes[1] === 0xfe) decoder = new TextDecoder("utf-16le");
    if (first && bytes[0] === 0xfe && bytes[1] === 0xff) decoder = new TextDecoder("utf-16be");
    first = false;
    yield decoder === undefined ? bytes : Buffer.from(decoder.decode(bytes, { stream: true }));
  }
}

/** Chunks, the first of which holds the whole header line. */
async function* fromHeader(chunks: AsyncIterable<Buffer>): AsyncGenerator<Buffer> {
  let start: Buffer | undefined = Buffer.alloc(0);
  for await (const chunk of chunks) {
    if (start === undefined) yield chunk;
    else {
      start = Buffer.concat([start, chunk]);
      if (!/[^\r\n]\r?\n|[^\r\n]\r[^\n]/.test(start.toString("latin1")) && start.length < LONGEST) continue;
      yield start;
      start = undefined;
    }
  }
  if (start !== undefined && start.length > 0) yield start;
}

/** A parser that hands each row to a function, with nothing between: a stream of records would cost a third. */
class RowParser extends Parser {
  each: (cells: readonly string[], end: number, line: number) => void = () => undefined;

  override push(record: readonly string[] | null): boolean {
    if (record === null) return super.push(null);
    this.each(record, this.info.bytes, this.info.lines);
    return true;
  }
}

const isEnd = (code: number): boolean => code === 10 || code === 13;

/** The row between two places of the bytes, without line ends and blank lines about it. */
function rowBetween(bytes: Buffer, from: number, to: number): string {
  let start = from;
  let end = to;
  while (start < end && isEnd(bytes[start] as number)) start++;
  while (end > start && isEnd(bytes[end - 1] as number)) end--;
  return bytes.toString("latin1", start, end);
}

function settled(act: (done: (error?: Error | null) => void) => void): Promise<void> {
  return new Promise<void>((resolve, reject) => {
    act((error) => (error ? reject(error) : resolve()));
  }).catch((error: unknown) => {
    if (!(error instanceof CsvError)) throw error;
    throw new VeladisError("syntax", { expected: "CSV, with quotes doubled within quotes", received: error.message });
  });
}

/**
 * Shows a stream of CSV to a visitor; memory for one chunk and one row.
 *
 * @param size - bytes the stream will give, where that is known
 * @throws {@link VeladisError} `syntax` for what is no CSV, `missing-fact` for an empty stream
 */
export async function visitCsv(stream: Readable, size: number | undefined, visitor: RowVisitor): Promise<void> {
  let parser: RowParser | undefined;
  let held: Buffer = Buffer.alloc(0);
  let base = 0;
  let begun = 0;
  let width = 0;
  const start = (chunk: Buffer): RowParser => {
    const text = chunk.toString("latin1", 0, Math.min(chunk.length, LONGEST));
    const marked = text.startsWith(UTF8_MARK);
    const header = text.slice(marked ? UTF8_MARK.length : 0).replace(/^[\r\n]+/, "");
    const lineEnd = /\r?\n|\r/.exec(header)?.[0] ?? "\n";
    const separator = separatorOf(header.split(lineEnd, 1)[0] as string);
    const form = { separator, lineEnd, mark: marked ? UTF8_MARK : "", counted: "line" } as const;
    begun = form.mark.length;
    const made = new RowParser({
      bom: true,
      delimiter: separator,
      // each further option that is looked at for every byte would cost a tenth
      record_delimiter: lineEnd,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
    });
    made.each = (cells, end, line) => {
      const raw = rowBetween(held, begun - base, end - base);
      begun = end;
      if (width === 0) {
        width = cells.length;
        visitor.header(cells, raw, form);
      } else if (cells.length > 1 || width === 1 || raw.trim() !== "") visitor.row(cells, raw, line);
    };
    // what goes wrong is told to whoever wrote the chunk
    made.on("error", () => undefined);
    return made;
  };
  for await (const chunk of fromHeader(utf8Of(stream))) {
    if (parser === undefined) {
      held = chunk;
      parser = start(chunk);
    } else {
      held = Buffer.concat([held.subarray(begun - base), chunk]);
      base = begun;
      if (held.length - chunk.length > LONGEST) {
        throw new VeladisError("syntax", {
          expected: `rows that end with the line end of the header, none longer than ${LONGEST} bytes`,
          received: `one that begins at line ${parser.info.lines} or above, perhaps a quotation mark that nothing closes`,
        });
      }
    }
    const own = parser;
    await settled((done) => own.write(chunk, done));
    await visitor.pause(size === undefined ? undefined : Math.min(1, begun / size));
  }
  const own = parser;
  if (own === undefined) {
    throw new VeladisError("missing-fact", { expected: "a header line, and rows below it", received: "nothing" });
  }
  await settled((done) => {
    own.once("error", done);
    own.end(done);
  });
  await visitor.pause(1);
}
