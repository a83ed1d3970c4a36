// The floors of src/ground.ts become two files: what `veladis` itself uses, and the rest. An import of `veladis` alone is to
// parse nothing else, and as chunks of their own the floors were five, each of which costs a loader its share.
import { readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { build } from "esbuild";
import type { Options } from "tsup";

type Plugin = NonNullable<Options["esbuildPlugins"]>[number];

const root = import.meta.dirname;
const read = (path: string): string => readFileSync(join(root, path), "utf8");

/** Names that are no types, with the file each comes from, of all imports or exports of a file. */
function names(path: string, word: "import" | "export"): [name: string, from: string][] {
  const lists = read(path).matchAll(new RegExp(`^${word} \\{([^}]*)\\} from "(\\.[^"]*)"`, "gm"));
  return Array.from(lists, ([, list = "", from = ""]) =>
    list
      .split(",")
      .map((one) => one.trim())
      .filter((one) => one !== "" && !one.startsWith("type "))
      .map((one): [string, string] => [one, join(path, "..", `${from}.ts`)]),
  ).flat();
}

const floors = Array.from(read("src/ground.ts").matchAll(/"\.\/(\w+)\/index"/g), ([, floor]) => floor as string);
const floorOf = (path: string): string | undefined =>
  floors.find((floor) => path.startsWith(join(root, "src", floor) + sep));

/** What each floor exports, with the file it is written in. */
const exported = new Map(floors.map((floor) => [floor, names(`src/${floor}/index.ts`, "export")]));

const { metafile } = await build({
  absWorkingDir: root,
  entryPoints: ["src/index.ts"],
  bundle: true,
  format: "esm",
  metafile: true,
  write: false,
});
const inputs = Object.values(metafile.outputs)[0]?.inputs ?? {};
const used = (file: string): boolean => (inputs[file]?.bytesInOutput ?? 0) > 0;

/** Tables that stand in one file with those that are used, so that adding a row touches one file. */
const own = new Set(names("src/index.ts", "export").map(([name]) => name));
const facts = new Set(names("src/entries/facts.ts", "export").map(([name]) => name));
const isFact = (name: string): boolean => facts.has(name) && !own.has(name);
const isUsed = ([name, file]: [string, string]): boolean => used(file) && !isFact(name);

/** What files of the rest take from files of their own floor that are used. */
const between = Object.keys(metafile.inputs)
  .filter((file) => floorOf(join(root, file)) && !used(file) && !file.endsWith("/index.ts"))
  .flatMap((file) => names(file, "import"))
  .filter((one) => !one[1].endsWith("/index.ts") && isUsed(one));

const linesOf = (all: readonly [string, string][]): string =>
  [...new Map(all)].map(([name, file]) => `export { ${name} } from ${JSON.stringify(join(root, file))};`).join("\n");

const all = [...exported.values()].flat();
const madeOf = (list: readonly [string, string][]): Plugin => ({
  name: "made",
  setup: ({ onLoad }) => {
    onLoad({ filter: /src[\\/]ground\.ts$/ }, () => ({ contents: linesOf(list), loader: "ts", resolveDir: root }));
  },
});

/**
 * The names that a file takes from a floor are taken from the two files; `within` the rest, from the file that each is
 * written in. As many lines as before, so that maps hold.
 */
function rewritten(path: string, within: boolean): string {
  const lists = /^(import|export) \{([^}]*)\} from "(\.[^"]*\/index)";/gm;
  return readFileSync(path, "utf8").replace(lists, (whole, word, list, from) => {
    const floor = exported.get(floorOf(join(path, "..", from)) ?? "");
    if (floor === undefined) return whole;
    const files = new Map<string, string[]>();
    for (const one of (list as string).split(",").map((text) => text.trim())) {
      const row = floor.find(([name]) => name === one.split(" as ")[0]);
      // types are left out
      if (row === undefined) continue;
      const file = isUsed(row) ? "#ground" : within ? join(root, row[1]) : "#ground-more";
      files.set(file, [...(files.get(file) ?? []), one]);
    }
    const all = [...files].map(([file, some]) => `${word} { ${some} } from ${JSON.stringify(file)};`);
    return all.join(" ") + "\n".repeat(whole.split("\n").length - 1);
  });
}

const split = (extension: string, within: boolean): Plugin => ({
  name: "split",
  setup({ onResolve, onLoad }) {
    const outside = (name: string) => ({ path: `./${name}.${extension}`, external: true, sideEffects: false });
    onLoad({ filter: /src[\\/].*\.ts$/ }, ({ path }) =>
      within || floorOf(path) === undefined ? { contents: rewritten(path, within), loader: "ts" } : undefined,
    );
    onResolve({ filter: /^#ground(-more)?$/ }, ({ path }) => outside(path.slice(1)));
    onResolve({ filter: /^\.\/[\w-]+$/ }, ({ path, resolveDir, importer }) => {
      const file = relative(root, join(resolveDir, `${path}.ts`));
      return within && floorOf(importer) && used(file) ? outside("ground") : undefined;
    });
  },
});

/** What is used of the floors, as one file. */
export const ground: Plugin[] = [madeOf([...all.filter(isUsed), ...between])];

/** The rest of the floors, as another. */
export const groundMore = (extension: string): Plugin[] => [
  madeOf(all.filter((one) => !isUsed(one))),
  split(extension, true),
];

/** What is above the floors takes what it needs of them from the two. */
export const aboveGround = (extension: string): Plugin[] => [split(extension, false)];
