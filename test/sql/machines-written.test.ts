import { describe, expect, it } from "vitest";
import { defineScheme, type SchemeInput } from "../../src/severity/index";
import {
  limitColumns,
  type MachinesToSqlOptions,
  machinesToSql,
  machineToSql,
  schemeToSql,
  sqlDialects,
  toSql,
} from "../../src/sql/index";

const source = { title: "rule of the plant", where: "table 2", provenance: "printed", page: "p. 3" } as const;
const rule = (limits: object, as = "mm/s rms", parts: object = {}) =>
  defineScheme({
    ...{ id: "site-rule", kind: "zones", standard: "Site rule", edition: "3", place: "housing", machines: ["fan"] },
    classes: [{ criteria: [{ as, limits, source }] }],
    ...parts,
  } as SchemeInput);
const zones = { "A/B": 2, "B/C": 4, "C/D": 8 };

const fans = [
  { name: "V-02", machine: "fan" },
  { name: "it's V-03", machine: "fan" },
] as const;
const asked = { table: "trend", machine: "tag", column: "v", from: "mm/s rms", schemes: [rule(zones)] } as const;
const byRow = { as: "mm/s rms", at: { column: "speed", unit: "r/min" } } as const;
const of = (more: Partial<MachinesToSqlOptions> = {}) =>
  machinesToSql(fans, { ...asked, ...more } as MachinesToSqlOptions);

/** Every form of what is written for a list of machines; engines that cannot run here are read on the page alone. */
const written: Readonly<Record<string, () => string>> = {
  "the whole query": () => of().query,
  "from a table that the limits were put in": () => of({ limits: ["plant", "limits"] }).query,
  "of one limit": () => of({ schemes: [rule({ "A/B": 3 })] }).query,
  "with a quantity not judged": () =>
    of({
      schemes: [
        rule(zones, "mm/s rms", {
          classes: [
            {
              criteria: [
                { as: "mm/s rms", limits: zones, source },
                { as: "um rms", limits: { "A/B": 20, "B/C": 40, "C/D": 80 }, source },
              ],
            },
          ],
        }),
      ],
    }).limits,
  "of a level": () => of({ from: "dB re 1e-9 m/s" }).query,
  "judged by the frequency of the row": () =>
    machinesToSql([{ name: "V-02", machine: "fan, housing" }], { ...asked, ...byRow, from: "um pp" }).query,
  "by a crest factor": () => of({ crestFactor: 3, schemes: [rule(zones, "mm/s true pk")] }).limits,
  "of a machine that is refused": () => machinesToSql([{ name: "X-01", machine: "90 kW" }], asked as never).limits,
  ...Object.fromEntries(sqlDialects.map((dialect) => [`limits for ${dialect}`, () => of({ dialect }).limits])),
  "in Spark, which is asked for the type of a reading": () => of({ dialect: "spark", limits: "kept" }).query,
  "with no class assumed": () => of({ assume: "nothing", schemes: [rule(zones), rule(zones, "um rms")] }).limits,
};

it("every form of a query over a list of machines stands on the page", async () => {
  const page = Object.entries(written).map(([name, sql]) => `-- ${name}\n${sql()}\n`);
  await expect(page.join("\n")).toMatchFileSnapshot("pages/machines.sql");
});

