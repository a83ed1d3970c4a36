import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { fromJson } from "../../src/json/index";
import { machineClassifier } from "../../src/severity/index";
import { duckdbRows, sqlite } from "../sql/engines";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-sql-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const list = "docs/examples/machines.csv";
const asked = ["--name-column", "tag", "--table", "readings", "--column", "velocity", "--from", "mm/s rms"];

/** Readings of the listed machines, in DuckDB. */
async function put(): Promise<void> {
  await duckdbRows(
    `CREATE OR REPLACE TABLE readings AS
     SELECT tag, velocity FROM (VALUES ('KW-01'), ('KW-02'), ('LU-01'), ('LU-02'), ('MO-05')) AS t(tag),
     (SELECT CAST(i AS DOUBLE) / 4 AS velocity FROM range(60) AS r(i)) AS v`,
  );
}

/** The zones that the library gives, by the words of the list. */
const words: Record<string, string> = {
  "KW-01": "pump 132 kW category II 2975 r/min",
  "KW-02": "pump 45 kW category II 1480 r/min",
  "LU-01": "fan 110 kW rigid BV-3 in service 1490 r/min",
  "LU-02": "fan 18.5 kW flexible BV-3 in service 1465 r/min",
  "MO-05": "motor 315 mm 160 kW rigid 1485 r/min",
};

async function holds(query: string): Promise<void> {
  const rows = await duckdbRows(`SELECT tag, velocity, veladis_zone, veladis_worst FROM (${query}) AS q`);
  expect(rows.length).toBe(300);
  for (const [tag, velocity, zone, worst] of rows as [string, number, string, string][]) {
    const judge = machineClassifier(words[tag] as string, "mm/s rms");
    expect([zone, worst], `${tag} ${velocity}`).toEqual([judge(velocity), judge.worst(velocity)]);
  }
}

