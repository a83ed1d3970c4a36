import { fstatSync } from "node:fs";
import { Readable } from "node:stream";
import { VeladisError } from "../../core/index";

/** Whether a descriptor is that of a folder, which the stream of standard input takes for an input without bytes. */
function isFolder(descriptor: number | undefined): boolean {
  try {
    return descriptor !== undefined && fstatSync(descriptor).isDirectory();
  } catch {
    // a descriptor that is closed is no folder
    return false;
  }
}

/** Standard input, whose failures are refusals. */
export function standardInput(stdin: Readable & { readonly fd?: number }): Readable {
  const chunks = async function* (): AsyncGenerator<Buffer> {
    if (isFolder(stdin.fd)) {
      throw new VeladisError("unreadable", { expected: "standard input that can be read", received: "a folder" });
    }
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
