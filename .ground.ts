// The floors of src/ground.ts become two files: what `veladis` itself uses, and the rest. An import of `veladis` alone is to
// parse nothing else, and as chunks of their own the floors were five, each of which costs a loader its share. As an ES
// module the first of the two is `veladis` itself, since a file that only passes names on costs a loader half a
// millisecond; what the other entries take from it, and nobody else is promised, is exported with a dollar in front.
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

const linesOf = (all: readonly [string, string][], as: (name: string) => string): string =>
  [...new Map(all)]
    .map(([name, file]) => `export { ${name} as ${as(name)} } from ${JSON.stringify(join(root, file))};`)
    .join("\n");

/** A name of the first file as it is exported: what `veladis` promises, or with a dollar. */
const inGround = (name: string): string => (own.has(name) ? name : `$${name}`);

const all = [...exported.values()].flat();
const madeOf = (list: readonly [string, string][], as = (name: string): string => name): Plugin => ({
  name: "made",
  setup: ({ onLoad }) => {
    onLoad({ filter: /src[\\/]ground\.ts$/ }, () => ({ contents: linesOf(list, as), loader: "ts", resolveDir: root }));
  },
});

/**
 * The names that a file takes from a floor are taken from the two files; `within` the rest, from the file that each is
 * written in. As many lines as before, so that maps hold.
 */
function rewritten(path: string, within: boolean): string {
  const lists = /^(import|export) \{([^}]*)\} from "(\.[^"]*)";/gm;
  return readFileSync(path, "utf8").replace(lists, (whole, word, list, from) => {
    const file = join(path, "..", `${from}.ts`);
    const floor = from.endsWith("/index") ? exported.get(floorOf(file) ?? "") : undefined;
    if (floor === undefined && !(within && used(relative(root, file)))) return whole;
    const files = new Map<string, string[]>();
    for (const one of (list as string).split(",").map((text) => text.trim())) {
      const [name = "", as = name] = one.split(" as ");
      const row = floor === undefined ? [name, relative(root, file)] : floor.find((row) => row[0] === name);
      // types are left out
      if (row === undefined || name === "" || name.startsWith("type ")) continue;
      const [, own = ""] = row;
      const taken = isUsed([name, own]);
      const place = taken ? "#ground" : within ? join(root, own) : "#ground-more";
      files.set(place, [...(files.get(place) ?? []), `${taken ? inGround(name) : name} as ${as}`]);
    }
    const all = [...files].map(([place, some]) => `${word} { ${some} } from ${JSON.stringify(place)};`);
    return all.join(" ") + "\n".repeat(whole.split("\n").length - 1);
  });
}

/** The two files as the others name them: as an ES module, the first is `veladis` itself. */
const placeOf = (name: string, extension: string): string =>
  `./${name === "ground" && extension === "js" ? "index" : name}.${extension}`;

const split = (extension: string, within: boolean): Plugin => ({
  name: "split",
  setup({ onResolve, onLoad }) {
    onLoad({ filter: /src[\\/].*\.ts$/ }, ({ path }) =>
      within || floorOf(path) === undefined ? { contents: rewritten(path, within), loader: "ts" } : undefined,
    );
    onResolve({ filter: /^#ground(-more)?$/ }, ({ path }) => ({
      path: placeOf(path.slice(1), extension),
      external: true,
      sideEffects: false,
    }));
  },
});

/** What is used of the floors, as one file. */
export const ground: Plugin[] = [madeOf([...all.filter(isUsed), ...between], inGround)];

/** The rest of the floors, as another. */
export const groundMore = (extension: string): Plugin[] => [
  madeOf(all.filter((one) => !isUsed(one))),
  split(extension, true),
];

/** What is above the floors takes what it needs of them from the two. */
export const aboveGround = (extension: string): Plugin[] => [split(extension, false)];
