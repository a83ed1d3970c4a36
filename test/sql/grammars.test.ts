import { SparkSQL, TrinoSQL } from "dt-sql-parser";
import { describe, expect, it } from "vitest";
import { machinesToSql, machineToSql, schemeToSql, toSql } from "../../src/sql/index";
import { hostileScheme } from "../writing/hostile-scheme";
import { hostileTexts, shownAs } from "../writing/hostile-texts";

/**
 * Spark and Trino do not run here: what is written for them is held against their grammars alone, as `dt-sql-parser`
 * (open source, grammars of the two projects) reads them.
 */
const grammars = [
  ["spark", new SparkSQL()],
  ["trino", new TrinoSQL()],
] as const;

describe.each(grammars)("%s reads", (dialect, grammar) => {
  const column = "reading";
  const errors = (sql: string): unknown[] => grammar.validate(sql).map(({ message }) => message);

  it.each([
    ["a conversion", toSql("in/s pk", "mm/s rms", { column, dialect })],
    ["a conversion to a level", toSql("mm/s rms", "dB re 1e-9 m/s", { column, dialect })],
    [
      "a conversion by the speed of the row",
      toSql("um pp", "mm/s rms", { column, at: { column: "speed", unit: "r/min" }, dialect }),
    ],
    ["a scheme", schemeToSql("iso-10816-3-2009", "group 2 rigid", { column, from: "mm/s rms", dialect })],
    ["a machine", machineToSql("motor 1485 r/min rigid", { column, from: "mm/s rms", dialect })],
  ])("%s", (_, expression) => {
    expect(errors(`SELECT ${expression} AS answer FROM trend`)).toEqual([]);
  });

  const plant = [
    { name: "P-11", machine: "pump 90 kW category II 2980 r/min, housing" },
    { name: "X-01", machine: "90 kW" },
  ];

  it.each([
    ["in their own type", {}],
    ["by the speed of the row", { from: "um pp", as: "mm/s rms", at: { column: "speed", unit: "r/min" } }],
    ["in decibels", { from: "dB re 1e-9 m/s" }],
    ["with limits of a table", { limits: ["plant", "limits"] }],
  ])("the verdicts on many machines %s", (_, more) => {
    const told = { table: ["plant", "trend"], machine: "tag", column, from: "mm/s rms", dialect, ...more };
    const { query, limits, bounds } = machinesToSql(plant, told as never);
    expect(errors(query)).toEqual([]);
    expect(errors(limits)).toEqual([]);
    expect(errors(bounds)).toEqual([]);
  });

  const harmless = hostileTexts.filter((text) => shownAs(text) === text && text.length < 60);

  it("hostile names as nothing but names and texts", () => {
    for (const text of harmless.filter((one) => !one.includes("$\u007b"))) {
      const told = { table: text, machine: text, column: text, from: "mm/s rms", dialect } as const;
      const machines = [{ name: text, machine: "pump 90 kW category II" }];
      const { query, limits, bounds } = machinesToSql(machines, told);
      const kept = machinesToSql(machines, { ...told, limits: ["plant", text] });
      for (const sql of [query, limits, bounds, kept.query, kept.bounds]) expect(errors(sql), text).toEqual([]);
    }
  });

  it("hostile words of a machine and texts of a scheme as nothing but texts", () => {
    for (const text of harmless) {
      const schemes = [hostileScheme(text, "zones")];
      const told = { table: "trend", column, from: "mm/s rms", dialect, schemes } as const;
      const { query, limits } = machinesToSql([{ name: text, machine: `pump 90 kW, ${text}` }], told);
      for (const sql of [query, limits]) expect(errors(sql), text).toEqual([]);
    }
  });

  it("a sentence with a fault not: the grammar is one that refuses", () => {
    expect(errors("SELECT CASE WHEN x >= 0 THEN 1 AS answer FROM trend")).not.toEqual([]);
  });
});
