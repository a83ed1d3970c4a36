import { readFileSync } from "node:fs";
import { posix } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { filesBelow, root } from "./examples/fences";

/** Floor of each folder of src; a file imports from its own folder or from a lower floor's index. */
const floors: Record<string, number> = {
  core: 0,
  units: 1,
  detectors: 1,
  frequency: 2,
  amplitude: 3,
  signal: 3,
  severity: 4,
  protection: 5,
  verification: 5,
  sql: 5,
  sentence: 6,
  report: 6,
  chart: 6,
  repl: 7,
  // The command starts the REPL and reads its sentences.
  cli: 8,
};

/** Packages that a folder may import; all others may import none. */
const packages: Record<string, RegExp> = {
  chart: /^d3-(scale|shape)$/,
  repl: /^mathjs(\/number)?$/,
  cli: /^(csv-parse|hyparquet|node:.*)$/,
};

const files = filesBelow("src", ".ts").filter((path) => !path.endsWith(".d.ts"));
const importsOf = (path: string): string[] =>
  ts.preProcessFile(readFileSync(`${root}/${path}`, "utf8")).importedFiles.map(({ fileName }) => fileName);

/** What is wrong with an import, or nothing. */
function fault(path: string, target: string): string | undefined {
  const folder = path.split("/")[1] as string;
  if (!target.startsWith(".")) return packages[folder]?.test(target) ? undefined : `${folder} may not import ${target}`;
  const resolved = posix.join(posix.dirname(path), target);
  const [, to] = resolved.split("/") as [string, string];
  if (to === folder || resolved === "package.json") return undefined;
  if (!(to in floors)) return `${to} stands on no floor`;
  if ((floors[to] as number) >= (floors[folder] as number)) return `${folder} may not import up or sideways from ${to}`;
  return /\/index$/.test(resolved) ? undefined : `${resolved} is inside ${to}; import its index`;
}

describe("floors of src", () => {
  it.each(files.filter((path) => path.split("/").length > 2 && !path.startsWith("src/entries/")))("%s", (path) => {
    expect(Object.keys(floors)).toContain(path.split("/")[1]);
    expect(
      importsOf(path)
        .map((target) => fault(path, target))
        .filter(Boolean),
    ).toEqual([]);
  });

  it("DEVELOPERS.md prints the same map", () => {
    const printed = readFileSync(`${root}/DEVELOPERS.md`, "utf8");
    const rows = [...printed.matchAll(/^\| (\d) \| (.+?) \|/gm)].flatMap(([, floor, folders]) =>
      [...(folders as string).matchAll(/`([a-z]+)\/`/g)].map((match) => [match[1], Number(floor)] as const),
    );
    expect(Object.fromEntries(rows)).toEqual(floors);
  });

  it("no file is longer than a person reads at once, tables apart", () => {
    const long = files.filter((path) => {
      const text = readFileSync(`${root}/${path}`, "utf8");
      return text.split("\n").length > 250 && !text.includes("a row of a table is a line");
    });
    expect(long).toEqual([]);
  });
});
