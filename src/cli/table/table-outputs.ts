import { realpath, unlink } from "node:fs/promises";
import { shown, VeladisError } from "../../core/index";
import type { Io } from "../input/io";
import type { TableSettings } from "./settings";
import { type WholeFile, wholeFile } from "./whole-file";

/** Where answered and refused rows go. */
export interface TableOutputs {
  write(bytes: Uint8Array): void | Promise<void>;
  /** Undefined where refused rows have no file to go to. */
  readonly refuse: ((bytes: Uint8Array) => Promise<void>) | undefined;
  /** Where refused rows go, for the summary. */
  readonly refusedPath: string | undefined;
  /**
   * Moves the files to their places; that of refused rows only if there were any. Resolves to the path of an older file
   * of refused rows that was removed.
   */
  commit(refused: number): Promise<string | undefined>;
  discard(): Promise<void>;
}

/** `readings.zones.csv` gives `readings.zones.refused.csv`. */
function refusedBeside(out: string): string {
  const [, stem = out, ending = ""] = /^(.*?)(\.[^./\\]+)?$/.exec(out) ?? [];
  return `${stem}.refused${ending}`;
}

/** Removes a file; whether there was one. */
async function isRemoved(path: string): Promise<boolean> {
  try {
    await unlink(path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return false;
    throw error;
  }
}

/** Opens the outputs. */
export async function outputsOf(io: Io, { file, out, refused, replace }: TableSettings): Promise<TableOutputs> {
  const opened: WholeFile[] = [];
  const open = async (path: string | undefined): Promise<WholeFile | undefined> => {
    if (path === undefined) return undefined;
    const one = await wholeFile(path, replace);
    opened.push(one);
    const places = [...(file === undefined ? [] : [await realpath(file).catch(() => file)])];
    if (!places.includes(one.path) && opened.every((other) => other === one || other.path !== one.path)) return one;
    throw new VeladisError("unknown-option", {
      expected: "input, output and refused rows in files of their own",
      received: `${shown(path)} twice`,
    });
  };
  const discard = async (): Promise<void> => {
    for (const one of opened.splice(0)) await one.discard();
  };
  try {
    const refusedPath = refused ?? (out === undefined ? undefined : refusedBeside(out));
    const answered = await open(out);
    const rejected = await open(refusedPath);
    return {
      write: (bytes) => (answered === undefined ? io.out(bytes) : answered.write(bytes)),
      refuse: rejected && ((bytes) => rejected.write(bytes)),
      refusedPath,
      async commit(count) {
        // a full disk is noticed before anything is moved
        for (const one of opened) await one.flush();
        let removed: string | undefined;
        if (rejected !== undefined && count > 0) await rejected.commit();
        else if (rejected !== undefined) {
          await rejected.discard();
          // an older one would tell of rows that are answered now; without leave to replace there was none
          if (replace && (await isRemoved(rejected.path))) removed = refusedPath;
        }
        // last, so that an output in its place says that all is done
        await answered?.commit();
        opened.length = 0;
        return removed;
      },
      discard,
    };
  } catch (error) {
    await discard();
    throw error;
  }
}
