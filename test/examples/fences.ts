import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The folder of the project, without a slash behind it. */
export const root = fileURLToPath(new URL("../..", import.meta.url)).replace(/\/$/, "");

/** One fenced block of code in a page or a docstring. */
export interface Fence {
  readonly file: string;
  /** Line of the file on which the code begins, from 1. */
  readonly line: number;
  readonly language: string;
  readonly code: string;
}

/** The fences of a text; in a source file only those within docstrings, without their leading stars. */
export function pageFences(file: string): Fence[] {
  const isSource = file.endsWith(".ts");
  const found: Fence[] = [];
  let open: { language: string; line: number; code: string[] } | undefined;
  readFileSync(`${root}/${file}`, "utf8")
    .split("\n")
    .forEach((whole, i) => {
      const starred = /^\s*\*( ?)(.*)$/.exec(whole);
      if (isSource && starred === null) {
        open = undefined;
        return;
      }
      const text = isSource ? (starred?.[2] ?? "") : whole;
      const mark = /^```(\w*)/.exec(text);
      if (open === undefined) {
        if (mark !== null) open = { language: mark[1] ?? "", line: i + 2, code: [] };
      } else if (mark !== null) {
        found.push({ file, line: open.line, language: open.language, code: open.code.join("\n") });
        open = undefined;
      } else open.code.push(text);
    });
  return found;
}

/** Paths, from the root, of the files below a folder with the given ending. */
export function filesBelow(folder: string, ending: string): string[] {
  const paths = readdirSync(`${root}/${folder}`, { recursive: true, encoding: "utf8" });
  return paths.filter((path) => path.endsWith(ending)).map((path) => `${folder}/${path}`);
}

/** All fences of the README, the docs and the docstrings. */
export function allFences(language: string): Fence[] {
  const files = ["README.md", "DEVELOPERS.md", ...filesBelow("docs", ".md"), ...filesBelow("src", ".ts")];
  return files
    .sort()
    .flatMap(pageFences)
    .filter((fence) => fence.language === language);
}
