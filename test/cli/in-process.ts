import { Readable } from "node:stream";
import type { Io } from "../../src/cli/input/io";
import { run } from "../../src/cli/run";

/** What a command printed, its exit code, and what it showed of its progress. */
export interface Printed {
  readonly out: string;
  /** The same as it came. */
  readonly bytes: Buffer;
  readonly err: string;
  readonly code: number;
  readonly shown: readonly string[];
}

/** Runs the command in this process, with a text or chunks of bytes piped in. */
export async function veladis(args: readonly string[], input?: string | readonly Uint8Array[]): Promise<Printed> {
  const chunks = typeof input === "string" ? [Buffer.from(input)] : input;
  const printed: Buffer[] = [];
  let err = "";
  const shown: string[] = [];
  const io: Io = {
    piped: chunks === undefined ? undefined : Readable.from(chunks),
    colour: false,
    out: (text) => {
      printed.push(Buffer.from(text as string));
    },
    err: (text) => {
      err += text;
    },
    progress: (text) => void shown.push(text),
  };
  const code = await run(args, io);
  const bytes = Buffer.concat(printed);
  return { code, out: bytes.toString("utf8"), bytes, err, shown };
}
