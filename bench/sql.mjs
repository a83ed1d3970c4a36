// The verdicts on 10 million readings of 200 machines by one join in DuckDB, against plain scans of the same columns.
import { DuckDBInstance } from "@duckdb/node-api";
import { machineClassifier } from "../dist/severity.js";
import { machinesToSql } from "../dist/sql.js";
import { finish, report } from "./measure.mjs";
import { levelOfRow, nameOfRow, plant } from "./plant.mjs";

const ROWS = 10_000_000;
const connection = await (await DuckDBInstance.create(":memory:")).connect();
await connection.run(
  `CREATE TABLE readings AS SELECT ${nameOfRow("i")} AS machine, ${levelOfRow("i")} AS velocity FROM range(${ROWS}) AS t(i)`,
);
const rowsOf = async (sql) => (await connection.runAndReadAll(sql)).getRows();

const { query, refused } = machinesToSql(plant, { table: "readings", column: "velocity", from: "mm/s rms" });
/** Four texts as long as the zones of the plant, by limits that are the same for all: what this lacks is the join. */
const alike =
  "CASE WHEN velocity <= 2.3 THEN 'A' WHEN velocity <= 4.5 THEN 'service' WHEN velocity <= 7.1 THEN 'alarm' ELSE 'shutdown' END";
const contestants = {
  "zones of each machine counted, by the join": `SELECT machine, veladis_zone, count(*) FROM (${query}) AS q GROUP BY machine, veladis_zone`,
  "plain scan (a): the same columns, counted by machine and by one ladder for all": `SELECT machine, ${alike} AS zone, count(*) FROM readings GROUP BY machine, zone`,
  "plain scan (b): the same columns, counted by machine":
    "SELECT machine, count(velocity) FROM readings GROUP BY machine",
  "worst zones, not grouped, by the join": `SELECT max(machine), count(veladis_worst) FROM (${query}) AS q`,
  "plain scan (c): the same columns, not grouped": "SELECT max(machine), count(velocity > 4.5) FROM readings",
};
const [joined, scanA, scanB, worst, scanC] = Object.keys(contestants);
const best = {};
for (let round = 0; round < 9; round++) {
  for (const [name, sql] of Object.entries(contestants)) {
    const start = performance.now();
    await rowsOf(sql);
    best[name] = Math.min(best[name] ?? Number.POSITIVE_INFINITY, performance.now() - start);
  }
}

// every machine has each of the 120 readings equally often, but for the parity of its number
const judges = new Map(
  plant
    .filter(({ name }) => refused.every((one) => one.name !== name))
    .map(({ name, machine }) => [name, machineClassifier(machine, "mm/s rms")]),
);
let differences = 0;
const levels = await rowsOf("SELECT machine, velocity, count(*) FROM readings GROUP BY machine, velocity");
const expected = new Map();
for (const [machine, velocity, count] of levels) {
  const judge = judges.get(machine);
  const key = `${machine} ${judge === undefined ? null : judge(velocity)}`;
  expected.set(key, (expected.get(key) ?? 0) + Number(count));
}
const said = await rowsOf(contestants[joined]);
for (const [machine, zone, count] of said) {
  if (expected.get(`${machine} ${zone}`) !== Number(count)) differences++;
}
if (said.length !== expected.size) differences++;

console.log(
  `${ROWS} readings of ${plant.length} machines, ${refused.length} of them refused; best of 9 rounds in turns`,
);
for (const [name, ms] of Object.entries(best)) console.log(`      ${ms.toFixed(0).padStart(6)} ms  ${name}`);
console.log(
  `      by the join over (b): ${(best[joined] / best[scanB]).toFixed(2)} x; (b) makes no zones and groups by one column`,
);
console.log(`      not grouped, by the join over (c): ${(best[worst] / best[scanC]).toFixed(2)} x`);
report("zones of each machine by the join, of plain scan (a)", best[joined] / best[scanA], 2, "x");
report("zones and counts that differ from the library's", differences, 0, "");
finish("SQL: 200 machines by one join in DuckDB");
