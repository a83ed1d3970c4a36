import { describe, expect, it } from "vitest";
import { builtInSchemes, machineClassifier } from "../../src/severity/index";
import {
  type LimitRow,
  limitColumns,
  type MachinesToSqlOptions,
  machinesToSql,
  type NamedMachine,
  type SqlDialect,
  toSql,
} from "../../src/sql/index";
import { rowsAsTable } from "../../src/sql/rows-as-table";
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

/** The columns of a table of limits, each as told. */
function columnsAs(one: (name: string) => string): string {
  return Object.values(limitColumns)
    .map(([name]) => one(name))
    .join(", ");
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

  /** A table of limits in the engine, in place of the one before. */
  async function keep(limits: string): Promise<void> {
    await run("DROP TABLE IF EXISTS kept");
    await run(`CREATE TABLE kept${dialect === "clickhouse" ? " ENGINE = Memory" : ""} AS ${limits}`);
  }

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
    const told = { ...asked, from, dialect, ...more } as MachinesToSqlOptions;
    const { query, limits } = machinesToSql(machines, told);
    const said = await answers(query, run);
    await keep(limits);
    expect(await answers(machinesToSql(machines, { ...told, limits: "kept" }).query, run)).toEqual(said);
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

  it("gives no zone for NaN, an infinity or a negative number, of a machine with something not judged neither", async () => {
    const numbers: Record<string, readonly string[]> = {
      duckdb: ["'NaN'::DOUBLE", "'Infinity'::DOUBLE", "'-Infinity'::DOUBLE"],
      postgresql: ["'NaN'::float8", "'Infinity'::float8", "'-Infinity'::float8"],
      sqlite: ["9e999 - 9e999", "9e999", "-9e999"],
      clickhouse: ["nan", "inf", "-inf"],
    };
    const machines = [
      { name: "P-11", machine: "pump 90 kW category II 2980 r/min" },
      { name: "M-09", machine: "motor 400 kW 600 r/min rigid" },
    ];
    expect(machineClassifier(machines[1]?.machine as string, "mm/s rms").complete).toBe(false);
    for (const number of [...(numbers[dialect] as readonly string[]), "-1e0", "-1e-300"]) {
      await put(
        machines.map(({ name }) => [name, 1]),
        engine,
      );
      const table = `SELECT id, tag, ${number} AS reading FROM trend`;
      await run("DROP TABLE IF EXISTS odd");
      await run(`CREATE TABLE odd${dialect === "clickhouse" ? " ENGINE = Memory" : ""} AS ${table}`);
      const { query } = machinesToSql(machines, {
        table: "odd",
        machine: "tag",
        column: "reading",
        from: "mm/s rms",
        dialect,
      });
      for (const row of await answers(query, run)) expect(row.slice(0, 4), number).toEqual([null, null, null, null]);
    }
  });

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
    await keep(limits);
    expect(query).not.toContain("VALUES");
    expect((await answers(query, run)).map(([zone]) => zone)).toEqual(["C"]);
  });

  describe("of an edited table of limits", () => {
    const pump = [kinds[0] as NamedMachine];
    const rows = machinesToSql(pump, { ...asked, from: "mm/s rms" }).rows as readonly LimitRow[];
    const edited = (step: number, change: Partial<LimitRow>): readonly LimitRow[] =>
      rows.map((row) => (row.step === step ? { ...row, ...change } : row));

    /** What readings of the pump are by the limits 3.2, 5.1 and 8.5, as edited. */
    async function judged(list: readonly LimitRow[], ...values: number[]) {
      await keep(rowsAsTable(list, dialect));
      await put(
        values.map((value) => ["P-11", value]),
        engine,
      );
      return answers(machinesToSql(pump, { ...asked, from: "mm/s rms", dialect, limits: "kept" }).query, run);
    }

    it("the limit decides, of the zone and of the margin", async () => {
      const [below, above] = await judged(edited(2, { limit: 4 }), 3.9, 4.5);
      expect([below?.[0], above?.[0]]).toEqual(["B", "C"]);
      expect(below?.[3]).toBeCloseTo(4 / 3.9, 12);
      expect(above?.[3]).toBeCloseTo(8.5 / 4.5, 12);
    });

    it("one row that says that something is not judged leaves the last zone possible", async () => {
      const [row] = await judged(edited(2, { open: 1 }), 4);
      expect(row?.slice(0, 3)).toEqual(["B", "B, C, D", "D"]);
    });

    it.each([
      ["rows twice", [...rows, ...rows]],
      ["a row twice and another missing", [rows[0], rows[0], rows[2]] as LimitRow[]],
      ["a row more of the same step", [...rows, ...edited(2, { limit: 4 })]],
      ["how many rows there are, lost", edited(1, { rows: null as never })],
      ["a limit above the next", edited(1, { limit: 32 })],
      ["a limit below the one before", edited(3, { limit: 0.85 })],
      ["two limits alike", edited(2, { limit: 8.5 })],
      ["a limit of zero", edited(1, { limit: 0 })],
      ["a limit below zero", edited(1, { limit: -3.2 })],
      ["no limit", edited(2, { limit: null })],
      ["the first step missing", rows.slice(1)],
      ["a step missing", rows.filter(({ step }) => step !== 2)],
      ["the last step missing", rows.slice(0, 2)],
      ["a step more than the query knows", [...rows, { ...(rows[2] as LimitRow), step: 4, limit: 12 }]],
      ["no step", edited(2, { step: null })],
      ["a zone of two names", [...rows, ...edited(2, { zone: "b" })]],
      ["a zone of no name", edited(2, { zone: "" })],
      ["another zone above than the next", edited(1, { beyond: "C" })],
      ["another last zone", edited(1, { last: "C" })],
      ["what it decides misspelt", edited(1, { decides: "zones" as never })],
      ["nothing on what is open", edited(1, { open: null })],
      ["a reason to refuse beside limits", edited(1, { refused: "taken out of service" })],
    ])("%s is refused: no zone, and why", async (_, list) => {
      for (const row of await judged(list, 1, 4, 6, 20)) {
        expect(row.slice(0, 4)).toEqual([null, null, null, null]);
        expect(row[5]).toMatch(/contradict themselves|taken out of service/);
      }
    });

    describe("by which several criteria judge", () => {
      const motor: readonly NamedMachine[] = [{ name: "MO", machine: "motor 1485 r/min rigid" }];
      const own = machinesToSql(motor, { ...asked, from: "mm/s rms" }).rows as readonly LimitRow[];
      const first = own[0]?.scheme;
      const of = (is: (row: LimitRow) => boolean, change: Partial<LimitRow>): readonly LimitRow[] =>
        own.map((row) => (is(row) ? { ...row, ...change } : row));
      const isOne = (row: LimitRow): boolean => row.scheme === first && row.step === 2;

      async function said(list: readonly LimitRow[]) {
        await keep(rowsAsTable(list, dialect));
        const values = [0.5, 1, 2, 3, 6, 20];
        await put(
          values.map((value) => ["MO", value]),
          engine,
        );
        return answers(machinesToSql(motor, { ...asked, from: "mm/s rms", dialect, limits: "kept" }).query, run);
      }

      it("the criteria are told apart by number, and judge together as the library does", async () => {
        expect(new Set(own.map(({ criterion }) => criterion))).toEqual(new Set([1, 2, 3]));
        const zone = machineClassifier("motor 1485 r/min rigid", "mm/s rms");
        expect((await said(own)).map(([one]) => one)).toEqual([0.5, 1, 2, 3, 6, 20].map((value) => zone(value)));
      });

      it.each([
        ["a step deleted", own.filter((row) => !isOne(row)), /fewer or more rows/],
        ["all rows of one scheme deleted", own.filter(({ scheme }) => scheme !== first), /fewer or more rows/],
        ["a limit times ten", of(isOne, { limit: 28 }), /each criterion needs/],
        [
          "the rows of one scheme renamed",
          of(({ scheme }) => scheme === first, { machine: "MO " }),
          /fewer or more rows/,
        ],
        [
          "readings of one scheme in another type",
          of(({ scheme }) => scheme === first, { readings: "in/s pk" }),
          /fewer or/,
        ],
        ["a row that decides otherwise", of(isOne, { decides: "worst" }), /those that decide its zone/],
        [
          "a scheme that decides otherwise",
          of(({ scheme }) => scheme === first, { decides: "worst" }),
          /those that decide/,
        ],
        ["a row moved to the other criterion", of(isOne, { criterion: 2 }), /each criterion needs/],
        ["a zone of another name", of(isOne, { zone: "b" }), /the zones of a row/],
      ])("%s: no zone, and the reason", async (_, list, reason) => {
        for (const row of await said(list)) {
          expect(row.slice(0, 4)).toEqual([null, null, null, null]);
          expect(row[5]).toMatch(reason);
        }
      });
    });

    it("texts in place of limits give no zone, or are refused by the engine", async () => {
      await put([["P-11", 6]], engine);
      await keep(rowsAsTable(rows, dialect));
      const memory = dialect === "clickhouse" ? " ENGINE = Memory" : "";
      const list = columnsAs((name) => (name === "limit_value" ? `CAST(${name} AS ${engine[2]}) AS ${name}` : name));
      await run("DROP TABLE IF EXISTS texts");
      await run(`CREATE TABLE texts${memory} AS SELECT ${list} FROM kept WHERE step IS NOT NULL`);
      const { query } = machinesToSql(pump, { ...asked, from: "mm/s rms", dialect, limits: "texts" });
      if (dialect === "sqlite") expect((await answers(query, run)).map(([zone]) => zone)).toEqual([null]);
      else await expect(answers(query, run)).rejects.toThrow();
    });
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
    await keep(limits);
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
  /** Those that one of the engines could obey. */
  const obeyed = harmless.filter((text) => /["'`\\;$?]|--|\/\*|\*\//.test(text));

  /** What the query answers with the limits in it, and with the limits that it reads from a table. */
  async function bothWays(machines: readonly NamedMachine[], more: Partial<MachinesToSqlOptions>) {
    const told = { ...asked, from: "mm/s rms", dialect, ...more } as MachinesToSqlOptions;
    const { query, limits } = machinesToSql(machines, told);
    await keep(limits);
    const kept = machinesToSql(machines, { ...told, limits: "kept" });
    return [await answers(query, run), await answers(kept.query, run)] as const;
  }

  it("hostile names of machines are nothing but texts", async () => {
    const own = harmless.map((name) => ({ name, machine: "pump 90 kW category II" }));
    await put(
      own.map(({ name }) => [name, 4]),
      engine,
    );
    for (const said of await bothWays(own, {})) expect(said.map(([zone]) => zone)).toEqual(harmless.map(() => "B"));
    const said = await run("SELECT machine FROM kept WHERE step = 1");
    expect(said.map(([name]) => name)).toEqual(harmless);
  });

  it("hostile words of a machine and texts of a scheme are nothing but texts", async () => {
    await put(
      [
        ["P-11", 3],
        ["P-12", 3],
      ],
      engine,
    );
    for (const text of obeyed) {
      // signs that may be a comparison are refused in a machine
      const words = `pump 90 kW, ${text}`;
      const schemes = [hostileScheme(text, "zones")];
      const own = [
        { name: "P-11", machine: "pump 90 kW" },
        { name: "P-12", machine: words },
      ];
      const judge = orNull(() => machineClassifier(words, "mm/s rms", { schemes }));
      for (const [first, second] of await bothWays(own, { schemes })) {
        expect([first?.[0], second?.[0]], text).toEqual(["B", judge === null ? null : "B"]);
        for (const one of judge?.setAside ?? []) expect(second?.[4], text).toContain(`set aside: ${one}`);
      }
      const said = await run("SELECT scheme, standard, edition FROM kept WHERE machine = 'P-11' AND step = 1");
      expect(said, text).toEqual([[`id ${text}`, schemes[0]?.standard, schemes[0]?.edition]]);
    }
  }, 60_000);

  it("hostile reasons to refuse, and zones of an edited table, are nothing but texts", async () => {
    const machines = [{ name: "P-11", machine: "pump 90 kW category II" }];
    await put([["P-11", 4]], engine);
    const { query, rows } = machinesToSql(machines, { ...asked, from: "mm/s rms", dialect, limits: "kept" });
    for (const text of obeyed) {
      // a scheme of grades gives no verdict, and is named where that is said
      for (const [row] of await bothWays(machines, { schemes: [hostileScheme(text)] })) {
        expect([row?.[0], String(row?.[5]).includes(text.slice(0, 20))], text).toEqual([null, true]);
      }
      const named = (zone: string | null): string => `${text} ${zone}`;
      await keep(
        rowsAsTable(
          rows.map((row) => ({ ...row, zone: named(row.zone), beyond: named(row.beyond), last: named(row.last) })),
          dialect,
        ),
      );
      const [row] = await answers(query, run);
      expect([row?.[0], row?.[5]], text).toEqual([null, expect.stringContaining("made for other zones")]);
    }
  }, 60_000);

  it("hostile names of columns and tables are nothing but names", async () => {
    const memory = dialect === "clickhouse" ? " ENGINE = Memory" : "";
    const [text, real] = engine.slice(2) as [string, string];
    const places: Partial<Record<SqlDialect, string>> = {
      sqlite: "ATTACH ':memory:' AS plant",
      clickhouse: "CREATE DATABASE plant",
    };
    await run(places[dialect] ?? "CREATE SCHEMA plant");
    const as = (name: string): string => {
      const plain = dialect === "clickhouse" ? name.replace(/\\/g, "\\\\") : name;
      return `"${plain.replace(/"/g, '""')}"`;
    };
    for (const name of obeyed.filter((one) => one.length < 50)) {
      const [tag, reading] = [`${name} m`, `r ${name}`];
      await run(`CREATE TABLE plant.${as(name)} (${as(tag)} ${text}, ${as(reading)} ${real})${memory}`);
      await run(`INSERT INTO plant.${as(name)} VALUES ('P-11', 6)`);
      const told = { from: "mm/s rms", dialect, table: ["plant", name], machine: tag, column: reading } as const;
      const { query, limits } = machinesToSql(kinds, told);
      const zones = (sql: string) => run(`SELECT veladis_zone FROM (${sql}) AS q`);
      expect(await zones(query), name).toEqual([["C"]]);
      const kept = `${name} kept`;
      await run(`CREATE TABLE plant.${as(kept)}${memory} AS ${limits}`);
      expect(await zones(machinesToSql(kinds, { ...told, limits: ["plant", kept] }).query), name).toEqual([["C"]]);
    }
  }, 60_000);

  it("hostile types, units and frequencies are refused, or leave no trace in what is written", () => {
    const machine = [{ name: "P-11", machine: "pump 90 kW category II, housing" }];
    const by = (from: string, as: string, unit: string): string =>
      machinesToSql(machine, { ...asked, from, as, at: { column: "speed", unit }, dialect }).query;
    const plain = by("um pp", "mm/s rms", "r/min");
    for (const text of hostileTexts) {
      for (const act of [
        () => by(`um ${text} pp`, "mm/s rms", "r/min"),
        () => by("um pp", `mm/s ${text} rms`, "r/min"),
        () => by("um pp", "mm/s rms", `r/min ${text}`),
      ]) {
        expect([null, plain], text).toContain(orNull(act));
      }
      const at = `25 ${text}` as never;
      expect(
        orNull(() => machinesToSql(machine, { ...asked, from: "g rms", at, dialect })),
        text,
      ).toBeNull();
    }
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
