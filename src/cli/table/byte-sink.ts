import { Buffer } from "node:buffer";

const FIRST = 1 << 18;

/** Bytes gathered for one write: a row in text, and what many rows end with as bytes that are copied. */
export interface ByteSink {
  /** Adds a text of one character a byte. */
  text(text: string): void;
  bytes(bytes: Uint8Array): void;
  /** All bytes so far, and none is left. */
  take(): Buffer;
}

export function byteSink(): ByteSink {
  let buffer = Buffer.allocUnsafe(FIRST);
  let length = 0;
  const makeRoom = (more: number): void => {
    if (length + more <= buffer.length) return;
    const larger = Buffer.allocUnsafe(Math.max(2 * buffer.length, length + more));
    buffer.copy(larger, 0, 0, length);
    buffer = larger;
  };
  return {
    text(text) {
      makeRoom(text.length);
      length += buffer.write(text, length, "latin1");
    },
    bytes(bytes) {
      makeRoom(bytes.length);
      buffer.set(bytes, length);
      length += bytes.length;
    },
    take() {
      const taken = Buffer.from(buffer.subarray(0, length));
      length = 0;
      return taken;
    },
  };
}
