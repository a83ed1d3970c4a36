// Two ClickHouse servers on the loopback as two shards of one table: 10 million readings of 200 machines, judged there by
// the joined limits, every count and zone held against the library. Installs Debian's clickhouse-server where there is
// none; needs leave to install. `--rows` for another number of readings. Not part of bench/all.mjs.
import { spawn, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { parseArgs } from "node:util";
import { machineClassifier } from "../dist/severity.js";
import { limitColumns, machinesToSql } from "../dist/sql.js";
import { finish, report } from "./measure.mjs";
import { plant } from "./plant.mjs";

const { values } = parseArgs({ options: { rows: { type: "string", default: "10000000" } } });
const ROWS = Number(values.rows);
/** The program by which Debian installs. */
const INSTALLER = "apt-get";
const types = { text: "Nullable(String)", real: "Nullable(Float64)", whole: "Nullable(Int32)" };
const folder = mkdtempSync(join(tmpdir(), "veladis-cluster-"));

/** The program of the server, installed if it is not there. */
function serverProgram() {
  const found = () => ["clickhouse-server", "clickhouse"].find((name) => spawnSync("which", [name]).status === 0);
  if (found() === undefined) {
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    for (const args of [
      ["update", "-qq"],
      ["install", "-y", "-qq", "clickhouse-server"],
    ]) {
      if (spawnSync(INSTALLER, args, { env, stdio: ["ignore", "ignore", "inherit"] }).status !== 0) {
        throw new Error("clickhouse-server could not be installed");
      }
    }
  }
  const name = found();
  return name === "clickhouse" ? [name, "server"] : [name];
}

/** A port of the loopback that is free now. */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

/** The settings of one server, which knows both shards. */
function settingsOf(home, { http, tcp, interserver }, shards) {
  const nodes = shards.map(
    ({ tcp: port }) => `<shard><replica><host>127.0.0.1</host><port>${port}</port></replica></shard>`,
  );
  return `<clickhouse>
  <logger><level>warning</level><log>${home}/log</log><errorlog>${home}/errors</errorlog></logger>
  <listen_host>127.0.0.1</listen_host>
  <http_port>${http}</http_port><tcp_port>${tcp}</tcp_port><interserver_http_port>${interserver}</interserver_http_port>
  <path>${home}/data/</path><tmp_path>${home}/tmp/</tmp_path><user_files_path>${home}/files/</user_files_path>
  <format_schema_path>${home}/schemas/</format_schema_path>
  <mark_cache_size>134217728</mark_cache_size>
  <users><default><password></password><networks><ip>127.0.0.1</ip></networks><profile>default</profile><quota>default</quota></default></users>
  <profiles><default><max_threads>2</max_threads></default></profiles><quotas><default></default></quotas>
  <remote_servers><pair>${nodes.join("")}</pair></remote_servers>
</clickhouse>`;
}

async function ask(port, sql, format = "") {
  const answer = await fetch(`http://127.0.0.1:${port}/`, {
    method: "POST",
    body: format ? `${sql} FORMAT ${format}` : sql,
  });
  const text = await answer.text();
  if (!answer.ok) throw new Error(text.slice(0, 500));
  return format === "" ? text : JSON.parse(text).data;
}

async function ready(port) {
  for (let i = 0; i < 240; i++) {
    try {
      return await ask(port, "SELECT 1");
    } catch {
      await setTimeout(500);
    }
  }
  throw new Error("a server did not start");
}

/** Runs a query three times; its rows, and thousands of readings a second of the fastest. */
async function timed(port, sql, count) {
  let [best, rows] = [Number.POSITIVE_INFINITY, []];
  for (let i = 0; i < 3; i++) {
    const start = performance.now();
    rows = await ask(port, sql, "JSONCompact");
    best = Math.min(best, performance.now() - start);
  }
  return { rows, rate: Math.round(count / best) };
}

/** How many of each zone the library gives for the readings that each machine has. */
function expectedOf(levels, refused) {
  const out = new Set(refused.map(({ name }) => name));
  const judges = new Map(
    plant
      .filter(({ name }) => !out.has(name))
      .map(({ name, machine }) => [name, machineClassifier(machine, "mm/s rms")]),
  );
  const expected = new Map();
  for (const [machine, velocity, count] of levels) {
    const judge = judges.get(machine);
    const key = `${machine} ${judge === undefined ? null : `${judge(velocity)} ${judge.worst(velocity)}`}`;
    expected.set(key, (expected.get(key) ?? 0) + Number(count));
  }
  return expected;
}

function differencesOf(rows, expected) {
  const keyOf = ([machine, zone, worst]) => `${machine} ${zone === null ? null : `${zone} ${worst}`}`;
  const wrong = rows.filter((row) => expected.get(keyOf(row)) !== Number(row[3])).length;
  return wrong + (rows.length === expected.size ? 0 : 1);
}

const servers = [];
try {
  const program = serverProgram();
  const shards = [];
  for (let i = 0; i < 2; i++)
    shards.push({ http: await freePort(), tcp: await freePort(), interserver: await freePort() });
  for (const [i, shard] of shards.entries()) {
    const home = join(folder, `shard-${i + 1}`);
    mkdirSync(home);
    writeFileSync(join(home, "config.xml"), settingsOf(home, shard, shards));
    const [name, ...more] = program;
    servers.push(spawn(name, [...more, `--config-file=${join(home, "config.xml")}`], { cwd: home, stdio: "ignore" }));
  }
  for (const { http } of shards) await ready(http);
  const [first, second] = shards;
  for (const [i, { http }] of shards.entries()) {
    await ask(http, "CREATE TABLE part (machine String, velocity Float64) ENGINE = MergeTree ORDER BY machine");
    // odd rows on one shard, even ones on the other
    await ask(
      http,
      `INSERT INTO part SELECT concat('KW-', substring(toString(1001 + n % 200), 2)), (1 + (n * 7919) % 120) / 10
       FROM (SELECT number * 2 + ${i} AS n FROM numbers(${Math.floor(ROWS / 2)}))`,
    );
  }
  await ask(first.http, "CREATE TABLE readings AS part ENGINE = Distributed(pair, default, part, rand())");
  // the limits as a table of each server, as they would be kept
  const { rows: limits } = machinesToSql(plant, { table: "part", column: "velocity", from: "mm/s rms" });
  const columns = Object.entries(limitColumns).map(([key, [name, kind]]) => ({ key, name, type: types[kind] }));
  for (const { http } of shards) {
    const list = columns.map(({ name, type }) => `${name} ${type}`).join(", ");
    await ask(http, `CREATE TABLE limits (${list}) ENGINE = Memory`);
    const lines = limits.map((row) =>
      JSON.stringify(Object.fromEntries(columns.map(({ key, name }) => [name, row[key]]))),
    );
    await ask(http, `INSERT INTO limits FORMAT JSONEachRow ${lines.join("\n")}`);
  }
  const told = {
    limits: "limits",
    column: "velocity",
    from: "mm/s rms",
    dialect: "clickhouse",
  };
  const counted = (query) =>
    `SELECT machine, veladis_zone, veladis_worst, count() AS readings FROM (${query}) AS q GROUP BY machine, veladis_zone, veladis_worst ORDER BY machine, veladis_zone`;
  const both = machinesToSql(plant, { ...told, table: "readings" });
  const one = machinesToSql(plant, { ...told, table: "part" });
  const levels = (port, table) =>
    ask(port, `SELECT machine, velocity, count() FROM ${table} GROUP BY machine, velocity`, "JSONCompact");

  const alone = await timed(second.http, counted(one.query), ROWS / 2);
  const together = await timed(first.http, counted(both.query), ROWS);
  const wrong =
    differencesOf(alone.rows, expectedOf(await levels(second.http, "part"), one.refused)) +
    differencesOf(together.rows, expectedOf(await levels(first.http, "readings"), both.refused));
  const version = (await ask(first.http, "SELECT version()")).trim();
  console.log(
    `ClickHouse ${version}: ${ROWS} readings of ${plant.length} machines, ${both.refused.length} of them refused`,
  );
  console.log(`      one shard ${alone.rate}k rows/s, both ${together.rate}k rows/s`);
  report("zones and counts that differ from the library's", wrong, 0, "");
} finally {
  for (const server of servers) server.kill("SIGKILL");
  await setTimeout(500);
  rmSync(folder, { recursive: true, force: true });
}
finish("SQL: two shards of ClickHouse");
