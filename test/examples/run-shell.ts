import { spawnSync } from "node:child_process";
import { chmodSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Fence, root } from "./fences";

/** A command of a shell fence and what it must print. */
export interface ShellExample {
  readonly fence: Fence;
  readonly command: string;
  readonly printed: readonly string[];
}

/** The commands of a fence that run `veladis`; other commands (npm and such) are not run. */
export function shellExamples(fence: Fence): ShellExample[] {
  return fence.code
    .split(/^\$ /m)
    .slice(1)
    .map((block) => {
      const [command = "", ...printed] = block.replace(/\\\n/g, " ").trimEnd().split("\n");
      return { fence, command, printed };
    })
    .filter(({ command }) => /\bveladis\b/.test(command) && !/^npm|^npx/.test(command));
}

/** A folder with the built command under its own name, to put on the path. */
function folderWithCommand(): string {
  const folder = mkdtempSync(join(tmpdir(), "veladis-"));
  const path = join(folder, "veladis");
  writeFileSync(path, `#!/bin/sh\nexec "${process.execPath}" "${root}/dist/cli.js" "$@"\n`);
  chmodSync(path, 0o755);
  return folder;
}

const folder = folderWithCommand();

/** What a line of the shell prints, standard error among it, and how it ends. */
export function runInShell(line: string, cwd: string): { out: string; status: number | null } {
  const { stdout, status } = spawnSync("bash", ["-c", `{ ${line}\n} 2>&1`], {
    cwd,
    encoding: "utf8",
    env: { ...process.env, PATH: `${folder}:${process.env.PATH}`, NO_COLOR: "1" },
    input: "",
  });
  return { out: stdout, status };
}

/** The lines that a command prints. */
export function printedBy(command: string): string[] {
  return runInShell(command, root).out.replace(/\s+$/, "").split("\n");
}

/** Whether lines are as expected, where an expected line `...` stands for any number of lines. */
export function isAsPrinted(actual: readonly string[], expected: readonly string[]): boolean {
  if (expected.length === 0) return actual.length === 0;
  if (expected[0] === "...") {
    return actual.some((_, i) => isAsPrinted(actual.slice(i), expected.slice(1))) || isAsPrinted([], expected.slice(1));
  }
  return actual[0] === expected[0] && isAsPrinted(actual.slice(1), expected.slice(1));
}

/** Writes what a command prints into its page, in place of what stands there; left-out lines (`...`) are for a person. */
export function writePrinted({ fence, printed }: ShellExample, actual: readonly string[]): void {
  const path = `${root}/${fence.file}`;
  const page = readFileSync(path, "utf8");
  const before = printed.join("\n");
  if (printed.includes("...") || page.split(before).length !== 2) {
    throw new Error(`${fence.file}: written by hand, please:\n${actual.join("\n")}`);
  }
  writeFileSync(
    path,
    page.replace(before, () => actual.join("\n")),
  );
}