describe("the rows of limits", () => {
  it("say of a limit all that the scheme says", () => {
    const { rows, refused } = of();
    expect(refused).toEqual([]);
    expect(rows.map(({ machine, name, printed }) => [machine, name, printed])).toEqual(
      fans.flatMap(({ name }) => Object.entries(zones).map(([limit, value]) => [name, limit, value])),
    );
    expect(rows[1]).toEqual({
      ...{ machine: "V-02", readings: "mm/s rms", scheme: "site-rule", standard: "Site rule", edition: "3" },
      ...{ row: rows[1]?.row, as: "mm/s rms", name: "B/C", printed: 4, step: 2, zone: "B", beyond: "C", last: "D" },
      ...{ limit: 4, decides: "zone", open: 0, criterion: 1, rows: 3, deciding: 3, grade: "printed" },
      ...{ source: rows[1]?.source, assumed: rows[1]?.assumed, refused: null },
    });
    expect(rows[1]?.source).toContain("rule of the plant");
    expect(Object.keys(rows[1] as object)).toEqual(Object.keys(limitColumns));
  });

  it("tell of a machine of which all is known that nothing was assumed", () => {
    const known = [{ name: "V-02", machine: "fan, housing, in service" }] as const;
    expect(new Set(machinesToSql(known, asked).rows.map(({ assumed }) => assumed))).toEqual(new Set([null]));
  });

  it("take no class for granted where nothing may be assumed", () => {
    const pumps = [{ name: "P-11", machine: "pump 90 kW 2980 r/min" }] as const;
    const own = { table: "trend", column: "v", from: "mm/s rms" } as const;
    const lowest = machinesToSql(pumps, own);
    expect([lowest.refused.length, lowest.rows[0]?.assumed]).toEqual([0, expect.stringContaining("assumed")]);
    const strict = machinesToSql(pumps, { ...own, assume: "nothing" });
    expect(strict.refused.map(({ name }) => name)).toEqual(["P-11"]);
  });

  it("of a machine that is refused is one, with the reason and nothing else", () => {
    const { rows } = machinesToSql([{ name: "X-01", machine: "90 kW" }], asked as never);
    const [{ machine, readings, refused, rows: count, deciding, ...others } = {} as never] = rows;
    expect([rows.length, machine, readings, count, deciding]).toEqual([1, "X-01", "mm/s rms", 1, 0]);
    expect(refused).toContain("the kind of machine");
    expect(new Set(Object.values(others))).toEqual(new Set([null]));
  });

  it("a fault of the program is no refusal of a machine", () => {
    const machine = new Proxy(
      {},
      {
        ownKeys: () => {
          throw new RangeError("a fault");
        },
      },
    );
    expect(() => machinesToSql([{ name: "X-01", machine: machine as never }], asked as never)).toThrow(RangeError);
  });

  it("displacements stay displacements by the frequency of the row too: no place is asked", () => {
    const machines = [{ name: "V-02", machine: "fan" }] as const;
    const same = { ...asked, schemes: [rule(zones, "um rms")], from: "um pp", as: "um rms", at: byRow.at } as const;
    expect(machinesToSql(machines, same).refused).toEqual([]);
  });

  it("a displacement that was read on the housing, as told, is judged as a velocity", () => {
    const machines = [{ name: "V-02", machine: "fan" }] as const;
    const told = machinesToSql(machines, { ...asked, ...byRow, from: "um pp" });
    expect(told.refused.map(({ error }) => error.fact)).toEqual(["place"]);
    // velocities are read on the housing: nothing is asked
    expect(machinesToSql(machines, { ...asked, ...byRow, from: "g rms" }).refused).toEqual([]);
    expect(machinesToSql(machines, { ...asked, from: "mm/s rms" }).refused).toEqual([]);
  });
});

describe("a refusal names what is wrong", () => {
  const [fan] = fans;
  it.each([
    ["a machine that is null", [fan, null], {}, { code: "missing-option" }],
    ["a machine in words", ["fan"], {}, { code: "wrong-type", received: '"fan"', parameter: "machines", index: 0 }],
    ["an empty name", [{ ...fan, name: "" }], {}, { code: "syntax", received: '""' }],
    ["a name twice", [fan, fan], {}, { received: '"V-02" twice', parameter: "machines", index: 1 }],
    ["as without at", fans, { as: "mm/s rms" }, { received: "as alone", option: "at" }],
    ["at without as", fans, { at: byRow.at }, { received: "at alone", option: "as" }],
  ])("%s", (_, machines, more, told) => {
    expect(() => machinesToSql(machines as never, { ...asked, ...more } as MachinesToSqlOptions)).toThrow(
      expect.objectContaining(told),
    );
  });

  it.each([
    ["machinesToSql", () => machinesToSql(fans, undefined as never)],
    ["schemeToSql", () => schemeToSql(rule(zones), "fan", undefined as never)],
    ["machineToSql", () => machineToSql("fan", undefined as never)],
    ["toSql", () => toSql("in/s pk", "mm/s pk", undefined as never)],
    ["toSql with null for at", () => toSql("g pk", "mm/s pk", { column: "v", at: null } as never)],
    ["toSql with null", () => toSql("in/s pk", "mm/s pk", null as never)],
    ["toSql with a number as an expression", () => toSql("in/s pk", "mm/s pk", { expression: 7 } as never)],
  ])("%s without options", (_, act) => {
    expect(act).toThrow(expect.objectContaining({ name: "VeladisError" }));
  });
});

describe("what is the same for all machines is refused for all", () => {
  it.each([
    ["a frequency that is none", { at: "25 mm" }],
    ["schemes that are no list", { schemes: "iso-10816-7-2009" }],
  ])("%s", (_, more) => {
    expect(() => of(more as never)).toThrow(expect.objectContaining({ name: "VeladisError" }));
  });
});
