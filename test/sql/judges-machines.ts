import { expect, it } from "vitest";
import { builtInSchemes, defineScheme, machineClassifier } from "../../src/severity/index";
import {
  type MachinesToSqlOptions,
  machinesToSql,
  type NamedMachine,
  type SqlDialect,
  toSql,
} from "../../src/sql/index";
import { machineFor } from "../severity/machine-for";
import { hostileScheme } from "../writing/hostile-scheme";
import { hostileTexts, shownAs } from "../writing/hostile-texts";
import { orNull } from "./or-null";
import type { Engine } from "./sqlite";

/** An engine that runs here, with its types of a text and a number. */
export type EngineTypes = readonly [dialect: SqlDialect, engine: Engine, text: string, real: string];

/** A text as the engine takes it in, by a rule of this file. */
function quoted(text: string, dialect: SqlDialect): string {
  const plain = dialect === "clickhouse" ? text.replace(/\\/g, "\\\\") : text;
  return `'${plain.replace(/'/g, "''")}'`;
}

type Reading = readonly [machine: string, value: number | null, speed?: number | null];

/** The readings as a table of the engine, in place of what it had. */
async function put(readings: readonly Reading[], [dialect, engine, text, real]: EngineTypes) {
  const rows = readings.map(
    ([machine, value, speed = null], i) =>
      `(${i}, ${quoted(machine, dialect)}, ${value === null ? "NULL" : value.toExponential()}, ${speed === null ? "NULL" : speed.toExponential()})`,
  );
  const memory = dialect === "clickhouse" ? " ENGINE = Memory" : "";
  await engine("DROP TABLE IF EXISTS trend");
  await engine(`CREATE TABLE trend (id INTEGER, tag ${text}, reading ${real}, speed ${real})${memory}`);
  await engine(`INSERT INTO trend VALUES ${rows.join(", ")}`);
}

/** Where the readings stand. */
export const asked = { table: "trend", machine: "tag", column: "reading" } as const;

type Answer = [zone: unknown, zones: unknown, worst: unknown, margin: unknown, assumed: unknown, refused: unknown];

async function answers(sql: string, engine: Engine): Promise<Answer[]> {
  const rows = await engine(
    `SELECT id, veladis_zone, veladis_zones, veladis_worst, veladis_margin, veladis_assumed, veladis_refused FROM (${sql}) AS judged_readings ORDER BY id`,
  );
  return rows.map(([, ...answer]) => answer as Answer);
}

/** What the library says of a value of a machine, as the columns have it. */
function ofLibrary({ machine, at }: NamedMachine, from: string, value: number | null) {
  const judge = orNull(() => machineClassifier(machine, from, at === undefined ? {} : { at }));
  if (judge === null || value === null || (value < 0 && !from.startsWith("dB"))) return [null, null, null, null];
  const [zone, worst] = [judge(value), judge.worst(value)];
  const [best, last] = [judge.zones.indexOf(zone), judge.zones.indexOf(worst)];
  const limit = judge.limits[Math.min(best, judge.limits.length - 1)] as number;
  const margin = from.startsWith("dB") ? 10 ** ((limit - value) / 20) : value === 0 ? null : limit / value;
  return [zone, judge.zones.slice(best, last + 1).join(", "), worst, margin];
}

/** Values at every limit of a machine, at the end of its tolerance, beside both, and what is no reading. */
function valuesFor({ machine, at }: NamedMachine, from: string): (number | null)[] {
  const judge = orNull(() => machineClassifier(machine, from, at === undefined ? {} : { at }));
  const edges = judge === null ? [1] : [...judge.limits, ...judge.bounds, ...judge.worstBounds];
  const beside = edges.flatMap((one) => [one, one * (1 + 2 ** -52), one * (1 - 2 ** -52), one * 0.9, one * 1.1]);
  return [...new Set([...beside, 0, -1, 1e300, null])];
}

const everyClass: readonly NamedMachine[] = builtInSchemes.flatMap((scheme) =>
  scheme.classes.map((one, i) => ({ name: `${scheme.id}/${i}`, machine: machineFor(scheme, one) })),
);

const kinds: readonly NamedMachine[] = [
  { name: "P-11", machine: "pump 90 kW category II 2980 r/min" },
  { name: "P-12", machine: "pump 90 kW category II" },
  { name: "V-02", machine: "fan 90 kW 1480 r/min rigid, in service" },
  { name: "M-07", machine: "motor 1485 r/min rigid" },
  { name: "M-08", machine: "motor 315 mm 2980 r/min", at: "2980 r/min" },
  { name: "T-01", machine: "steam turbine 3000 r/min 20 MW" },
  { name: "X-01", machine: "90 kW" },
];

