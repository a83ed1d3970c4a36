// Runs every benchmark of this folder, each in a process of its own.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

const folder = fileURLToPath(new URL(".", import.meta.url));
const helpers = new Set(["all.mjs", "measure.mjs", "empty.mjs", "prompt.mjs"]);

for (const name of readdirSync(folder).filter((file) => file.endsWith(".mjs") && !helpers.has(file))) {
  console.log(`\n# ${name}`);
  const { status } = spawnSync(process.execPath, [folder + name], { stdio: "inherit" });
  if (status !== 0) process.exitCode = 1;
}
