import * as fs from "node:fs";
import { promisify } from "node:util";
import { shown, VeladisError } from "../../core/index";

/** A plain file that is open for reading, and how it was when it was opened. */
export interface PlainFile {
  readonly size: number;
  /** Fills a part of a buffer with the bytes from a place on; resolves to how many there were. */
  read(into: Uint8Array, offset: number, length: number, from: number): Promise<number>;
  close(): Promise<void>;
  /**
   * Refuses a file that is no longer what it was when it was opened.
   *
   * @throws {@link VeladisError} `unreadable`
   */
  requireUnchanged(): Promise<void>;
}

function kindOf(found: fs.Stats): string {
  if (found.isDirectory()) return "a folder";
  if (found.isFIFO()) return "a pipe";
  return found.isSocket() ? "a socket" : "a device";
}

/** What the system says against reading a file, as a refusal. */
export function unreadable(path: string, { code }: NodeJS.ErrnoException): VeladisError {
  return new VeladisError("unreadable", { expected: "a file that can be read", received: `${shown(path)}: ${code}` });
}

// a number, not a handle: one that a refusal leaves open would be told of when it is cleared away
const open = promisify(fs.open);
const close = promisify(fs.close);
const stat = promisify(fs.fstat);
const read = promisify(fs.read);

/**
 * A plain file, opened for reading. A pipe or a device is refused, for it may never end; neither is waited for.
 *
 * @throws {@link VeladisError} `unreadable` for what cannot be read, `wrong-type` for what is no plain file
 */
export async function plainFile(path: string): Promise<PlainFile> {
  const file = await open(path, fs.constants.O_RDONLY | (fs.constants.O_NONBLOCK ?? 0), 0).catch((error) => {
    throw unreadable(path, error);
  });
  const before = await stat(file);
  if (!before.isFile()) {
    await close(file);
    throw new VeladisError("wrong-type", {
      expected: "a plain file; what comes from elsewhere is piped in, as in cat readings.csv | veladis ...",
      received: `${shown(path)}, ${kindOf(before)}`,
    });
  }
  return {
    size: before.size,
    read: async (into, offset, length, from) => (await read(file, into, offset, length, from)).bytesRead,
    close: () => close(file),
    async requireUnchanged() {
      const after = await stat(file);
      if (after.size === before.size && after.mtimeMs === before.mtimeMs) return;
      throw new VeladisError("unreadable", {
        expected: "a file that stays as it is while it is read: copy it first",
        received: `${shown(path)}, ${before.size} bytes before and ${after.size} after`,
      });
    },
  };
}

/**
 * The bytes of a plain file, which is looked at and closed.
 *
 * @throws {@link VeladisError} as {@link plainFile}
 */
export async function plainSize(path: string): Promise<number> {
  const { size, close } = await plainFile(path);
  await close();
  return size;
}
