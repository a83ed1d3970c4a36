import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filesBelow, root } from "./examples/fences";
import { cyclesOf, type Imports, importsIn, importsOfFolders } from "./floors/imports";

/**
 * Floor of each folder of src; a file imports from its own folder or from a lower floor's index. The folders of the
 * command stand on floors among themselves, and import one another's files.
 */
const floors: Record<string, number> = {
  core: 0,
  units: 1,
  detectors: 1,
  frequency: 2,
  reading: 3,
  amplitude: 4,
  signal: 4,
  balance: 4,
  severity: 5,
  device: 5,
  kit: 5,
  uncertainty: 5,
  vector: 6,
  conformity: 6,
  trip: 6,
  setpoints: 6,
  shock: 6,
  verification: 6,
  sentence: 8,
  report: 8,
  chart: 8,
  sql: 7,
  plant: 7,
  json: 8,
  repl: 9,
  // The command starts the REPL and reads its sentences.
  cli: 10,
};

/** Floors within the command, its own files on top. */
const commandFloors: Record<string, number> = {
  delimited: 0,
  input: 1,
  print: 1,
  options: 2,
  parquet: 2,
  "plant-report": 3,
  record: 3,
  table: 3,
  commands: 4,
  calculator: 4,
};
const TOP = 5;

/** Packages that a folder may import; all others may import none. */
const packages: Record<string, RegExp> = {
  chart: /^d3-(scale|shape)$/,
  repl: /^mathjs(\/number)?$/,
  cli: /^(@resvg\/resvg-js|csv-parse|hyparquet|hyparquet-writer|read-excel-file\/node|node:.*)$/,
};

const imports: Imports = new Map(
  filesBelow("src", ".ts")
    .filter((path) => !path.endsWith(".d.ts"))
    .map((path) => [path, importsIn(path, readFileSync(`${root}/${path}`, "utf8"))]),
);
const files = [...imports.keys()];
const inFolders = files.filter((path) => path.split("/").length > 2 && !path.startsWith("src/entries/"));

/** The floor within the command of one of its files. */
function commandFloor(path: string): number {
  const [, , folder, inner] = path.split("/") as [string, string, string, string?];
  return inner === undefined ? TOP : (commandFloors[folder] ?? Number.NaN);
}

/** The folder that a file counts to: the command has several. */
function folderOf(path: string): string {
  const [, folder, ...rest] = path.split("/") as [string, string, ...string[]];
  return folder === "cli" && rest.length > 1 ? `src/cli/${rest[0]}` : `src/${folder}`;
}

/** What is wrong with an import, or nothing. */
function fault(path: string, target: string): string | undefined {
  const folder = path.split("/")[1] as string;
  if (!target.startsWith("src/")) {
    return target === "package.json" || packages[folder]?.test(target)
      ? undefined
      : `${folder} may not import ${target}`;
  }
  const [, to] = target.split("/") as [string, string];
  if (folder === "cli" && to === "cli" && folderOf(path) !== folderOf(target)) {
    return commandFloor(target) < commandFloor(path)
      ? undefined
      : `${folderOf(path)} may not import up or sideways from ${folderOf(target)}`;
  }
  if (to === folder) return undefined;
  if (!(to in floors)) return `${to} stands on no floor`;
  if ((floors[to] as number) >= (floors[folder] as number)) return `${folder} may not import up or sideways from ${to}`;
  return target === `src/${to}/index.ts` ? undefined : `${target} is inside ${to}; import its index`;
}

describe("floors of src", () => {
  it.each(inFolders)("%s", (path) => {
    expect(Object.keys(floors)).toContain(path.split("/")[1]);
    expect((imports.get(path) as string[]).map((target) => fault(path, target)).filter(Boolean)).toEqual([]);
  });

  it("has a floor for the folders there are and for no others", () => {
    expect(new Set(inFolders.map((path) => path.split("/")[1]))).toEqual(new Set(Object.keys(floors)));
    const inner = inFolders.map(folderOf).filter((folder) => folder.startsWith("src/cli/"));
    expect(new Set(inner)).toEqual(new Set(Object.keys(commandFloors).map((folder) => `src/cli/${folder}`)));
  });

  it("DEVELOPERS.md prints the same map", () => {
    const printed = readFileSync(`${root}/DEVELOPERS.md`, "utf8");
    const rows = [...printed.matchAll(/^\| (\d+) \| (.+?) \|/gm)].flatMap(([, floor, folders]) =>
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

describe("cycles of imports, of values and of types, static and dynamic", () => {
  it("are found in every form that an import has", () => {
    const forms = {
      "src/a/a.ts": 'import { b } from "../b/b";',
      "src/b/b.ts": 'import type { C } from "../c/c";',
      "src/c/c.ts": 'export * from "../d/d";',
      "src/d/d.ts": 'export const load = () => import("../e/e");',
      "src/e/e.ts": 'export type F = typeof import("../f/f");',
      "src/f/f.ts": 'import "../a/a";',
      "src/g/g.ts": 'import { type A } from "../a/a"; // import "./g";',
    };
    const graph: Imports = new Map(Object.entries(forms).map(([path, text]) => [path, importsIn(path, text)]));
    expect(cyclesOf(graph)).toEqual([Object.keys(forms).slice(0, 6)]);
    expect(cyclesOf(importsOfFolders(graph, folderOf))).toEqual([
      ["a", "b", "c", "d", "e", "f"].map((one) => `src/${one}`),
    ]);
  });

  it("there are none between files", () => {
    expect(cyclesOf(imports)).toEqual([]);
  });

  it("there are none between folders", () => {
    expect(cyclesOf(importsOfFolders(imports, folderOf))).toEqual([]);
  });
});
