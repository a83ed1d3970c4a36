import { lstat, mkdir, open, readdir, realpath, rename, rm, rmdir, writeFile } from "node:fs/promises";
import { basename, dirname, join, sep } from "node:path";
import { shown, VeladisError, type VeladisErrorCode } from "../../core/index";
import { besideName, removedAtExit, removeLeftovers } from "./written-beside";

/** A folder that is there whole or not at all: written beside its place, moved there at the end. */
export interface WholeFolder {
  /** Writes a file of it. */
  write(name: string, text: string): Promise<void>;
  /** Moves it to its place. */
  commit(): Promise<void>;
  /** Removes what was written, as if it had never been begun. */
  discard(): Promise<void>;
}

/** Where a folder is to stand. */
interface FolderPlace {
  /** Whether a folder of that name may be replaced, if it holds nothing but what the mark says is one's own. */
  readonly replace: boolean;
  /** What stands near the start of each file of such a folder. */
  readonly mark: string;
  /** Files that are read, none of which may stand in it. */
  readonly inputs: readonly string[];
}

function refuse(expected: string, received: string, code: VeladisErrorCode = "unwritable"): never {
  throw new VeladisError(code, { expected, received, option: "out" });
}

/** How far into a file the mark is looked for. */
const START = 512;

async function isMarked(path: string, mark: string): Promise<boolean> {
  const found = await lstat(path);
  if (!found.isFile()) return false;
  const file = await open(path, "r");
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(START), 0, START, 0);
    return buffer.toString("latin1", 0, bytesRead).includes(mark);
  } finally {
    await file.close();
  }
}

/** What stands in the place: nothing, an empty folder, or one that was written before and may be replaced. */
async function placeFound(place: string, path: string, { replace, mark }: FolderPlace) {
  const found = await lstat(place).catch(() => undefined);
  if (found === undefined) return "nothing";
  if (found.isSymbolicLink()) refuse("a folder to write, not a link to one", shown(path), "wrong-type");
  if (!found.isDirectory()) refuse("a folder to write", `${shown(path)}, which is a file`, "wrong-type");
  const names = await readdir(place);
  if (names.length === 0) return "empty";
  for (const name of names) {
    if (await isMarked(join(place, name), mark)) continue;
    refuse("a folder of its own, with nothing but a report in it", `${shown(path)}, which holds ${shown(name)}`);
  }
  if (replace) return "written before";
  return refuse("a folder that is not there yet, or --replace", `${shown(path)}, which is there`, "missing-option");
}

/** Refuses a place in which a file stands that is read. */
async function requireNoInput(place: string, path: string, inputs: readonly string[]): Promise<void> {
  for (const input of inputs) {
    const real = await realpath(input).catch(() => input);
    if (real === place || real.startsWith(place + sep)) {
      refuse("a folder to write that holds none of the files read", shown(path), "unknown-option");
    }
  }
}

/**
 * A folder that is there whole or not at all.
 *
 * @throws {@link VeladisError} `unwritable`, `wrong-type` and `missing-option` when something stands in the place that is
 *   not to be replaced
 */
export async function wholeFolder(path: string, as: FolderPlace): Promise<WholeFolder> {
  const parent = await realpath(dirname(path)).catch(() => refuse("a folder that is there", shown(dirname(path))));
  const place = join(parent, basename(path));
  await requireNoInput(place, path, as.inputs);
  const before = await placeFound(place, path, as);
  await removeLeftovers(place).catch(() => undefined);
  const beside = besideName(place);
  // before it is there, since a signal may come as soon as it is
  const spared = removedAtExit(beside);
  const failed = (error: NodeJS.ErrnoException): never =>
    refuse("room and leave to write the report", `${shown(place)}: ${error.code ?? error.message}`);
  await mkdir(beside).catch((error) => {
    spared();
    return failed(error);
  });
  return {
    write: (name, text) => writeFile(join(beside, name), text, { flag: "wx" }).catch(failed),
    async commit() {
      // not among what is removed as left behind: until the new one stands, it is all there is
      const old = beside.replace(/\.part$/, ".old");
      if (before === "empty") await rmdir(place).catch(failed);
      if (before === "written before") await rename(place, old).catch(failed);
      await rename(beside, place).catch(async (error) => {
        if (before === "written before") await rename(old, place);
        return failed(error);
      });
      spared();
      if (before === "written before") await rm(old, { recursive: true, force: true });
    },
    async discard() {
      await rm(beside, { recursive: true, force: true });
      spared();
    },
  };
}
