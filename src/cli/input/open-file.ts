import { Readable } from "node:stream";
import type { Io } from "./io";
import { type PlainFile, plainFile, plainSize, unreadable } from "./plain-file";

/** Bytes that are read at once. */
const PORTION = 1 << 18;

/** The bytes of a plain file, opened when they are asked for, refused at their end if it was changed meanwhile. */
export class FileStream extends Readable {
  /** Bytes read so far. */
  bytesRead = 0;

  private file: PlainFile | undefined;

  /** @param size - bytes of the file when it was found */
  constructor(
    private readonly path: string,
    readonly size: number,
  ) {
    super({ highWaterMark: PORTION });
    // whoever reads is told; that nobody reads any more is no fault
    this.on("error", () => undefined);
  }

  override _read(): void {
    this.portion().then(
      (bytes) => this.push(bytes),
      (error) => this.destroy(error.syscall === undefined ? error : unreadable(this.path, error)),
    );
  }

  /** What comes next; null behind the last. */
  private async portion(): Promise<Buffer | null> {
    this.file ??= await plainFile(this.path);
    const { size, read, requireUnchanged } = this.file;
    const buffer = Buffer.allocUnsafe(PORTION);
    const bytesRead = await read(buffer, 0, PORTION, this.bytesRead);
    this.bytesRead += bytesRead;
    // one that grows faster than it is read would never end
    if (bytesRead === 0 || this.bytesRead > size) await requireUnchanged();
    return bytesRead === 0 ? null : buffer.subarray(0, bytesRead);
  }

  override _destroy(error: Error | null, done: (error: Error | null) => void): void {
    const closed = this.file?.close() ?? Promise.resolve();
    closed.then(
      () => done(error),
      () => done(error),
    );
  }
}

/**
 * A stream of the file's bytes. It fails with a refusal when the file cannot be read to its end, or is changed
 * while it is read.
 *
 * @throws {@link VeladisError} `unreadable` when the file cannot be read, `wrong-type` when it is no plain file
 */
export async function openFile(path: string): Promise<FileStream> {
  // at once, so that it is refused before anything is made of it; whoever refuses an option after that leaves nothing open
  return new FileStream(path, await plainSize(path));
}

/** The file that was told; undefined for standard input, which `-` means, too. */
export function namedFile(file: string | undefined): string | undefined {
  return file === "-" ? undefined : file;
}

/** A stream of the file that was told, or of standard input; undefined where nothing is piped. */
export async function inputStream(io: Io, file: string | undefined): Promise<Readable | undefined> {
  const named = namedFile(file);
  return named === undefined ? io.piped : openFile(named);
}
