import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { build, type OutputFile, type Plugin } from "esbuild";
import { root } from "../examples/fences";

const manifest = JSON.parse(readFileSync(`${root}/package.json`, "utf8")) as {
  exports: Record<string, { import: { default: string } }>;
};

/** Every entry of the package, with its built ES module. */
export const entries: ReadonlyMap<string, string> = new Map(
  Object.entries(manifest.exports)
    .filter(([path]) => path !== "./package.json")
    .map(([path, conditions]) => [path.replace(/^\./, "veladis"), `${root}/${conditions.import.default}`]),
);

/** What an entry needs besides; measured without it. Each of them says of itself that it has no side effects. */
const dependency = /^(mathjs|d3-scale|d3-shape)(\/|$)/;

/** Modules that exist by name and text only; `veladis` is what was built, as an installed package would be. */
function virtual(modules: ReadonlyMap<string, string>, sideEffects: boolean): Plugin {
  return {
    name: "virtual",
    setup: ({ onResolve, onLoad }) => {
      onResolve({ filter: /^virtual:/ }, ({ path }) => ({ path, namespace: "virtual" }));
      onLoad({ filter: /.*/, namespace: "virtual" }, ({ path }) => ({
        contents: modules.get(path) as string,
        loader: "ts",
        resolveDir: root,
      }));
      onResolve({ filter: dependency }, ({ path }) => ({ path, external: true, sideEffects: false }));
      onResolve({ filter: /^veladis/ }, ({ path }) => ({ path: entries.get(path) as string, sideEffects }));
      onResolve({ filter: /^\.\/.*\.js$/ }, ({ path, resolveDir }) => ({
        path: `${resolveDir}/${path.slice(2)}`,
        sideEffects,
      }));
    },
  };
}

/**
 * The minified bundle of each piece of code, all in one build. The package's own word that it has no side effects is
 * taken or, with `sideEffects`, is not: then whatever its files do when they are loaded stays.
 */
export async function bundled(
  codes: Readonly<Record<string, string>>,
  { sideEffects = false } = {},
): Promise<Map<string, string>> {
  const names = Object.keys(codes);
  const { outputFiles } = await build({
    entryPoints: names.map((_, i) => ({ in: `virtual:${i}`, out: `${i}` })),
    plugins: [virtual(new Map(names.map((name, i) => [`virtual:${i}`, codes[name] as string])), sideEffects)],
    bundle: true,
    minify: true,
    charset: "utf8",
    format: "esm",
    platform: "neutral",
    outdir: "out",
    write: false,
    logLevel: "error",
  });
  const texts = outputFiles.map(({ path, text }: OutputFile) => [path, text] as const);
  return new Map(texts.map(([path, text]) => [names[Number(/(\d+)\.js$/.exec(path)?.[1])] as string, text.trimEnd()]));
}

/** Bytes of a text as they are sent. */
export function gzipped(text: string): number {
  return gzipSync(text, { level: 9 }).length;
}
