import type { Readable } from "node:stream";
import { VeladisError } from "../../core/index";
import { type DelimitedVisitor, type RowAccount, readDelimited } from "../delimited/read-delimited";
import type { RowsReader } from "../delimited/rows-reader";
import type { WrittenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { FileStream } from "../input/open-file";
import { plainSize } from "../input/plain-file";
import { writtenParquet } from "../parquet/written-parquet";

/** Where rows come from. */
export interface RowsSource {
  /** Undefined for standard input. */
  readonly file: string | undefined;
  readonly format: "csv" | "parquet";
  readonly written: WrittenAs;
}

/** The rows of a file or of standard input, and how far they are read. */
export interface FileRows {
  readonly reader: RowsReader;
  readonly written: WrittenAs;
  readonly size: number | undefined;
  bytesRead(): number;
}

/**
 * The rows of a file of delimited text or of Parquet, or of text that is piped in.
 *
 * @param what - what file is needed, with a call, for the message where there is none
 * @throws {@link VeladisError} `unreadable` for a file that cannot be read, `missing-option` without one and for Parquet that
 *   is piped in
 */
export async function rowsOfFile(io: Io, { file, format, written }: RowsSource, what: string): Promise<FileRows> {
  if (file === undefined && (io.piped === undefined || format === "parquet")) {
    throw new VeladisError("missing-option", {
      expected: io.piped === undefined ? what : "a file of Parquet, which is read from its end",
      received: io.piped === undefined ? "nothing" : "standard input",
    });
  }
  // at once, so that a file that cannot be read is refused before anything is made of it
  const size = file === undefined ? undefined : await plainSize(file);
  let done = 0;
  const as = format === "parquet" ? writtenParquet(written) : written;
  /** The same reading, whose steps are noted: so many bytes for each one of its numbers. */
  async function* noted<Account>(reading: AsyncGenerator<number, Account>, bytes: number) {
    try {
      for (;;) {
        const step = await reading.next();
        if (step.done) return step.value;
        done = step.value * bytes;
        yield done;
      }
    } finally {
      await reading.return(undefined as never);
    }
  }
  async function* parquet(visitor: DelimitedVisitor): AsyncGenerator<number, RowAccount> {
    const { readParquet } = await import("../parquet/read-parquet");
    return (yield* noted(readParquet(file as string, visitor), size ?? 0)).account;
  }
  async function* text(visitor: DelimitedVisitor): AsyncGenerator<number, RowAccount> {
    const stream = file === undefined ? (io.piped as Readable) : new FileStream(file, size as number);
    return yield* noted(readDelimited(stream, file ?? "standard input", as, visitor), 1);
  }
  return { reader: format === "parquet" ? parquet : text, written: as, size, bytesRead: () => done };
}
