import { shown, VeladisError } from "../../core/index";
import { type PlainFile, unreadable } from "../input/plain-file";

/** Bytes that are read from any place, into a buffer of their own. */
export interface ByteSource {
  readonly size: number;
  /** @throws {@link VeladisError} `unreadable` when there are fewer */
  read(from: number, to: number): Promise<Uint8Array<ArrayBuffer>>;
}

/** The bytes of a file. */
export function byteSource(path: string, file: PlainFile): ByteSource {
  return {
    size: file.size,
    async read(from, to) {
      const bytes = new Uint8Array(to - from);
      for (let filled = 0; filled < bytes.length; ) {
        const bytesRead = await file
          .read(bytes, filled, bytes.length - filled, from + filled)
          .catch((error) => Promise.reject(unreadable(path, error)));
        if (bytesRead === 0) {
          throw new VeladisError("unreadable", {
            expected: "a file that stays as it is while it is read: copy it first",
            received: `${shown(path)}, which ends before byte ${to}`,
          });
        }
        filled += bytesRead;
      }
      return bytes;
    },
  };
}
