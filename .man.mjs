/** Writes the manual page into `dist/`, from the pages of the commands. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

const root = import.meta.dirname;
const { outputFiles } = await build({
  stdin: {
    contents: `import { version } from "./package.json";
import { pages } from "./src/cli/commands/pages";
import { manPage } from "./src/cli/options/man-page";
const all = await Promise.all(Object.entries(pages).map(async ([name, load]) => [name, await load()]));
export const text = manPage(version, all);`,
    resolveDir: root,
    loader: "ts",
  },
  bundle: true,
  write: false,
  format: "esm",
  platform: "node",
  target: "node20",
  logLevel: "error",
});
const [{ text: code }] = outputFiles;
const { text } = await import(`data:text/javascript;base64,${Buffer.from(code).toString("base64")}`);
writeFileSync(join(root, "dist/veladis.1"), text);
