// Runs every benchmark of this folder, each in a process of its own; with `--write`, the figures go into the guide.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const folder = fileURLToPath(new URL(".", import.meta.url));
const helpers = new Set(["all.mjs", "measure.mjs", "empty.js", "plant.mjs", "prompt.mjs", "test-module.mjs"]);
// most of an hour each, or servers to install: run by themselves
const long = new Set(["hostile-files.mjs", "damaged-parquet.mjs", "cluster.mjs"]);
const scratch = mkdtempSync(join(tmpdir(), "bench-"));
const record = join(scratch, "figures");

for (const name of readdirSync(folder).filter(
  (file) => file.endsWith(".mjs") && !helpers.has(file) && !long.has(file),
)) {
  console.log(`\n# ${name}`);
  const { status } = spawnSync(process.execPath, [folder + name], {
    stdio: "inherit",
    env: { ...process.env, BENCH_FIGURES: record },
  });
  if (status !== 0) process.exitCode = 1;
}

if (process.argv.includes("--write")) {
  const guide = fileURLToPath(new URL("../docs/guides/figures.md", import.meta.url));
  const sections = readFileSync(record, "utf8")
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line))
    .map(({ title, figures }) => {
      const rows = figures.map(({ name, shown, unit, limit, holds }) => {
        const bound = `${limit.replace("<=", "at most").replace(">=", "at least")}${holds ? "" : " (missed)"}`;
        return `| ${name} | ${shown} ${unit} | ${bound} |`;
      });
      return [`### ${title}`, "", "| figure | measured | bound |", "| --- | ---: | --- |", ...rows].join("\n");
    });
  const machine = `Measured on ${new Date().toISOString().slice(0, 10)} with Node ${process.versions.node} on ${cpus().length} cores (${cpus()[0].model.trim()}).`;
  const part = ["<!-- figures:begin -->", machine, ...sections, "<!-- figures:end -->"].join("\n\n");
  const page = readFileSync(guide, "utf8");
  writeFileSync(
    guide,
    page.replace(/<!-- figures:begin -->[\s\S]*<!-- figures:end -->/, () => part),
  );
}
rmSync(scratch, { recursive: true });
