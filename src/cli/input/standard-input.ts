import { Readable } from "node:stream";
import { VeladisError } from "../../core/index";

/** Standard input, whose failures are refusals. */
export function standardInput(stdin: Readable): Readable {
  const chunks = async function* (): AsyncGenerator<Buffer> {
    try {
      yield* stdin;
    } catch (error) {
      const { syscall, code } = error as NodeJS.ErrnoException;
      if (syscall === undefined) throw error;
      throw new VeladisError("unreadable", {
        expected: "standard input that can be read",
        received: String(code),
      });
    }
  };
  return Readable.from(chunks(), { objectMode: false });
}