describe("veladis sql", () => {
  it("prints a query for a list of machines that judges as the library does", async () => {
    await put();
    const { out, err, code } = await veladis(["sql", "--machines", list, ...asked]);
    expect(code).toBe(0);
    expect(err).toBe("rows: 5 in = 5 answered + 0 refused + 0 skipped; separator: comma\n");
    await holds(out);
  });

  it.each([
    ["csv", (path: string) => `SELECT * FROM read_csv('${path}')`],
    ["parquet", (path: string) => `SELECT * FROM read_parquet('${path}')`],
    ["sql", (path: string) => readFileSync(path, "utf8")],
  ])("writes the limits as %s, for a table that the query reads", async (form, read) => {
    await put();
    const path = join(folder, `limits.${form}`);
    const { out, code } = await veladis(["sql", "--machines", list, ...asked, "--limits-table", "kept", "--out", path]);
    expect(code).toBe(0);
    await duckdbRows(`CREATE OR REPLACE TABLE kept AS ${read(path)}`);
    await holds(out);
    const [[count]] = (await duckdbRows("SELECT count(*) FROM kept WHERE grade IS NULL OR source IS NULL")) as [
      [bigint],
    ];
    expect(Number(count)).toBe(0);
    const again = await veladis(["sql", "--machines", list, ...asked, "--limits-table", "kept", "--out", path]);
    expect([again.code, again.err.includes("--replace")]).toEqual([2, true]);
  });

  const own = join(folder, "own.csv");
  it("names the machines that it refuses, with their lines, and judges the others", async () => {
    writeFileSync(
      own,
      "tag;words\nKW-01;pump 132 kW category II 2975 r/min\nZZ-1;no kind\nKW-01;pump\n;pump\nVE-2;fan 5.5 kW\nKW-02;pump 45 kW category II 1480 r/min\n",
    );
    const { out, err, code } = await veladis(["sql", "--machines", own, ...asked]);
    expect(code).toBe(2);
    expect(err).toContain("own.csv, line 3");
    expect(err).toContain('"KW-01", as on line 2');
    expect(err).toContain("an empty cell");
    expect(err).toContain("rows: 6 in = 2 answered + 4 refused + 0 skipped; separator: semicolon");
    await put();
    const rows = await duckdbRows(`SELECT DISTINCT tag FROM (${out}) AS q WHERE veladis_zone IS NOT NULL`);
    expect(rows).toEqual([["KW-02"]]);
    const [[why]] = (await duckdbRows(`SELECT min(veladis_refused) FROM (${out}) AS q WHERE tag = 'KW-01'`)) as [
      [string],
    ];
    expect(why).toContain('more than one machine of this name, "KW-01": lines 2 and 4');
    expect((await veladis(["sql", "--machines", own, ...asked, "--keep-going"])).code).toBe(0);
  });

  it("answers as JSON that comes back", async () => {
    const { out } = await veladis(["sql", "--machines", list, ...asked, "--json"]);
    const lines = out.trimEnd().split("\n");
    const rows = lines.slice(0, -1).map((line) => fromJson("limit row", line));
    expect(rows.length).toBeGreaterThan(14);
    expect(rows[0]).toMatchObject({ machine: "KW-01", name: "A/B", printed: 3.2, step: 1 });
    expect(fromJson("sql", lines.at(-1) as string).sql).toContain("LEFT JOIN");
  });

  it("prints one expression, of a conversion or of a machine", async () => {
    const to = await veladis(["sql", "--column", "v", "--from", "in/s pk", "--to", "mm/s rms", "--dialect", "sqlite"]);
    // 0.25 in/s is 6.35 mm/s, and a sine's RMS is its peak over root 2
    expect((await sqlite(`SELECT ${to.out} FROM (SELECT 0.25 AS v)`))[0]?.[0]).toBeCloseTo(6.35 / Math.SQRT2, 12);
    const machine = words["KW-01"] as string;
    const told = ["sql", "--column", "v", "--from", "mm/s rms", "--dialect", "sqlite", "--machine", machine];
    expect(await sqlite(`SELECT ${(await veladis(told)).out} FROM (SELECT 5.2 AS v)`)).toEqual([["C"]]);
    const scheme = await veladis([...told, "--scheme", "iso-10816-7-2009", "--worst"]);
    expect(await sqlite(`SELECT ${scheme.out} FROM (SELECT 8.6 AS v)`)).toEqual([["D"]]);
  });

  it.each([
    [["--column", "v", "--from", "mm/s rms"], "what is asked"],
    [["--from", "mm/s rms", "--to", "in/s pk"], "--column"],
    [["--column", "v", "--to", "in/s pk"], "--from"],
    [["--column", "v", "--from", "mm/s rms", "--to", "in/s pk", "--out", "x.csv"], "options of a conversion"],
    [["--column", "v", "--from", "mm/s rms", "--machine", "pump 5 kW", "--to", "in/s pk"], "options of one machine"],
    [["--column", "v", "--from", "mm/s rms", "--machines", list, "--machine", "pump"], "options of a list of machines"],
    [["--column", "v", "--from", "mm/s rms", "--machines", list, "--name-column", "tag"], "--table"],
    [["--column", "v", "--from", "um pp", "--to", "mm/s rms", "--speed-column", "n"], "--speed-unit"],
    [["--column", "v", "--from", "mm/s rms", "--to", "in/s pk", "--dialect", "duck"], "engine"],
    [["--machines", list, ...asked, "--out", "limits.txt"], ".csv, .parquet or .sql"],
    [["--machines", list, ...asked.slice(2)], "a column of the header"],
  ])("%j is refused with %s", async (args, said) => {
    const { code, err } = await veladis(["sql", ...args]);
    expect([code, err.includes(said)], err).toEqual([2, true]);
    expect(existsSync("limits.txt")).toBe(false);
  });

  it("a machine whose name a spreadsheet would run is left out of a CSV, told with its line, and held by other files", async () => {
    writeFileSync(own, "tag,words\nKW-01,pump 132 kW category II 2975 r/min\n=1+1,pump 5 kW category II\n");
    const path = join(folder, "odd.csv");
    const { code, err } = await veladis(["sql", "--machines", own, ...asked, "--out", path]);
    expect(code).toBe(2);
    expect(err).toContain("own.csv, line 3");
    expect(err).toContain("--out in .parquet or .sql holds any name");
    expect(err).toContain("rows: 2 in = 1 answered + 1 refused");
    const machines = await duckdbRows(`SELECT DISTINCT machine FROM read_csv('${path}')`);
    expect(machines).toEqual([["KW-01"]]);
    const parquet = join(folder, "odd.parquet");
    expect((await veladis(["sql", "--machines", own, ...asked, "--out", parquet])).code).toBe(0);
    const all = await duckdbRows(`SELECT DISTINCT machine FROM read_parquet('${parquet}') ORDER BY machine`);
    expect(all).toEqual([["=1+1"], ["KW-01"]]);
  });
});
