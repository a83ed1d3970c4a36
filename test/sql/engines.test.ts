import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, converter, VeladisError } from "../../src/index";
import { builtInSchemes, classifier, type Scheme } from "../../src/severity/index";
import { machineToSql, schemeToSql, toSql } from "../../src/sql/index";
import { machineFor } from "../severity/machine-for";
import { hostileScheme } from "../writing/hostile-scheme";
import { hostileTexts, shownAs } from "../writing/hostile-texts";
import { duckdb, type Engine, postgres, sqlite } from "./engines";
import { orNull } from "./or-null";

const engines = { SQLite: sqlite, PostgreSQL: postgres, DuckDB: duckdb } as const;
const all = Object.entries(engines) as [string, Engine][];

const x = { column: "x" } as const;
const fan = schemeToSql("iso-10816-3-2009", "group 2 rigid", { ...x, from: "mm/s rms" });
const own = classifier("iso-10816-3-2009", "group 2 rigid", "mm/s rms");
const toMetric = toSql("in/s pk", "mm/s rms", x);
const toLevel = toSql("mm/s rms", "dB re 1e-9 m/s", x);
const ofLevel = toSql("dB re 1e-9 m/s", "mm/s rms", x);
const byRow = toSql("um pp", "mm/s rms", { expression: "2e0", at: { column: "x", unit: "Hz" } });
const byTurns = toSql("g pk", "mm/s rms", { expression: "2e0", at: { column: "x", unit: "r/min" } });
const expressions = { fan, toMetric, toLevel, ofLevel, byRow, byTurns };

describe("what is no number is NULL in SQLite, whatever the column is declared as", () => {
  const strangers = [
    ...[
      "'0.5 g'",
      "'4.5'",
      "'4'",
      "' 4.5'",
      "'4.5 '",
      "'4,5'",
      "''",
      "' '",
      "'nan'",
      "'inf'",
      "'-1'",
      "'1e3'",
      "'OL'",
      "'zone'",
      "'0'",
    ],
    ...[
      "x'00'",
      "x'34'",
      "x''",
      "NULL",
      "9e999",
      "-9e999",
      "-1",
      "-1e-300",
      "CAST(4.5 AS TEXT)",
      "CAST('4.5' AS BLOB)",
    ],
  ];
  const declared = ["TEXT", "VARCHAR(20)", "REAL", "NUMERIC", "INTEGER", "BLOB", "", "BOOLEAN"];

  it.each(declared.flatMap((type) => strangers.map((value) => [type, value] as const)))(
    "%s %s",
    async (type, value) => {
      const rows = await sqlite(
        `DROP TABLE IF EXISTS t; CREATE TABLE t (x ${type}); INSERT INTO t VALUES (${value});
       SELECT typeof(x), x, ${Object.values(expressions).join(", ")} FROM t`,
      );
      const [kind, held, ...answers] = rows[0] as [string, unknown, ...unknown[]];
      // a column of numbers makes a number of a text that is one
      const isNumber = (kind === "real" || kind === "integer") && Number.isFinite(held);
      if (!isNumber) return expect(answers).toEqual(answers.map(() => null));
      const number = held as number;
      expect(answers[0]).toBe(orNull(() => own(number)));
      expect(answers[1]).toBe(
        orNull(() => number * converter("in/s pk", "mm/s rms").factor * (number < 0 ? Number.NaN : 1)) ||
          (number === 0 ? 0 : null),
      );
    },
  );

  it("also where the affinity of the column is another than that of the value", async () => {
    // by UNION ALL a column of texts, whose rows are numbers too: as texts 10.5 would be below 2
    const rows = await sqlite(
      `DROP TABLE IF EXISTS a; CREATE TABLE a (x TEXT); DROP TABLE IF EXISTS b; CREATE TABLE b (x REAL);
       INSERT INTO a VALUES ('0.5 g'); INSERT INTO b VALUES (10.5), (0.5), (3.5);
       SELECT ${fan} FROM (SELECT x FROM a UNION ALL SELECT x FROM b)`,
    );
    expect(rows).toEqual([[null], ["D"], ["A"], [own(3.5)]]);
    const cast = schemeToSql("iso-10816-3-2009", "group 2 rigid", { expression: "CAST(x AS TEXT)", from: "mm/s rms" });
    expect(await sqlite(`SELECT ${cast} FROM b`)).toEqual([[null], [null], [null]]);
    const bare = schemeToSql("iso-10816-3-2009", "group 2 rigid", { expression: "x", from: "mm/s rms" });
    expect(await sqlite(`SELECT ${bare} FROM a`)).toEqual([[null]]);
  });

  it("a name that no column has gives no zone, and with its table it is refused", async () => {
    const none = schemeToSql("iso-10816-3-2009", "group 2 rigid", { column: "velocty", from: "mm/s rms" });
    expect(await sqlite(`SELECT ${none} FROM b`)).toEqual([[null], [null], [null]]);
    const placed = schemeToSql("iso-10816-3-2009", "group 2 rigid", { column: ["b", "velocty"], from: "mm/s rms" });
    await expect(sqlite(`SELECT ${placed} FROM b`)).rejects.toThrow("no such column");
  });
});

