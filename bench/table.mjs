// Bulk CSV: rows a second of `veladis table` against csv-parse alone on the same file, and memory from 10 to 500 MB.
// Each run is a process of its own, so that neither warms the other's engine.
import { spawnSync } from "node:child_process";
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { finish, report } from "./measure.mjs";

const command = process.env.VELADIS_CLI ?? fileURLToPath(new URL("../dist/cli.js", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "veladis-table-"));
const MEGABYTE = 1e6;

/** A made-up export of a historian, of this size; returns the number of rows. */
function makeFile(path, bytes) {
  const file = openSync(path, "w");
  let written = writeSync(file, "time,tag,value,unit,speed\n");
  let rows = 0;
  while (written < bytes) {
    let text = "";
    for (let i = 0; i < 10_000; i++, rows++) {
      const two = (n) => String(n).padStart(2, "0");
      const time = `2026-01-${two(1 + (rows % 28))}T${two(rows % 24)}:${two(rows % 60)}:00Z`;
      const value = (0.5 + ((rows * 7919) % 10_000) / 1000).toFixed(3);
      text += `${time},ID fan ${1 + (rows % 3)} bearing ${1 + (rows % 4)} horizontal,${value},mm/s rms,${1480 + (rows % 10)}\n`;
    }
    written += writeSync(file, text);
  }
  closeSync(file);
  return rows;
}

/** Runs node; how many seconds it took, and its greatest resident memory in megabytes. */
function run(args) {
  const tell = "process.on('exit',()=>process.stderr.write(' rss '+process.resourceUsage().maxRSS+' '))";
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ["--import", `data:text/javascript,${tell}`, ...args], {
    encoding: "utf8",
    cwd: fileURLToPath(new URL("..", import.meta.url)),
  });
  const seconds = (performance.now() - start) / 1000;
  if (status !== 0) throw new Error(stderr);
  return { seconds, rss: (Number(/ rss (\d+) /.exec(stderr)?.[1]) * 1024) / MEGABYTE };
}

const alone = (path) => [
  "--input-type=module",
  "-e",
  `import { createReadStream } from "node:fs"; import { parse } from "csv-parse"; let rows = 0;
   createReadStream(${JSON.stringify(path)}, { highWaterMark: 1 << 18 }).pipe(parse()).on("data", () => { rows++; });`,
];
const table = (path, ...more) => [
  command,
  ...["table", path, "--column", "value", "--replace", "--out", join(folder, "out.csv"), ...more],
];
const fixed = ["--from", "mm/s rms", "--to", "in/s pk", "--machine", "group 2 rigid", "--scheme", "iso-10816-3-2009"];
const byRow = [
  "--from-column",
  "unit",
  "--to",
  "um pp",
  "--speed-column",
  "speed",
  "--speed-unit",
  "r/min",
  "--at",
  "1x",
];

try {
  const middle = join(folder, "middle.csv");
  const rows = makeFile(middle, 70 * MEGABYTE);
  const contestants = { alone: alone(middle), fixed: table(middle, ...fixed), byRow: table(middle, ...byRow) };
  const best = {};
  for (let round = 0; round < 7; round++) {
    for (const [name, args] of Object.entries(contestants)) {
      best[name] = Math.min(best[name] ?? Number.POSITIVE_INFINITY, run(args).seconds);
    }
  }
  const rate = (name) => `${Math.round(rows / best[name] / 1000)}k rows/s`;
  console.log(`one file of 70 MB, ${rows} rows; start of the process included`);
  console.log(
    `      csv-parse alone ${rate("alone")}; converted and judged ${rate("fixed")}; by type and speed of each row ${rate("byRow")}`,
  );
  report("converted and judged, of csv-parse's own rows a second", (100 * best.alone) / best.fixed, 60, "%", true);
  console.log(`      type and speed by row: ${((100 * best.alone) / best.byRow).toFixed(0)} %`);
  rmSync(middle);

  const memory = {};
  for (const size of [10, 500]) {
    const path = join(folder, `${size}.csv`);
    makeFile(path, size * MEGABYTE);
    memory[size] = run(table(path, ...fixed)).rss;
    rmSync(path);
    rmSync(join(folder, "out.csv"));
  }
  console.log(`resident memory: ${memory[10].toFixed(0)} MB on 10 MB, ${memory[500].toFixed(0)} MB on 500 MB`);
  report("memory on 500 MB over memory on 10 MB", memory[500] / memory[10], 1.5, "x");
} finally {
  rmSync(folder, { recursive: true, force: true });
}
finish("Files");
