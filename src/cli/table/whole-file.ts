import { constants } from "node:fs";
import { type FileHandle, link, lstat, open, realpath, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { shown, VeladisError, type VeladisErrorCode } from "../../core/index";
import { besideName, removedAtExit, removeLeftovers } from "./written-beside";

/** A file that is there whole or not at all: written beside its place, moved there at the end. */
export interface WholeFile {
  /** Where it will stand. */
  readonly path: string;
  /** Appends bytes, given as they are or as a text of one character a byte; resolves when the portion before is written. */
  write(bytes: Uint8Array): Promise<void>;
  /** Brings what was written to the disk. What fails here has changed nothing. */
  flush(): Promise<void>;
  /** Moves it to its place, flushed. */
  commit(): Promise<void>;
  /** Removes what was written, as if it had never been begun. */
  discard(): Promise<void>;
}

function refuse(expected: string, received: string, code: VeladisErrorCode = "unwritable"): never {
  throw new VeladisError(code, { expected, received });
}

/** Refuses a place where a file stands that is read: it would be lost. */
async function requireNoInput(place: string, path: string, inputs: readonly (string | undefined)[]): Promise<void> {
  const real = (input: string): Promise<string> => realpath(input).catch(() => input);
  const read = await Promise.all(inputs.flatMap((input) => (input === undefined ? [] : [real(input)])));
  if (read.includes(place)) refuse("a file to write that is none of those read", shown(path), "unknown-option");
}

/** A place to write to, and the mode of the plain file that stands there now. */
interface Place {
  readonly path: string;
  readonly mode: number | undefined;
}

/** The place of a path; refused where something stands that may not be replaced, links too: they may lead anywhere. */
async function placeOf(path: string, replace: boolean): Promise<Place> {
  const folder = await realpath(dirname(path)).catch(() => refuse("a folder that is there", shown(dirname(path))));
  const place = join(folder, basename(path));
  const found = await lstat(place).catch(() => undefined);
  if (found === undefined) return { path: place, mode: undefined };
  if (found.isSymbolicLink()) refuse("a plain file to write, not a link to one", shown(path), "wrong-type");
  if (!found.isFile()) refuse("a plain file to write", shown(path), "wrong-type");
  if (!replace)
    refuse("a file that is not there yet, or --replace", `${shown(path)}, which is there`, "missing-option");
  return { path: place, mode: found.mode & 0o777 };
}

/** Moves a file to a place where none stands; where the disk has no links, a file that came meanwhile may be lost. */
async function moveToFree(from: string, to: string): Promise<void> {
  try {
    await link(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") throw error;
    return rename(from, to);
  }
  await rm(from);
}

/** Opened anew or not at all, wherever a link of that name may lead. */
const ANEW = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | (constants.O_NOFOLLOW ?? 0);

/**
 * A file that is there whole or not at all.
 *
 * @param replace - whether a plain file of that name may be replaced
 * @param inputs - files that are read, none of which is ever replaced
 * @throws {@link VeladisError} `unwritable` when there is no such folder or no leave, `wrong-type` and `missing-option` when something stands in the place
 */
export async function wholeFile(
  path: string,
  replace: boolean,
  inputs: readonly (string | undefined)[] = [],
): Promise<WholeFile> {
  const { path: place, mode } = await placeOf(path, replace);
  await requireNoInput(place, path, inputs);
  await removeLeftovers(place).catch(() => undefined);
  const beside = besideName(place);
  // before it is there, since a signal may come as soon as it is
  const spared = removedAtExit(beside);
  const handle: FileHandle = await open(beside, ANEW, mode === undefined ? 0o666 : 0o600).catch(
    (error: NodeJS.ErrnoException) => {
      spared();
      return refuse("a folder that can be written to", `${shown(dirname(place))}: ${error.code}`);
    },
  );
  const failed = (error: NodeJS.ErrnoException): never =>
    refuse("room and leave to write the output", `${shown(place)}: ${error.code ?? error.message}`);
  // who may read the old one, and no one else, may read the new one
  if (mode !== undefined) await handle.chmod(mode).catch(() => undefined);
  let pending: Promise<void> = Promise.resolve();
  let flushed: Promise<void> | undefined;
  const finish = async (): Promise<void> => {
    await pending;
    await handle.sync().catch(failed);
    await handle.close();
  };
  const flush = (): Promise<void> => {
    flushed ??= finish();
    return flushed;
  };
  return {
    path: place,
    write(bytes) {
      // the next portion is read while this one is written
      const before = pending;
      pending = before.then(() => handle.writeFile(bytes).catch(failed));
      pending.catch(() => undefined);
      return before;
    },
    flush,
    async commit() {
      await flush();
      await (replace ? rename : moveToFree)(beside, place).catch(failed);
      spared();
    },
    async discard() {
      await pending.catch(() => undefined);
      await handle.close().catch(() => undefined);
      await rm(beside, { force: true });
      spared();
    },
  };
}
