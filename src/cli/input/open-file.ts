import { createReadStream } from "node:fs";
import { access, constants } from "node:fs/promises";
import type { Readable } from "node:stream";
import { shown, VeladisError } from "../../core/index";

/**
 * A stream of the file's bytes.
 *
 * @throws {@link VeladisError} `missing-fact` when the file cannot be read
 */
export async function openFile(path: string): Promise<Readable> {
  try {
    await access(path, constants.R_OK);
  } catch {
    throw new VeladisError("missing-fact", { expected: "a file that can be read", received: shown(path) });
  }
  return createReadStream(path, { highWaterMark: 1 << 18 });
}
