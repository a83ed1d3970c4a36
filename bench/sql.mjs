// The verdicts on 10 million readings of 200 machines by one join in DuckDB, against a plain scan of the same columns.
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
const contestants = {
  scan: "SELECT machine, count(velocity) FROM readings GROUP BY machine",
  judged: `SELECT machine, veladis_zone, count(*) FROM (${query}) AS q GROUP BY machine, veladis_zone`,
  worst: `SELECT max(machine), count(veladis_worst) FROM (${query}) AS q`,
  plain: "SELECT max(machine), sum(velocity) FROM readings",
};
const best = {};
for (let round = 0; round < 7; round++) {
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
const said = await rowsOf(contestants.judged);
for (const [machine, zone, count] of said) {
  if (expected.get(`${machine} ${zone}`) !== Number(count)) differences++;
}
if (said.length !== expected.size) differences++;

console.log(`${ROWS} readings of ${plant.length} machines, ${refused.length} of them refused`);
for (const [name, ms] of Object.entries(best)) console.log(`      ${name.padEnd(8)} ${ms.toFixed(0)} ms`);
report("zones of each machine counted, of a count by machine", best.judged / best.scan, 2, "x");
report("zones and counts that differ from the library's", differences, 0, "");
finish("SQL: 200 machines by one join in DuckDB");
