import { constants } from "node:fs";
import { open } from "node:fs/promises";
import { shown, VeladisError } from "../../core/index";
import type { ChangeFile } from "./change-file";

const MAKE = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | (constants.O_NOFOLLOW ?? 0);
const APPEND = constants.O_WRONLY | constants.O_APPEND | (constants.O_NOFOLLOW ?? 0);

/**
 * Adds bytes to the end of a file, in one write and brought to the disk; one that is not there is made. Nothing that stands
 * there is written again, so that of two who write at once each row is kept.
 *
 * @throws {@link VeladisError} `unwritable`, also for a file that another has changed since it was read
 */
export async function appended(path: string, { size }: ChangeFile, bytes: Buffer): Promise<void> {
  const refuse = (received: string): never => {
    throw new VeladisError("unwritable", {
      expected: "a record of changes that can be added to",
      received: `${shown(path)}: ${received}`,
    });
  };
  const file = await open(path, size === 0 ? MAKE : APPEND, 0o666).catch(({ code }: NodeJS.ErrnoException) =>
    refuse(`${code}`),
  );
  try {
    const found = await file.stat();
    if (!found.isFile()) refuse("no plain file");
    if (found.size !== size) refuse("changed since it was read; try again");
    const { bytesWritten } = await file.write(bytes);
    if (bytesWritten < bytes.length) refuse("no room for the whole row: look at its last line");
    await file.sync();
  } finally {
    await file.close();
  }
}