describe("columns of texts are refused before a row is read", () => {
  it.each(["'0.5 g'", "'4.5'"])("%s", async (text) => {
    for (const [name, sql] of Object.entries(expressions)) {
      await expect(postgres(`SELECT ${sql} FROM (SELECT ${text}::text AS x) AS t`), name).rejects.toThrow(
        "operator does not exist",
      );
      await expect(duckdb(`SELECT ${sql} FROM (SELECT ${text}::VARCHAR AS x) AS t`), name).rejects.toThrow(
        "Binder Error",
      );
    }
  });

  it.each(["bytea '\\x00'", "true", "now()", "'1 day'::interval", "'{}'::json", "'1'::money"])(
    "PostgreSQL %s",
    async (value) => {
      await expect(postgres(`SELECT ${fan} FROM (SELECT ${value} AS x) AS t`)).rejects.toThrow(
        "operator does not exist",
      );
    },
  );

  it.each(["BLOB '1'", "true", "now()", "INTERVAL 1 DAY", "'{}'::JSON", "[1.0]"])("DuckDB %s", async (value) => {
    await expect(duckdb(`SELECT ${fan} FROM (SELECT ${value} AS x) AS t`)).rejects.toThrow("Binder Error");
  });
});

describe("numbers of every type have the library's answers", () => {
  const types = {
    PostgreSQL: ["smallint", "integer", "bigint", "real", "double precision", "numeric", "numeric(9,3)"],
    DuckDB: [
      "TINYINT",
      "UTINYINT",
      "SMALLINT",
      "USMALLINT",
      "INTEGER",
      "UINTEGER",
      "BIGINT",
      "UBIGINT",
      "HUGEINT",
      "UHUGEINT",
      "FLOAT",
      "DOUBLE",
      "DECIMAL(9,3)",
    ],
    SQLite: ["INTEGER", "REAL", "NUMERIC"],
  } as const;

  it.each(
    Object.entries(types).flatMap(([name, of]) => of.map((type) => [name as keyof typeof engines, type] as const)),
  )("%s %s", async (name, type) => {
    const zones = ["A", "B", "C", "D"];
    for (const [value, zone] of [
      [1, 0],
      [2, 1],
      [4, 2],
      [9, 3],
    ] as const) {
      const from = `FROM (SELECT CAST(${value} AS ${type}) AS x) AS t`;
      expect((await engines[name](`SELECT ${fan} ${from}`))[0]?.[0], `${value}`).toBe(zones[zone]);
      const rms = Number((await engines[name](`SELECT ${toMetric} ${from}`))[0]?.[0]);
      expect(rms).toBeCloseTo((value * 25.4) / Math.SQRT2, 9);
      const level = Number((await engines[name](`SELECT ${toLevel} ${from}`))[0]?.[0]);
      expect(level).toBeCloseTo(20 * Math.log10(value * 1e6), 9);
    }
  });

  it.each([
    ["PostgreSQL", "'NaN'::float8"],
    ["PostgreSQL", "'Infinity'::float8"],
    ["PostgreSQL", "'-Infinity'::float8"],
    ["PostgreSQL", "'NaN'::numeric"],
    ["PostgreSQL", "'Infinity'::numeric"],
    ["PostgreSQL", "1e400::numeric"],
    ["PostgreSQL", "-1::numeric"],
    ["PostgreSQL", "NULL::float8"],
    ["DuckDB", "'NaN'::DOUBLE"],
    ["DuckDB", "'Infinity'::DOUBLE"],
    ["DuckDB", "'-Infinity'::FLOAT"],
    ["DuckDB", "NULL::DOUBLE"],
    ["DuckDB", "-1"],
    ["SQLite", "9e999"],
    ["SQLite", "-9e999"],
    ["SQLite", "NULL"],
  ] as const)("%s: %s is none", async (name, value) => {
    for (const [of, sql] of Object.entries(expressions)) {
      if (of === "ofLevel" && value.startsWith("-1")) continue;
      expect((await engines[name](`SELECT ${sql} FROM (SELECT ${value} AS x) AS t`))[0]?.[0], of).toBeNull();
    }
  });
});

