import { createHash, randomBytes } from "node:crypto";
import { rmSync } from "node:fs";
import { readdir, rm } from "node:fs/promises";
import { hostname } from "node:os";
import { basename, dirname, join } from "node:path";

function isAlive(process_: number): boolean {
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** Stands for this computer in a name: the processes of another, on a shared disk, cannot be asked for. */
function host(): string {
  return createHash("sha256").update(hostname()).digest("hex").slice(0, 8);
}

/** A name beside a place, that of no other file, under which something is written until it is whole. */
export function besideName(place: string): string {
  const unique = `${host()}-${process.pid}-${randomBytes(8).toString("hex")}`;
  return join(dirname(place), `.${basename(place)}.${unique}.part`);
}

/** Removes what runs on this computer that were killed have left beside the place. */
export async function removeLeftovers(place: string): Promise<void> {
  const begun = `.${basename(place)}.${host()}-`;
  for (const name of await readdir(dirname(place))) {
    const left = name.startsWith(begun) ? /^(\d+)-[0-9a-f]+\.part$/.exec(name.slice(begun.length)) : null;
    if (left !== null && !isAlive(Number(left[1])))
      await rm(join(dirname(place), name), { force: true, recursive: true });
  }
}

const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** Removes a file or a folder when the process ends before its time, by itself or by a signal; gives what calls that off. */
export function removedAtExit(path: string): () => void {
  const remove = (): void => rmSync(path, { force: true, recursive: true });
  const interrupted = (signal: NodeJS.Signals): void => {
    remove();
    process.kill(process.pid, signal);
  };
  for (const signal of SIGNALS) process.once(signal, interrupted);
  process.once("exit", remove);
  return () => {
    for (const signal of SIGNALS) process.removeListener(signal, interrupted);
    process.removeListener("exit", remove);
  };
}
