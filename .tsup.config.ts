import { readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { defineConfig, type Options } from "tsup";
import manifest from "./package.json";

/** The entries of the package, as its manifest names them: `.` is src/index.ts, the others are in src/entries. */
const library = Object.fromEntries(
  Object.keys(manifest.exports)
    .filter((path) => path !== "./package.json")
    .map((path) => (path === "." ? ["index", "src/index.ts"] : [path.slice(2), `src/entries/${path.slice(2)}.ts`])),
);

/** The floors of src/ground.ts. They become one file: as chunks they were five, and each costs a loader its share. */
const floors = readFileSync(join(import.meta.dirname, "src/ground.ts"), "utf8").matchAll(/"\.\/(\w+)\/index"/g);
const grounds = Array.from(floors, ([, folder]) => join(import.meta.dirname, "src", folder as string, sep));
const isGround = (path: string): boolean => grounds.some((folder) => path.startsWith(folder));

/** What is above the ground floors takes what it needs of them from that file. */
const fromGround = (extension: "js" | "cjs"): NonNullable<Options["esbuildPlugins"]>[number] => ({
  name: "ground",
  setup({ onResolve }) {
    onResolve({ filter: /^\..*\/index$/ }, ({ path, importer, resolveDir }) => {
      const inside = isGround(importer) || importer === join(import.meta.dirname, "src/ground.ts");
      if (inside || !isGround(join(resolveDir, path))) return;
      return { path: `./ground.${extension}`, external: true, sideEffects: false };
    });
  },
});

/**
 * `Object.values` of a namespace would keep every table in every bundle, since the object that a bundler makes of one looks
 * like something done. The list is written out, from the lines that export the tables.
 */
const tablesByName: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "tables by name",
  setup({ onLoad }) {
    onLoad({ filter: /severity[\\/]schemes[\\/]index\.ts$/ }, ({ path }) => {
      const lines = readFileSync(join(path, "../tables.ts"), "utf8").matchAll(/^export \{ (\w+) \} from/gm);
      const list = Array.from(lines, ([, name]) => `tables.${name}`).join(", ");
      const contents = readFileSync(path, "utf8").replace("Object.values(tables)", `[${list}]`);
      if (list === "" || !contents.includes(list)) throw new Error(`${path} makes no list of the tables`);
      return { contents, loader: "ts" };
    });
  },
};

const common = {
  target: "node20",
  platform: "node",
  splitting: true,
  // a chunk of which nothing is used is not loaded either
  treeshake: { moduleSideEffects: "no-external" },
  // `node:sqlite` and the like have no other name
  removeNodeProtocol: false,
  // tsup sets an option that TypeScript 6 calls deprecated
  dts: { entry: library, compilerOptions: { ignoreDeprecations: "6.0" } },
} satisfies Options;

/** The command, and the thread in which it reads Parquet, are ES modules alone: as CommonJS nothing would load them. */
export default defineConfig([
  {
    ...common,
    format: "esm",
    entry: {
      ...library,
      ground: "src/ground.ts",
      cli: "src/cli/main.ts",
      "parquet-worker": "src/cli/parquet/parquet-worker.ts",
    },
    esbuildPlugins: [fromGround("js"), tablesByName],
  },
  {
    ...common,
    format: "cjs",
    entry: { ...library, ground: "src/ground.ts" },
    esbuildPlugins: [fromGround("cjs"), tablesByName],
  },
]);
