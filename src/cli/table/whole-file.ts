import { unlinkSync } from "node:fs";
import { type FileHandle, open, readdir, realpath, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { shown, VeladisError } from "../../core/index";

/** A file that is there whole or not at all: written beside its place, moved there at the end. */
export interface WholeFile {
  /** Where it will stand. */
  readonly path: string;
  /** Appends bytes, given as a text of one character a byte; resolves when the portion before is written. */
  write(bytes: string): Promise<void>;
  /** Moves it to its place. */
  commit(): Promise<void>;
  /** Removes what was written, as if it had never been begun. */
  discard(): Promise<void>;
}

function refuse(expected: string, received: string): never {
  throw new VeladisError("missing-fact", { expected, received });
}

/** The path behind links; refused where something stands that may not be replaced. */
async function placeOf(path: string, replace: boolean): Promise<string> {
  const found = await stat(path).catch(() => undefined);
  if (found === undefined) {
    const folder = await realpath(dirname(path)).catch(() => refuse("a folder that is there", shown(dirname(path))));
    return join(folder, basename(path));
  }
  if (!found.isFile()) refuse("a plain file to write", shown(path));
  if (!replace) refuse("a file that is not there yet, or --replace", `${shown(path)}, which is there`);
  return realpath(path);
}

function isAlive(process_: number): boolean {
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** Removes what runs that were killed have left beside the place. */
async function sweep(place: string): Promise<void> {
  const begun = `.${basename(place)}.`;
  for (const name of await readdir(dirname(place))) {
    const left = name.startsWith(begun) ? /^(\d+)\.part$/.exec(name.slice(begun.length)) : null;
    if (left !== null && !isAlive(Number(left[1]))) await rm(join(dirname(place), name), { force: true });
  }
}

const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/**
 * A file that is there whole or not at all.
 *
 * @param replace - whether a plain file of that name may be replaced
 * @throws {@link VeladisError} `missing-fact` when there is no such folder, or something stands in the place
 */
export async function wholeFile(path: string, replace: boolean): Promise<WholeFile> {
  const place = await placeOf(path, replace);
  await sweep(place).catch(() => undefined);
  const beside = join(dirname(place), `.${basename(place)}.${process.pid}.part`);
  const handle: FileHandle = await open(beside, "w").catch((error: NodeJS.ErrnoException) =>
    refuse("a folder that can be written to", `${shown(dirname(place))}: ${error.code}`),
  );
  let pending: Promise<void> = Promise.resolve();
  const interrupted = (signal: NodeJS.Signals): void => {
    unlinkSync(beside);
    process.kill(process.pid, signal);
  };
  for (const signal of SIGNALS) process.once(signal, interrupted);
  const failed = (error: NodeJS.ErrnoException): never =>
    refuse("room and leave to write the output", `${shown(place)}: ${error.code ?? error.message}`);
  const settle = async (): Promise<void> => {
    for (const signal of SIGNALS) process.removeListener(signal, interrupted);
    await handle.close();
  };
  return {
    path: place,
    write(bytes) {
      // the next portion is read while this one is written
      const before = pending;
      pending = before.then(() => handle.writeFile(Buffer.from(bytes, "latin1")).catch(failed));
      pending.catch(() => undefined);
      return before;
    },
    async commit() {
      await pending;
      await handle.sync().catch(failed);
      await settle();
      await rename(beside, place).catch(failed);
    },
    async discard() {
      await pending.catch(() => undefined);
      await settle().catch(() => undefined);
      await rm(beside, { force: true });
    },
  };
}