/** Tests that the verdicts of an engine on lists of machines are those of the library. */
export function judgesMachines(engine: EngineTypes): void {
  const [dialect, run] = engine;

  async function holds(machines: readonly NamedMachine[], from: string, more: Partial<MachinesToSqlOptions> = {}) {
    const readings = machines.flatMap((one) =>
      valuesFor(one, from)
        // a level below -5000 dB or above is none of a vibration
        .filter((value) => value === null || !from.startsWith("dB") || Math.abs(value) < 5000)
        .map((value) => [one, value] as const),
    );
    await put(
      readings.map(([{ name }, value]) => [name, value]),
      engine,
    );
    const { query } = machinesToSql(machines, { ...asked, from, dialect, ...more } as MachinesToSqlOptions);
    const said = await answers(query, run);
    expect(said.length).toBe(readings.length);
    for (const [i, [machine, value]] of readings.entries()) {
      const [zone, zones, worst, margin] = ofLibrary(machine, from, value);
      const where = `${machine.name}, ${value} ${from}`;
      const [saidZone, saidZones, saidWorst, saidMargin] = said[i] as Answer;
      expect([saidZone, saidZones, saidWorst], where).toEqual([zone, zones, worst]);
      if (margin === null || (typeof margin === "number" && value === 1e300)) continue;
      if (typeof margin === "number") expect(Number(saidMargin) / margin, where).toBeCloseTo(1, 11);
    }
    return readings.length;
  }

  it("judges a machine of every class of every scheme as the library does, row by row", async () => {
    expect(await holds(everyClass, "mm/s rms")).toBeGreaterThan(1000);
  });

  it.each(["in/s pk", "um pp", "g rms", "dB re 1e-9 m/s"])(
    "judges readings in %s as the library does",
    async (from) => {
      await holds(kinds, from);
    },
  );

  it("gives no zone for a machine that is refused, or is on no list, and says why of the first", async () => {
    await put(
      [
        ["X-01", 2],
        ["nobody", 2],
      ],
      engine,
    );
    const { query, refused } = machinesToSql(kinds, { ...asked, from: "mm/s rms", dialect });
    expect(refused.map(({ name }) => name)).toEqual(["X-01"]);
    const [x, nobody] = await answers(query, run);
    expect(x?.slice(0, 5)).toEqual([null, null, null, null, null]);
    expect(x?.[5]).toContain("the kind of machine");
    expect(nobody).toEqual([null, null, null, null, null, null]);
  });

  it("judges by the speed of the row, and gives no zone where it is missing or zero", async () => {
    const machines = [{ name: "P-11", machine: "pump 90 kW category II 2980 r/min, housing" }] as const;
    await put(
      [
        ["P-11", 60, 2980],
        ["P-11", 60, 0],
        ["P-11", 60, null],
        ["P-11", 60, -2980],
      ],
      engine,
    );
    const { query } = machinesToSql(machines, {
      ...asked,
      from: "um pp",
      as: "mm/s rms",
      at: { column: "speed", unit: "r/min" },
      dialect,
    });
    const said = await answers(query, run);
    // 60 um pp at 2980 r/min: 0.030 mm x 2 pi x 49.67 / root 2 = 6.62 mm/s rms, between 5.1 and 8.5
    expect(said.map(([zone]) => zone)).toEqual(["C", null, null, null]);
    expect(said[0]?.[4]).toContain("assumed: one frequency, sine");
  });

  it("asks where a displacement was measured that is judged as a velocity", () => {
    const { refused } = machinesToSql([{ name: "P-11", machine: "pump 90 kW category II 2980 r/min" }], {
      ...asked,
      from: "um pp",
      as: "mm/s rms",
      at: { column: "speed", unit: "r/min" },
      dialect,
    });
    expect(refused.map(({ error }) => error.fact)).toEqual(["place"]);
  });

  it("takes the limits from a table that they were put in", async () => {
    await put([["P-11", 6]], engine);
    const { limits } = machinesToSql(kinds, { ...asked, from: "mm/s rms", dialect });
    const { query } = machinesToSql(kinds, { ...asked, from: "mm/s rms", dialect, limits: "kept" });
    await run("DROP TABLE IF EXISTS kept");
    await run(`CREATE TABLE kept${dialect === "clickhouse" ? " ENGINE = Memory" : ""} AS ${limits}`);
    expect(query).not.toContain("VALUES");
    expect((await answers(query, run)).map(([zone]) => zone)).toEqual(["C"]);
  });

  it("columns of the readings are called what they like: the reading that was told is judged", async () => {
    await run("DROP TABLE IF EXISTS old");
    const [text, real] = engine.slice(2) as [string, string];
    const memory = dialect === "clickhouse" ? " ENGINE = Memory" : "";
    await run(`CREATE TABLE old (machine ${text}, v ${real}, judged ${real}, zone ${text}, worst ${text})${memory}`);
    await run("INSERT INTO old VALUES ('P-11', 9.5, 0.1, 'A', 'A')");
    const { query } = machinesToSql(kinds, { table: "old", column: "v", from: "mm/s rms", dialect });
    const rows = await run(`SELECT zone, veladis_zone, veladis_judged FROM (${query}) AS again`);
    expect(rows).toEqual([["A", "D", 9.5]]);
  });

  it("limits that were put in a table for readings in another type judge none", async () => {
    await put([["P-11", 0.7]], engine);
    const { limits } = machinesToSql(kinds, { ...asked, from: "mm/s rms", dialect });
    await run("DROP TABLE IF EXISTS kept");
    await run(`CREATE TABLE kept${dialect === "clickhouse" ? " ENGINE = Memory" : ""} AS ${limits}`);
    const { query } = machinesToSql(kinds, { ...asked, from: "in/s pk", dialect, limits: "kept" });
    expect((await answers(query, run)).map(([zone]) => zone)).toEqual([null]);
  });

  it("a table of limits holds each limit as the scheme has it, with grade and source", async () => {
    const { limits, rows } = machinesToSql(kinds, { ...asked, from: "mm/s rms", dialect });
    const said = await run(
      `SELECT machine, limit_name, printed, printed_in, grade, source FROM (${limits}) AS kept WHERE machine = 'P-11' ORDER BY step`,
    );
    const own = rows.filter(({ machine }) => machine === "P-11");
    expect(said).toEqual(own.map((one) => [one.machine, one.name, one.printed, one.as, one.grade, one.source]));
    expect(said.map(([, name, printed]) => [name, printed])).toEqual([
      ["A/B", 3.2],
      ["B/C", 5.1],
      ["C/D", 8.5],
    ]);
  });

  const harmless = hostileTexts.filter((text) => shownAs(text) === text);

  it("hostile names of machines, and texts of a scheme, are nothing but texts", async () => {
    const scheme = defineScheme({ ...hostileScheme("'; DROP TABLE trend; --\\", "zones") } as never);
    const own = harmless.map((name) => ({ name, machine: "pump 90 kW" }));
    await put(
      own.map(({ name }) => [name, 3]),
      engine,
    );
    const { query, limits } = machinesToSql(own, { ...asked, from: "mm/s rms", dialect, schemes: [scheme] });
    expect((await answers(query, run)).map(([zone]) => zone)).toEqual(harmless.map(() => "B"));
    const said = await run(`SELECT machine, standard FROM (${limits}) AS kept WHERE step = 1`);
    expect(said.map(([name]) => name)).toEqual(harmless);
    expect(new Set(said.map(([, standard]) => standard))).toEqual(new Set([scheme.standard]));
  });

  it("hostile names of columns and tables are nothing but names", async () => {
    // those that could end a name in one of the engines
    for (const name of harmless.filter((one) => /["'`\\;]|--|\/\*|\$/.test(one) && one.length < 60)) {
      const { query } = machinesToSql(kinds, { from: "mm/s rms", dialect, table: name, machine: name, column: name });
      // no such table, whatever else the name says
      await expect(run(query), name).rejects.toThrow();
    }
    await put([["P-11", 6]], engine);
    expect((await answers(machinesToSql(kinds, { ...asked, from: "mm/s rms", dialect }).query, run)).length).toBe(1);
  });

  it("a column of texts gives no zone", async () => {
    await put([["4.5", 1]], engine);
    const { query } = machinesToSql([{ name: "4.5", machine: "pump 90 kW category II" }], {
      ...asked,
      column: "tag",
      from: "mm/s rms",
      dialect,
    });
    const single = toSql("in/s pk", "mm/s rms", { column: "tag", dialect });
    if (dialect === "sqlite") {
      expect((await answers(query, run)).map(([zone]) => zone)).toEqual([null]);
      expect(await run(`SELECT ${single} FROM trend`)).toEqual([[null]]);
    } else {
      await expect(answers(query, run)).rejects.toThrow();
      await expect(run(`SELECT ${single} FROM trend`)).rejects.toThrow();
    }
  });
}
