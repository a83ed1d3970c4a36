/** Builds the site: pages and charts drawn from the library, then typedoc, then the library's bundle for live pages. */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { mendPages } from "./after.mjs";
import { deadLinks } from "./check-links.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const generated = join(root, "docs/generated");

/** Writes the generated pages and charts into `docs/generated/`. */
async function generate() {
  const folder = mkdtempSync(join(tmpdir(), "veladis-docs-"));
  const outfile = join(folder, "generate.mjs");
  await build({
    entryPoints: [join(root, "docs/site/generate.ts")],
    bundle: true,
    format: "esm",
    platform: "node",
    outfile,
    logLevel: "error",
  });
  const { files } = await import(pathToFileURL(outfile).href);
  rmSync(folder, { recursive: true });
  rmSync(generated, { recursive: true, force: true });
  mkdirSync(generated, { recursive: true });
  for (const [name, content] of Object.entries(files)) writeFileSync(join(generated, name), content);
}

/** The size of a folder in bytes. */
function sizeOf(folder) {
  return readdirSync(folder, { recursive: true })
    .map((name) => statSync(join(folder, name)))
    .filter((entry) => entry.isFile())
    .reduce((sum, { size }) => sum + size, 0);
}

await generate();
const { status } = spawnSync(
  process.execPath,
  [join(root, "node_modules/typedoc/bin/typedoc"), ...process.argv.slice(2)],
  {
    cwd: root,
    stdio: "inherit",
  },
);
if (status !== 0) process.exit(status ?? 1);
mendPages(join(root, "site"), generated);
await build({
  entryPoints: [join(root, "docs/site/live/main.js")],
  bundle: true,
  minify: true,
  format: "iife",
  target: "es2022",
  outfile: join(root, "site/assets/live.js"),
  logLevel: "error",
});
const dead = deadLinks(join(root, "site"));
if (dead.length > 0) {
  console.error(`links of the site that lead nowhere:\n${dead.join("\n")}`);
  process.exit(1);
}
const megabytes = sizeOf(join(root, "site")) / 1e6;
console.log(`site: ${megabytes.toFixed(2)} MB`);
if (megabytes > 8) {
  console.error("the site must stay below 8 MB");
  process.exit(1);
}
