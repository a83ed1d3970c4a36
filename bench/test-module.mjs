// A module of the tests, with its imports as one that needs no file of its own.
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

export async function bundled(path) {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL(`../test/${path}`, import.meta.url))],
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString("base64")}`);
}
