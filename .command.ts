// The command up to the answer of one line is one file: as chunks shared with what it loads later it was two dozen, each of
// which costs a loader its share, and a person who converts one reading waits for all of them.
import { basename, join, relative } from "node:path";
import { build } from "esbuild";
import type { Options } from "tsup";

const root = import.meta.dirname;
export const cli = "src/cli/main.ts";

/** What the command loads when it is asked for it: each an entry, so that it keeps its name. */
export const loadedLater: Record<string, string> = {};

/** Leaves out what is loaded later. */
export const oneFile: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "one file",
  setup({ onResolve }) {
    onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) => {
      if (kind !== "dynamic-import") return undefined;
      const name = `cli-${basename(path)}`;
      const file = relative(root, join(resolveDir, `${path}.ts`));
      if ((loadedLater[name] ??= file) !== file) throw new Error(`${file} and ${loadedLater[name]} have one name`);
      return { path: `./${name}.js`, external: true };
    });
  },
};

await build({
  absWorkingDir: root,
  entryPoints: [cli],
  bundle: true,
  format: "esm",
  platform: "node",
  packages: "external",
  write: false,
  plugins: [oneFile],
});
