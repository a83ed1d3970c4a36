import { CsvError, Parser } from "csv-parse";

/** Whom a parser hands a row: its cells, and how many bytes behind the parser's start it ends. */
export type EachRow = (cells: readonly string[], end: number) => void;

/** What a parser is told. */
export interface ParsedAs {
  readonly separator: string;
  readonly lineEnds: string[];
  readonly quotes: boolean;
  /** The sign of lines to pass over; each further option that is looked at for every byte costs a tenth. */
  readonly sign: string | undefined;
}

/** A parser that hands each row to a function, with nothing between: a stream of records would cost a third. */
export class RowParser extends Parser {
  readonly #each: EachRow;
  #failure: unknown;

  constructor({ separator, lineEnds, quotes, sign }: ParsedAs, each: EachRow) {
    super({
      delimiter: separator,
      record_delimiter: lineEnds,
      ...(sign !== undefined && { comment: sign, comment_no_infix: true }),
      ...(!quotes && { quote: false }),
      relax_column_count: true,
      skip_empty_lines: true,
    });
    this.#each = each;
    // what goes wrong is told to whoever wrote the bytes
    this.on("error", () => undefined);
  }

  override push(record: readonly string[] | null): boolean {
    if (record === null) return super.push(null);
    if (this.#failure !== undefined) return true;
    try {
      this.#each(record, this.info.bytes);
    } catch (error) {
      // thrown where the stream ends it would be thrown at nobody
      this.#failure = error;
    }
    return true;
  }

  async #finished(act: (done: (error?: Error | null) => void) => void): Promise<void> {
    await new Promise<void>((resolve, reject) => act((error) => (error ? reject(error) : resolve())));
    if (this.#failure !== undefined) throw this.#failure;
  }

  /** Resolves when all rows that end in these bytes were handed over; rejects with what was thrown there. */
  taken(bytes: Buffer): Promise<void> {
    return this.#finished((done) => this.write(bytes, done));
  }

  /** The same for a last row without a line end. */
  ended(): Promise<void> {
    return this.#finished((done) => {
      this.once("error", done);
      this.end(done);
    });
  }
}

/** Whether an error says that quotation marks are not as they must be. */
export function isQuoteError(error: unknown): boolean {
  return error instanceof CsvError;
}
