// Parquet with one bit flipped, or cut off, through `table`: an answer or one refusal, no raw error, no hang. What cannot be
// seen is counted too: a flipped bit within values that carry no checksum and stay within what the file tells of them.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { DuckDBInstance } from "@duckdb/node-api";
import { build } from "esbuild";
import { finish, report } from "./measure.mjs";

const { values } = parseArgs({
  options: { count: { type: "string", default: "5000" }, seed: { type: "string", default: "15" } },
});
const root = fileURLToPath(new URL("..", import.meta.url));
mkdirSync(`${root}node_modules/.cache`, { recursive: true });
const folder = mkdtempSync(`${root}node_modules/.cache/damaged-`);
const path = join(folder, "in.parquet");

let state = Number(values.seed);
const draw = (bound) => {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return Math.floor((state / 2 ** 32) * bound);
};

/** Whole files: each codec, with doubles, whole numbers, texts, times, nulls and nested columns, in two row groups. */
async function wholeFiles() {
  const connection = await (await DuckDBInstance.create(":memory:")).connect();
  const columns =
    "TIMESTAMP '2026-01-05 06:00:00' + INTERVAL (i) MINUTE AS time, CASE WHEN i % 13 <> 5 THEN i / 100 END AS level, " +
    "(1480 + i % 7)::INTEGER AS speed, 'pump ' || (i % 4) AS tag, [i, 1] AS list, {'a': i, 'b': 'x' || i} AS parts";
  const files = {};
  for (const codec of ["uncompressed", "snappy", "gzip", "brotli"]) {
    await connection.run(
      `COPY (SELECT ${columns} FROM range(3000) t(i)) TO '${path}' (FORMAT parquet, COMPRESSION ${codec}, ROW_GROUP_SIZE 2048)`,
    );
    files[codec] = readFileSync(path);
  }
  return files;
}

function damagedCopy(whole) {
  const copy = Buffer.from(whole);
  if (draw(20) === 0) return copy.subarray(0, draw(copy.length));
  const at = draw(copy.length);
  copy[at] ^= 1 << draw(8);
  return copy;
}

try {
  writeFileSync(join(folder, "package.json"), '{ "type": "module" }');
  const common = { bundle: true, format: "esm", platform: "node", packages: "external" };
  await build({ ...common, entryPoints: [`${root}src/cli/run.ts`], outfile: join(folder, "run.js") });
  await build({
    ...{ ...common, entryPoints: [`${root}src/cli/parquet/parquet-worker.ts`] },
    outfile: join(folder, "parquet-worker.js"),
  });
  const { run } = await import(pathToFileURL(join(folder, "run.js")).href);

  /** What `table` makes of a file. */
  const answer = async (bytes) => {
    writeFileSync(path, bytes);
    const printed = { out: "", err: "" };
    const start = performance.now();
    const io = {
      ...{ piped: undefined, colour: false },
      out(text) {
        printed.out += Buffer.from(text);
      },
      err(text) {
        printed.err += text;
      },
    };
    const code = await run(["table", path, "--column", "level", "--from", "mm/s rms", "--to", "in/s pk"], io);
    return { ...printed, code, took: performance.now() - start };
  };

  const files = await wholeFiles();
  let wrong = 0;
  let slowest = 0;
  for (const [codec, whole] of Object.entries(files)) {
    const sound = await answer(whole);
    const counts = { refused: 0, same: 0, unseen: 0 };
    for (let i = 0; i < Number(values.count) / Object.keys(files).length; i++) {
      const damaged = damagedCopy(whole);
      try {
        const { out, err, code, took } = await answer(damaged);
        slowest = Math.max(slowest, took);
        if (code !== 2 || !err.startsWith("veladis: ") || /\n {4}at /.test(err))
          throw new Error(`exit ${code}: ${err}`);
        if (!/^[\d ]+ rows: /m.test(err)) counts.refused++;
        else if (out === sound.out) counts.same++;
        else counts.unseen++;
      } catch (error) {
        wrong++;
        console.log(`${codec}, file ${i}: ${error.stack}`);
      }
    }
    console.log(`      ${codec.padEnd(12)} ${JSON.stringify(counts)}`);
  }
  console.log("      unseen: other values or texts, which the format without checksums does not show");
  report(`damaged Parquet files of ${values.count} that end in a raw error`, wrong, 0, "files");
  report("longest with one of them", slowest / 1000, 5, "s");
} finally {
  rmSync(folder, { recursive: true, force: true });
}
finish("Damaged Parquet");
