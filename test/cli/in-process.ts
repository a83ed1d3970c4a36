import { Readable } from "node:stream";
import type { Io } from "../../src/cli/input/io";
import { run } from "../../src/cli/run";

/** What a command printed, its exit code, and what it showed of its progress. */
export interface Printed {
  readonly out: string;
  readonly err: string;
  readonly code: number;
  readonly shown: readonly string[];
}

/** Runs the command in this process, with a text or chunks of bytes piped in. */
export async function veladis(args: readonly string[], input?: string | readonly Uint8Array[]): Promise<Printed> {
  const chunks = typeof input === "string" ? [Buffer.from(input)] : input;
  const printed = { out: "", err: "" };
  const shown: string[] = [];
  const io: Io = {
    piped: chunks === undefined ? undefined : Readable.from(chunks),
    colour: false,
    out: (text) => {
      printed.out += typeof text === "string" ? text : Buffer.from(text).toString("utf8");
    },
    err: (text) => {
      printed.err += text;
    },
    progress: (text) => void shown.push(text),
  };
  return { code: await run(args, io), shown, ...printed };
}
