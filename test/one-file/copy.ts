import { execFileSync } from "node:child_process";
import { cpSync, existsSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { root } from "../examples/fences";

function git(...args: string[]): string[] {
  return execFileSync("git", args, { cwd: root, encoding: "utf8" }).split("\0").filter(Boolean);
}

/** Files that git follows, and new ones that it would. */
export const tracked = (): string[] =>
  git("ls-files", "-z", "--cached", "--others", "--exclude-standard").filter((path) => existsSync(join(root, path)));

/** Copies the project into an empty folder, with the packages that are installed here. */
export function copyProject(copy: string): void {
  for (const path of tracked()) cpSync(join(root, path), join(copy, path));
  symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
}

/** The text of every file of the copy that the project has, or that is new below `src`. */
export function textsOf(copy: string): Map<string, string> {
  const listed = execFileSync("find", [".", "-type", "f", "-not", "-path", "./node_modules/*"], {
    cwd: copy,
    encoding: "utf8",
  });
  const paths = listed.split("\n").filter(Boolean);
  return new Map(paths.map((path) => [path.slice(2), readFileSync(join(copy, path), "latin1")]));
}

/** The files that are new, gone or other than before. */
export function changedFiles(before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): string[] {
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((path) => before.get(path) !== after.get(path))
    .sort();
}
