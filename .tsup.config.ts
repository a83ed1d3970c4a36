import { readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { type OutputOptions, rollup } from "rollup";
import { dts } from "rollup-plugin-dts";
import { minify } from "terser";
import { defineConfig, type Options } from "tsup";
import { cli, loadedLater, oneFile } from "./.command";
import { aboveGround, ground, groundMore } from "./.ground";
import manifest from "./package.json";

/** The entries of the package, as its manifest names them: `.` is src/index.ts, the others are in src/entries. */
const entries = Object.fromEntries(
  Object.keys(manifest.exports)
    .filter((path) => path !== "./package.json")
    .map((path) => (path === "." ? ["index", "src/index.ts"] : [path.slice(2), `src/entries/${path.slice(2)}.ts`])),
);

/** Declarations for ES modules or for CommonJS: the same but for the names of files. */
const declared = (extension: "ts" | "cts"): OutputOptions => ({
  dir: "dist",
  entryFileNames: `[name].d.${extension}`,
  chunkFileNames: `[name]-[hash].d.${extension}`,
  sourcemap: true,
  sourcemapExcludeSources: true,
});

/** Writes the declarations of every entry, with maps that lead an editor to the source. */
async function declarations(): Promise<void> {
  const bundle = await rollup({
    input: entries,
    external: ["mathjs"],
    plugins: [dts({ sourcemap: true, tsconfig: "tsconfig.json" })],
    onLog(level, log, handle) {
      // two types of the compiler's own messages, which no program has to name
      if (!/NeedsCrestFactor, QuantityChange/.test(log.message)) handle(level, log);
    },
  });
  for (const extension of ["ts", "cts"] as const) await bundle.write(declared(extension));
  await bundle.close();
}

/**
 * White space goes, and names within functions become short; those of functions and classes stay, so that a trace can be
 * read without the maps. A loader reads the shorter text sooner.
 */
const shorter: NonNullable<Options["plugins"]>[number] = {
  name: "shorter",
  async buildEnd({ writtenFiles }) {
    for (const { name } of writtenFiles.filter(({ name }) => !name.endsWith(".map"))) {
      const { code = "", map } = await minify(readFileSync(name, "utf8"), {
        parse: { module: true } as object,
        compress: false,
        mangle: { keep_fnames: true, keep_classnames: true },
        // an engine prints the line that threw
        format: { comments: false, preserve_annotations: true, max_line_len: 120, ascii_only: true },
        sourceMap: { content: readFileSync(`${name}.map`, "utf8"), url: `${basename(name)}.map` },
      });
      writeFileSync(name, code);
      // the source lies beside them, in src/
      writeFileSync(`${name}.map`, JSON.stringify({ ...JSON.parse(String(map)), sourcesContent: undefined }));
    }
  },
};

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
  sourcemap: true,
  plugins: [shorter],
} satisfies Options;

/** The floors of src/ground.ts as two files, the entries, and what else is given. */
function builds(format: "esm" | "cjs", more: Record<string, string> = {}): Options[] {
  const extension = format === "esm" ? "js" : "cjs";
  const one = { ...common, format };
  const { index: _, ...above } = entries;
  // as an ES module the first of the two files is `veladis` itself
  const [first, rest] = format === "esm" ? (["index", above] as const) : (["ground", entries] as const);
  return [
    { ...one, entry: { [first]: "src/ground.ts" }, esbuildPlugins: ground },
    { ...one, entry: { "ground-more": "src/ground.ts" }, esbuildPlugins: groundMore(extension) },
    { ...one, entry: { ...rest, ...more }, esbuildPlugins: [tablesByName, ...aboveGround(extension)] },
  ];
}

/** The thread in which the command reads Parquet; like the command an ES module alone: as CommonJS nothing would load it. */
const thread = { "parquet-worker": "src/cli/parquet/parquet-worker.ts" };

const [first, ...others] = [
  ...builds("esm", { ...thread, ...loadedLater }),
  { ...common, format: "esm" as const, entry: { cli }, splitting: false, esbuildPlugins: [oneFile] },
  ...builds("cjs"),
];

// made once for both kinds; to start the command nobody needs them
const withTypes = process.argv.includes("--no-dts") ? {} : { onSuccess: declarations };

export default defineConfig([{ ...first, ...withTypes }, ...others]);
