/** Stands for the module of that name in the sources: the thread that reads Parquet, built of them. */
import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../..", import.meta.url));
// beside the packages, where it finds hyparquet
const folder = `${root}node_modules/.cache/veladis`;
const { outputFiles } = await build({
  ...{ entryPoints: [`${root}src/cli/parquet/parquet-worker.ts`], bundle: true, format: "esm", write: false },
  ...{ platform: "node", packages: "external", logLevel: "error" },
});
const [file] = outputFiles;
const path = `${folder}/parquet-worker-${file?.hash.replace(/\W/g, "")}.mjs`;
mkdirSync(folder, { recursive: true });
// several tests may do this at once
writeFileSync(`${path}.${process.pid}`, file?.contents ?? "");
renameSync(`${path}.${process.pid}`, path);

export const workerUrl = pathToFileURL(path);
