// A report of 1,000 machines of 30 kinds, half of them with findings: how long it takes, its memory, the folder's size.
// Runs dist/cli.js, or the file of the command that is named: `node bench/plant-report.mjs [cli.js]`.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { finish, report } from "./measure.mjs";

const cli = process.argv[2] ?? fileURLToPath(new URL("../dist/cli.js", import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), "plant-report-"));
const COUNT = 1000;

// thirty kinds of plates: six machines, five sizes of each
const plates = [0, 1, 2, 3, 4].flatMap((size) => [
  ["pump", `${[45, 90, 132, 150, 190][size]} kW`, "2980 r/min", "rigid", "category II in service", ""],
  ["fan", `${[55, 110, 132, 160, 200][size]} kW`, "1485 r/min", "rigid", "BV-3 in service", "iso-14694-2003"],
  ["motor", `${[30, 75, 110, 160, 250][size]} kW`, "1485 r/min", "rigid", "in service", ""],
  ["compressor", `${[90, 132, 200, 250, 280][size]} kW`, "2970 r/min", "rigid", "in service", "iso-10816-3-2009"],
  ["gear drive", `${[55, 90, 132, 200, 250][size]} kW`, "1490 r/min", "rigid", "in service", ""],
  ["generator", `${[110, 160, 200, 250, 290][size]} kW`, "1500 r/min", "rigid", "in service", "iso-10816-3-2009"],
]);
const heading =
  "tag,description,kind,power,speed,support,place,nameplate,table,start-up s,coast-down s,loop,band,alarm,alarm delay s,trip,trip delay s,hysteresis,latching,contact,coil,sensor fault,timer resets,step,baseline,baseline date,baseline count,check date,known,as found,as left,tolerance,checked by,interval months";
const rows = Array.from({ length: COUNT }, (_, i) => {
  const [kind, power, speed, support, nameplate, table] = plates[i % plates.length];
  // every other row is as a careful person fills it in; the others have faults
  const isFaulty = i % 2 === 1;
  const [alarm, trip, baseline] = isFaulty ? ["1.4", "16", "1.5"] : ["2.6", "4.5", "1.5"];
  return [
    `M-${String(i + 1).padStart(4, "0")}`,
    ...[`invented ${kind} ${i + 1}`, kind, power, speed, support, "housing", nameplate, table, "3", "60"],
    ...["0 to 20 mm/s rms", "10 Hz to 1000 Hz", `${alarm} mm/s rms`, "5", `${trip} mm/s rms`, isFaulty ? "90" : "4"],
    ...[
      "5 %",
      "yes",
      "normally open",
      isFaulty ? "normally de-energised" : "normally energised",
      isFaulty ? "hold" : "alarm",
    ],
    ...["below threshold", "0.1 mm/s rms", `${baseline} mm/s rms`, "2026-01-12", isFaulty ? "1" : "14"],
    ...[
      isFaulty ? "2024-01-10" : "2026-06-10",
      "8 mm/s rms at 2400 r/min",
      "7.7 mm/s rms",
      "7.9 mm/s rms",
      "5 %",
      "shift B",
      "12",
    ],
  ].join(",");
});
const list = join(scratch, "plant.csv");
writeFileSync(list, `${[heading, ...rows].join("\n")}\n`);
const routes = ["2026-09-07", "2026-10-05", "2026-11-02"].map((date, month) => {
  const readings = Array.from({ length: COUNT }, (_, i) =>
    ["DE-H", "NDE-H"].map(
      (point, at) =>
        `M-${String(i + 1).padStart(4, "0")},${point},${(1 + ((i * 7 + at * 3 + month) % 60) / 10).toFixed(2)} mm/s rms,${date}`,
    ),
  ).flat();
  const path = join(scratch, `route-${month + 1}.csv`);
  writeFileSync(path, `tag,point,reading,date\n${readings.join("\n")}\n`);
  return path;
});

const out = join(scratch, "pages");
const tell = "process.on('exit',()=>process.stderr.write(' rss '+process.resourceUsage().maxRSS+' '))";
const began = performance.now();
const child = spawnSync(
  process.execPath,
  [
    "--import",
    `data:text/javascript,${tell}`,
    cli,
    "plant",
    "report",
    list,
    ...routes,
    "--out",
    out,
    "--on",
    "2026-11-20",
    "--json",
  ],
  { encoding: "utf8", maxBuffer: 1 << 28 },
);
const seconds = (performance.now() - began) / 1000;
if (child.status !== 0) throw new Error(child.stderr.slice(0, 600) || String(child.error));
const { machines, pages } = JSON.parse(child.stdout);
const names = readdirSync(out);
if (machines !== COUNT || pages !== COUNT + 1 || names.length !== pages)
  throw new Error(`${machines} machines, ${names.length} pages`);
const sizes = names.map((name) => statSync(join(out, name)).size);
const index = readFileSync(join(out, "index.html"), "utf8");
const flawed = (index.match(/data-worst="(?:error|warning)"/g) ?? []).length;
const total = sizes.reduce((sum, size) => sum + size, 0) / 2 ** 20;
const largest = Math.max(...names.map((name, i) => (name === "index.html" ? 0 : sizes[i]))) / 1024;

console.log(`${flawed} of ${COUNT} machines with an error or a warning, ${plates.length} kinds of plates`);
report("a report of 1,000 machines", seconds, 20, "s");
report("its memory at the most", Number(/rss (\d+)/.exec(child.stderr)?.[1]) / 1024, 200, "MiB");
report("the folder", total, 120, "MiB");
report("the largest page of a machine", largest, 200, "KiB");
report("the index", index.length / 2 ** 20, 2, "MiB");
if (!process.env.KEEP) rmSync(scratch, { recursive: true, force: true });
finish("A report of a plant");
