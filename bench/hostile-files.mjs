// Hostile files of ten kinds through every command that reads files: each ends in an answer or in one refusal, no row is
// lost without a word, none takes over 5 s or 300 MB. A process for each batch, so that its memory can be measured.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { build } from "esbuild";
import { finish, report } from "./measure.mjs";

const MOST_SHOWN = 20;
const { values } = parseArgs({
  options: {
    count: { type: "string", default: "10000" },
    batch: { type: "string", default: "10" },
    seed: { type: "string", default: "15" },
    kind: { type: "string" },
    built: { type: "string" },
    from: { type: "string" },
  },
});

/** Runs the files of one batch in this process and prints what came of them as JSON. */
async function runBatch(built) {
  const { attacked, drawing, hostileKinds } = await import(pathToFileURL(join(built, "attack.js")).href);
  const kinds = values.kind === undefined ? Object.keys(hostileKinds) : [values.kind];
  const folder = mkdtempSync(join(tmpdir(), "veladis-hostile-"));
  const counts = {};
  const failed = [];
  let slowest = 0;
  for (let i = Number(values.from); i < Number(values.from) + Number(values.batch); i++) {
    const kind = kinds[i % kinds.length];
    const file = hostileKinds[kind](drawing(Number(values.seed) + 7919 * i));
    const { faults, longest } = await attacked(file, folder);
    slowest = Math.max(slowest, longest);
    // so that what one file left is not counted with the next
    globalThis.gc();
    counts[kind] = (counts[kind] ?? 0) + 1;
    if (faults.length > 0) failed.push({ i, kind, faults, begins: file.content.toString("latin1", 0, 200) });
  }
  rmSync(folder, { recursive: true, force: true });
  console.log(JSON.stringify({ counts, failed, slowest, memory: process.resourceUsage().maxRSS / 1024 }));
}

if (values.built !== undefined) await runBatch(values.built);
else {
  const root = fileURLToPath(new URL("..", import.meta.url));
  // beside the packages that it loads
  mkdirSync(`${root}node_modules/.cache`, { recursive: true });
  const built = mkdtempSync(`${root}node_modules/.cache/hostile-`);
  const made = { counts: {}, failed: 0, slowest: 0, memory: 0, files: 0 };
  try {
    writeFileSync(join(built, "package.json"), '{ "type": "module" }');
    await build({
      stdin: {
        contents: `export * from "./test/robustness/attacked"; export * from "./test/robustness/hostile-files";`,
        resolveDir: root,
      },
      ...{ outfile: join(built, "attack.js"), bundle: true, format: "esm", platform: "node", packages: "external" },
    });
    await build({
      ...{ entryPoints: [`${root}src/cli/parquet/parquet-worker.ts`], outfile: join(built, "parquet-worker.js") },
      ...{ bundle: true, format: "esm", platform: "node", packages: "external" },
    });
    for (let from = 0; from < Number(values.count); from += Number(values.batch)) {
      const own = Math.min(Number(values.batch), Number(values.count) - from);
      const told = ["--built", built, "--from", `${from}`, "--batch", `${own}`, "--seed", values.seed];
      const kind = values.kind === undefined ? [] : ["--kind", values.kind];
      const script = fileURLToPath(import.meta.url);
      const child = spawnSync(process.execPath, ["--expose-gc", script, ...told, ...kind], {
        encoding: "utf8",
        timeout: own * 10_000,
      });
      if (child.status !== 0) {
        made.failed++;
        console.log(
          `files ${from} to ${from + own - 1}: the process ended with ${child.status ?? child.signal}\n${child.stderr}`,
        );
        continue;
      }
      const { counts, failed, slowest, memory } = JSON.parse(child.stdout);
      for (const [name, count] of Object.entries(counts)) made.counts[name] = (made.counts[name] ?? 0) + count;
      for (const one of failed.slice(0, Math.max(0, MOST_SHOWN - made.failed)))
        console.log(JSON.stringify(one, null, 1));
      made.failed += failed.length;
      made.files += own;
      made.slowest = Math.max(made.slowest, slowest);
      made.memory = Math.max(made.memory, memory);
    }
  } finally {
    rmSync(built, { recursive: true, force: true });
  }
  for (const [name, count] of Object.entries(made.counts)) console.log(`      ${name.padEnd(12)} ${count} files`);
  report(
    `hostile files of ${made.files} that end in a raw error, lose a row, or take over 5 s`,
    made.failed,
    0,
    "files",
  );
  report("longest of a command with one of them", made.slowest / 1000, 5, "s");
  report("most memory of a process that reads one after the other", made.memory, 300, "MiB");
  finish("Hostile files");
}
