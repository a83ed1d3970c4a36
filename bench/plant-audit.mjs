// A list of 1,000 machines parsed and audited, once in this fresh process, and by the command from its start to its end.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { auditPlant, parsePlant, plantColumns } from "../dist/plant.js";
import { finish, report } from "./measure.mjs";

const MACHINES = 1000;
const KINDS = 30;
const empty = ["limits", "limits source", "shaft height", "multiplier"];
const columns = Object.entries(plantColumns).filter(([name]) => !empty.includes(name));
const heading = columns.map(([name]) => name);
/** The example of each column, with a tag of its own, and a nameplate and a trip that repeat. */
const rows = Array.from({ length: MACHINES }, (_, i) =>
  columns.map(([name, { example }]) => {
    if (name === "tag") return `HW-${i}`;
    if (name === "power") return `${100 + (i % KINDS)} kW`;
    if (name === "table") return i % 2 === 0 ? example : "";
    return name === "trip" ? `${4 + (i % 8)} mm/s rms` : example;
  }),
);

const start = performance.now();
const plant = parsePlant({ heading, rows });
const parsed = performance.now();
const { findings } = auditPlant(plant, { on: "2026-11-28" });
const end = performance.now();
console.log(
  `${plant.machines.length} machines, ${findings.length} findings; parsed in ${(parsed - start).toFixed(0)} ms, audited in ${(end - parsed).toFixed(0)} ms`,
);
report("1,000 machines parsed and audited, the first time in a process", (end - start) / 1000, 1, "s");

const folder = mkdtempSync(join(tmpdir(), "bench-plant-"));
const file = join(folder, "plant.csv");
writeFileSync(file, [heading, ...rows].map((row) => `${row.join(";")}\n`).join(""));
const command = fileURLToPath(new URL("../dist/cli.js", import.meta.url));
const before = performance.now();
const { status } = spawnSync(process.execPath, [command, "plant", "audit", file, "--separator", "semicolon", "--csv"], {
  maxBuffer: 1 << 28,
});
console.log(
  `      ${((performance.now() - before) / 1000).toFixed(2)} s  by the command as a whole, exit code ${status}`,
);
rmSync(folder, { recursive: true });
finish("A plant's list: 1,000 machines audited");
