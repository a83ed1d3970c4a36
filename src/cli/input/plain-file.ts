import type { Stats } from "node:fs";
import { constants, type FileHandle, open } from "node:fs/promises";
import { shown, VeladisError } from "../../core/index";

/** A plain file that is open for reading, and how it was when it was opened. */
export interface PlainFile {
  readonly handle: FileHandle;
  readonly size: number;
  /**
   * Refuses a file that is no longer what it was when it was opened.
   *
   * @throws {@link VeladisError} `missing-fact`
   */
  requireUnchanged(): Promise<void>;
}

function kindOf(found: Stats): string {
  if (found.isDirectory()) return "a folder";
  if (found.isFIFO()) return "a pipe";
  return found.isSocket() ? "a socket" : "a device";
}

/** What the system says against reading a file, as a refusal. */
export function unreadable(path: string, { code }: NodeJS.ErrnoException): VeladisError {
  return new VeladisError("missing-fact", { expected: "a file that can be read", received: `${shown(path)}: ${code}` });
}

/**
 * A plain file, opened for reading. A pipe or a device is refused, for it may never end; neither is waited for.
 *
 * @throws {@link VeladisError} `missing-fact` for what cannot be read or is no plain file
 */
export async function plainFile(path: string): Promise<PlainFile> {
  const handle = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0)).catch((error) => {
    throw unreadable(path, error);
  });
  const before = await handle.stat();
  if (!before.isFile()) {
    await handle.close();
    throw new VeladisError("missing-fact", {
      expected: "a plain file; what comes from elsewhere is piped in, as in cat readings.csv | veladis ...",
      received: `${shown(path)}, ${kindOf(before)}`,
    });
  }
  return {
    handle,
    size: before.size,
    async requireUnchanged() {
      const after = await handle.stat();
      if (after.size === before.size && after.mtimeMs === before.mtimeMs) return;
      throw new VeladisError("missing-fact", {
        expected: "a file that stays as it is while it is read: copy it first",
        received: `${shown(path)}, ${before.size} bytes before and ${after.size} after`,
      });
    },
  };
}