describe.each(all)("%s", (name, engine) => {
  const kind = name === "SQLite" ? "REAL" : "double precision";
  const cast = (value: number): string => `CAST(${value.toExponential()} AS ${kind})`;

  it("answers as the library does, at any size that a number can have", async () => {
    const sizes = fc.oneof(
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.integer({ min: -290, max: 308 }).map((power) => Number(`1.5e${power}`)),
    );
    const pairs = [
      ["in/s pk", "mm/s rms", {}],
      ["g pk", "mil pp", { at: "1490 r/min" }],
      ["mm/s rms", "dB re 1e-9 m/s", {}],
      ["g rms", "g pk", { crestFactor: 4 }],
    ] as const;
    await fc.assert(
      fc.asyncProperty(sizes, fc.constantFrom(...pairs), async (value, [from, to, options]) => {
        const sql = toSql(from, to, { ...x, ...options });
        const answer = (await engine(`SELECT ${sql} FROM (SELECT ${cast(value)} AS x) AS t`))[0]?.[0] as number | null;
        const mine = orNull(() => (convert as (...given: unknown[]) => number)(value, from, to, options));
        // the greatest numbers, within a rounding of the greatest there is, are NULL; so are levels beyond 5000 dB
        const isBeyond = mine === null || (to.startsWith("dB") && Math.abs(mine) > 4999.9);
        if (mine === null) expect(answer).toBeNull();
        else if (isBeyond) expect(answer === null || Math.abs(answer) <= 5000.001).toBe(true);
        else if (answer === null) expect(mine).toBeGreaterThan(1e307);
        else
          expect(Math.abs(answer - mine)).toBeLessThanOrEqual(
            1e-13 * Math.max(Math.abs(mine), to.startsWith("dB") ? 1 : 0),
          );
      }),
      { numRuns: 120, seed: 15 },
    );
  });

  it("never overflows: at the greatest value that is answered the product is a number, above it NULL", async () => {
    for (const [from, to, options] of [
      ["in/s pk", "mm/s rms", {}],
      ["m pk", "nm pk", {}],
      ["g pk", "mm/s2 pp", {}],
      ["in/s pk", "mm/s pk", {}],
      ["um pp", "g pk", { at: "1e6 Hz" }],
      ["mm/s rms", "m/s rms", {}],
      ["g rms", "m/s2 pk", { crestFactor: 9.7 }],
    ] as const) {
      const sql = toSql(from, to, { ...x, ...options } as never);
      const [, bound] = /<= (\S+) THEN/.exec(sql) as unknown as [string, string];
      const { factor } = (converter as unknown as (...given: unknown[]) => { factor: number })(from, to, options);
      const most = factor <= 1 ? Number.MAX_VALUE : Number.MAX_VALUE / factor;
      expect(Number(bound)).toBeLessThanOrEqual(most);
      expect(Number(bound)).toBeGreaterThan(most * (1 - 1e-14));
      const at = (await engine(`SELECT ${sql} FROM (SELECT ${cast(Number(bound))} AS x) AS t`))[0]?.[0];
      expect(at, sql).toBeGreaterThan(1e300);
      expect(Number.isFinite(at)).toBe(true);
      if (factor <= 1) continue;
      expect(
        (await engine(`SELECT ${sql} FROM (SELECT ${cast(Number(bound) * (1 + 1e-13))} AS x) AS t`))[0]?.[0],
      ).toBeNull();
    }
  });

  it.each([
    ["um pp", "g pk"],
    ["g pk", "um pp"],
    ["um pp", "mm/s pk"],
    ["mm/s pk", "um pp"],
    ["dB re 1e-6 m/s2", "um pp"],
    ["um pp", "dB re 1e-6 m/s2"],
    ["dB re 1e-9 m/s", "dB re 1e-6 m/s2"],
  ] as const)("nor with a frequency of the row, %s to %s", async (from, to) => {
    const sql = toSql(from, to, { ...x, at: { column: "hz", unit: "r/min" } });
    const bounds = [...sql.matchAll(/[-\d.]+e-?\d+/g)].map(([number]) => Number(number));
    const values = [...bounds.slice(0, 2), 1e-300, 1e300, 5000, -5000, 0, 1].filter((value) => Number.isFinite(value));
    for (const value of values) {
      for (const turns of [60e-9, 60e9, 1500]) {
        const rows = await engine(`SELECT ${sql} FROM (SELECT ${cast(value)} AS x, ${cast(turns)} AS hz) AS t`);
        const answer = rows[0]?.[0] as number | null;
        expect(answer === null || Number.isFinite(answer), `${value} at ${turns}`).toBe(true);
      }
    }
    const usual = from.startsWith("dB") ? 120 : 3;
    const rows = await engine(`SELECT ${sql} FROM (SELECT ${cast(usual)} AS x, ${cast(1500)} AS hz) AS t`);
    const mine = (convert as (...given: unknown[]) => number)(usual, from, to, { at: "25 Hz" });
    expect(rows[0]?.[0]).toBeCloseTo(mine, 9);
  });

  it("a logarithm of nothing stops no query", async () => {
    for (const value of [0, 5e-324, 1e-310, 1e-300, 1e-250]) {
      const rows = await engine(`SELECT ${toLevel} FROM (SELECT ${cast(value)} AS x) AS t`);
      expect(rows[0]?.[0]).toSatisfy((level) => level === null || (level as number) >= -5000.001);
    }
    expect((await engine(`SELECT ${toLevel} FROM (SELECT ${cast(0)} AS x) AS t`))[0]?.[0]).toBeNull();
    for (const level of [-5000, 5000]) {
      const size = (await engine(`SELECT ${ofLevel} FROM (SELECT ${cast(level)} AS x) AS t`))[0]?.[0] as number;
      expect(size / (1e-6 * 10 ** (level / 20))).toBeCloseTo(1, 9);
    }
    for (const level of [-5000.1, 5000.1]) {
      expect((await engine(`SELECT ${ofLevel} FROM (SELECT ${cast(level)} AS x) AS t`))[0]?.[0]).toBeNull();
    }
  });

  it("gives the zones of the built-in schemes at and about their limits", async () => {
    for (const scheme of (builtInSchemes as readonly Scheme[]).filter((one) => !one.informative)) {
      const [first] = scheme.classes as [Scheme["classes"][number]];
      const machine = machineFor(scheme, first);
      const [{ as }] = first.criteria as unknown as [{ as: string }];
      const mine = orNull(() => classifier(scheme, machine, as as never));
      if (mine === null) continue;
      const values = [0, ...mine.limits, ...mine.bounds, ...mine.bounds.map((bound) => bound * (1 + 1e-12)), 1e6];
      for (const answer of ["zone", "worst"] as const) {
        const sql = schemeToSql(scheme, machine, { ...x, from: as, answer });
        const columns = values.map((value) => `(SELECT ${sql} FROM (SELECT ${cast(value)} AS x) AS t)`);
        const list = name === "DuckDB" ? `SELECT [${columns.join(", ")}]` : `SELECT ${columns.join(", ")}`;
        const [row] = (await engine(list)) as [unknown[]];
        const zones = name === "DuckDB" ? (row[0] as { items: unknown[] }).items : row;
        expect(zones, `${scheme.id} ${answer}`).toEqual(
          values.map((value) => (answer === "zone" ? mine(value) : mine.worst(value))),
        );
      }
    }
  });

  it.each(hostileTexts.map((text) => [JSON.stringify(text), text] as const))(
    "runs what %s was put into",
    async (_, text) => {
      const isRefused = shownAs(text) !== text;
      const scheme = hostileScheme(text);
      const act = (): string => schemeToSql(scheme, {}, { ...x, from: "mm/s rms" });
      if (isRefused) expect(act).toThrow(VeladisError);
      else {
        const [rows] = (await engine(`SELECT ${act()} AS zone FROM (SELECT ${cast(3)} AS x) AS t`)) as [unknown[]];
        expect(rows).toEqual([`${text} lively`]);
      }
      // of zones with plain names the texts are in the remark alone
      const remarked = schemeToSql(hostileScheme(text, "zones"), {}, { ...x, from: "mm/s rms" });
      expect((await engine(`SELECT ${remarked} FROM (SELECT ${cast(3)} AS x) AS t`))[0]).toEqual(["B"]);
      // signs that may be a comparison are refused in a machine
      const machine = orNull(() => machineToSql(`motor 1485 r/min rigid, ${text}`, { ...x, from: "mm/s rms" }));
      if (machine !== null) {
        expect((await engine(`SELECT ${machine}, 7 FROM (SELECT ${cast(0.5)} AS x) AS t`))[0]?.[0]).toBe("A");
      }
      const name = orNull(() => toSql("mm/s pk", "mm/s pk", { column: text }));
      expect(name === null).toBe(isRefused);
      if (name === null) return;
      const quoted = `"${text.replaceAll('"', '""')}"`;
      expect((await engine(`SELECT ${name} FROM (SELECT ${cast(2)} AS ${quoted}) AS t`))[0]?.[0]).toBe(2);
    },
  );
});
