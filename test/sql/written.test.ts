import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, VeladisError } from "../../src/index";
import { defineScheme, type SchemeInput } from "../../src/severity/index";
import { machineToSql, schemeToSql, type ToSqlOptions, toSql } from "../../src/sql/index";
import { remark, textLiteral } from "../../src/sql/literal";
import { hostileTexts, shownAs } from "../writing/hostile-texts";

const v = { column: "v" } as const;
const hz = { column: "hz", unit: "Hz" } as const;
const rule = (parts: object = {}, limits: object = { "A/B": 2, "B/C": 4, "C/D": 8 }, as = "mm/s rms") =>
  defineScheme({
    ...{ id: "site-rule", kind: "zones", standard: "Site rule", edition: "3", place: "housing", machines: ["fan"] },
    classes: [{ criteria: [{ as, limits, source: { title: "rule", provenance: "printed", page: "p. 3" } }] }],
    ...parts,
  } as SchemeInput);
const memory = { title: "rule", provenance: "memory" } as const;
const two = (as: string) => [
  { as: "mm/s rms", limits: { "A/B": 2, "B/C": 4, "C/D": 8 }, source: memory },
  { as, limits: { "A/B": 20, "B/C": 40, "C/D": 80 }, source: memory },
];

/** Every form that an expression takes, as it is written: a change of any character is seen, and read. */
const written: Readonly<Record<string, () => string>> = {
  "the same type": () => toSql("mm/s rms", "mm/s rms", v),
  "a factor above one": () => toSql("in/s pk", "mm/s pk", v),
  "a factor below one": () => toSql("mm/s pk", "m/s pk", v),
  "another detector": () => toSql("mm/s pk", "mm/s rms", v),
  "a crest factor": () => toSql("g rms", "g true pk", { ...v, crestFactor: 4 }),
  "a table and a name": () => toSql("mm/s pk", "mm/s pk", { column: ["plant", "readings", "v"] }),
  backticks: () => toSql("mm/s pk", "mm/s pk", { column: ["plant", 'a`b"c'], dialect: "spark" }),
  "a name with a backslash": () => toSql("mm/s pk", "mm/s pk", { column: "a\\b" }),
  "a name with a backslash that would begin a code": () =>
    toSql("mm/s pk", "mm/s pk", { column: "a\\b", dialect: "clickhouse" }),
  "an expression": () => toSql("mm/s pk", "mm/s pk", { expression: " raw / 1000 " }),
  "a frequency as text": () => toSql("g pk", "mm/s pk", { ...v, at: "1485 r/min" }),
  "a frequency as data": () => toSql("g pk", "mm/s pk", { ...v, at: { hertz: 24.75 } }),
  "a frequency with digits that say nothing": () => toSql("g pk", "mm/s pk", { ...v, at: { hertz: 0.1 + 0.2 } }),
  "a frequency of the row, one integration": () => toSql("m/s2 pk", "m/s pk", { ...v, at: hz }),
  "two integrations": () => toSql("m/s2 pk", "m pk", { ...v, at: hz }),
  "one differentiation": () => toSql("m/s pk", "m/s2 pk", { ...v, at: hz }),
  "two differentiations": () => toSql("m pk", "m/s2 pk", { ...v, at: hz }),
  "a speed of the row": () => toSql("m/s2 pk", "m/s pk", { ...v, at: { column: "n", unit: "r/min" } }),
  "an order of it": () => toSql("m/s2 pk", "m/s pk", { ...v, at: { column: "n", unit: "r/min", order: 2 } }),
  "a frequency of the row that nothing needs": () => toSql("m/s pk", "mm/s pk", { ...v, at: hz }),
  "a level": () => toSql("dB re 1e-9 m/s", "m/s rms", v),
  "to a level": () => toSql("m/s rms", "dB re 1e-9 m/s", v),
  "of a level to another": () => toSql("dB re 1e-9 m/s", "dB re 1e-6 m/s", v),
  "of a level at the frequency of the row": () => toSql("dB re 1e-6 m/s2", "dB re 1e-9 m/s", { ...v, at: hz }),
  "of a level to a size beyond numbers": () => toSql("dB re 1e-6 m/s2", "m rms", { ...v, at: { hertz: 1e-80 } }),
  "of a size to a level below numbers": () => toSql("m rms", "dB re 1e-6 m/s2", { ...v, at: { hertz: 1e-100 } }),
  zones: () => schemeToSql(rule(), "fan", { ...v, from: "mm/s rms" }),
  "zones in backticks": () => schemeToSql(rule(), "fan", { ...v, from: "mm/s rms", dialect: "spark" }),
  "zones of another unit": () => schemeToSql(rule(), "fan", { ...v, from: "in/s pk" }),
  "zones of a level": () => schemeToSql(rule(), "fan", { ...v, from: "dB re 1e-9 m/s" }),
  "zones at a frequency": () => schemeToSql(rule(), "fan", { ...v, from: "g pk", at: "25 Hz" }),
  "zones in true peak": () => schemeToSql(rule({}, undefined, "mm/s true pk"), "fan", { ...v, from: "mm/s rms" }),
  "zones in true peak, by a crest factor": () =>
    schemeToSql(rule({}, undefined, "mm/s true pk"), "fan", { ...v, from: "mm/s rms", crestFactor: 3 }),
  "zones of a fact not given": () =>
    schemeToSql("iso-10816-7-2009", "pump 250 kW", { ...v, from: "mm/s rms", assume: "lowest limits" }),
  "zones with what was set aside": () =>
    schemeToSql(rule(), "fan, painted blu", { ...v, from: "mm/s rms", assume: "lowest limits" }),
  "zones with a quantity not judged": () =>
    schemeToSql(rule({ classes: [{ criteria: two("um rms") }] }), "fan", { ...v, from: "mm/s rms" }),
  "the worst zone of them": () =>
    schemeToSql(rule({ classes: [{ criteria: two("um rms") }] }), "fan", { ...v, from: "mm/s rms", answer: "worst" }),
  "one limit": () => schemeToSql(rule({ kind: "acceptance" }, { acceptance: 3 }), "fan", { ...v, from: "mm/s rms" }),
  grades: () =>
    schemeToSql(rule({ kind: "grades", grades: ["it's calm", "lively"] }, { "it's calm": 2 }), "fan", {
      ...v,
      from: "mm/s rms",
    }),
  "grades in backticks": () =>
    schemeToSql(rule({ kind: "grades", grades: ["it's \\calm", "lively"] }, { "it's \\calm": 2 }), "fan", {
      ...{ ...v, from: "mm/s rms", dialect: "spark" },
    }),
  "a machine": () => machineToSql("pump 250 kW 2980 r/min category I", { ...v, from: "mm/s rms" }),
  "a machine by several schemes": () => machineToSql("motor 1485 r/min rigid", { ...v, from: "mm/s rms" }),
  "the worst by several schemes": () =>
    machineToSql("motor 400 kW 600 r/min rigid", { ...v, from: "mm/s rms", answer: "worst" }),
  "a machine at two places": () => machineToSql("steam turbine 12 MW 5400 r/min rigid", { ...v, from: "um pp" }),
  "a machine by schemes of one's own": () => machineToSql("fan", { ...v, from: "mm/s rms", schemes: [rule()] }),
  "a machine by one's own and a built-in": () =>
    machineToSql("pump 250 kW 2980 r/min category I", {
      ...{ ...v, from: "mm/s rms" },
      schemes: ["iso-10816-7-2009", rule({ machines: ["pump"] })],
    }),
  "a machine with a crest factor": () =>
    machineToSql("fan", { ...v, from: "mm/s rms", schemes: [rule({}, undefined, "mm/s true pk")], crestFactor: 3 }),
  "a machine at a frequency": () => machineToSql("fan", { ...v, from: "g pk", at: "25 Hz", schemes: [rule()] }),
};

it("every form of an expression stands on the page", async () => {
  const page = Object.entries(written).map(([name, sql]) => `-- ${name}\n${sql()}\n`);
  await expect(page.join("\n")).toMatchFileSnapshot("pages/expressions.sql");
});

/** An expression of a conversion as a function, by reading its text: nothing of the library takes part. */
function evaluated(sql: string): (v: number, hz?: number) => number | null {
  const [, conditions, result] = /^CASE WHEN (.*) THEN (.*) END \/\*.*\*\/$/.exec(sql) as unknown as [
    string,
    string,
    string,
  ];
  const inJs = (text: string): string =>
    text
      .replace(/(\+"\w+") BETWEEN (\S+) AND (\S+)/g, "$1 >= $2 && $1 <= $3")
      .replaceAll(" AND ", " && ")
      .replaceAll("POWER(", "Math.pow(")
      .replaceAll("LOG10(", "Math.log10(")
      .replaceAll('"', "");
  return new Function("v", "hz", `return ${inJs(conditions)} ? ${inJs(result)} : null`) as (
    v: number,
    hz?: number,
  ) => number | null;
}

const types = [
  "mm/s rms",
  "in/s pk",
  "g pk",
  "um pp",
  "nm pk",
  "m rms",
  "dB re 1e-9 m/s",
  "dB re 1e-6 m/s2",
  "dB re 1e-12 m",
];

describe("a conversion, read as arithmetic", () => {
  const anyType = fc.constantFrom(...types);
  const power = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => Number(`3e${one}`));

  it("is what the library answers, or NULL; never zero, NaN or infinite, whatever the value and the frequency", () => {
    let runs = 0;
    let answers = 0;
    fc.assert(
      fc.property(
        anyType,
        anyType,
        power(-120, 120),
        fc.oneof(power(-320, 307), fc.double({ min: -6000, max: 6000 })),
        (from, to, hertz, value) => {
          runs++;
          let sql: string;
          try {
            sql = toSql(from, to, { ...v, at: { hertz } });
          } catch (error) {
            // a factor that no number can hold
            return expect(error).toBeInstanceOf(VeladisError) as never;
          }
          const answer = evaluated(sql)(value);
          if (answer === null) return;
          answers++;
          expect(Number.isFinite(answer)).toBe(true);
          if (!to.startsWith("dB")) expect(answer).toBeGreaterThanOrEqual(0);
          if (from.startsWith("dB") && !to.startsWith("dB")) expect(answer).toBeGreaterThan(0);
          // a product below the least number is zero here, and refused by the library
          if (answer === 0 && value > 0 && !to.startsWith("dB")) {
            expect(() => (convert as (...given: unknown[]) => number)(value, from, to, { at: { hertz } })).toThrow(
              VeladisError,
            );
            return;
          }
          const mine = (convert as (...given: unknown[]) => number)(value, from, to, { at: { hertz } });
          expect(Math.abs(answer - mine)).toBeLessThanOrEqual(
            1e-9 * Math.max(Math.abs(mine), to.startsWith("dB") ? 1e-3 : 1e-290),
          );
        },
      ),
      { numRuns: 3000, seed: 151 },
    );
    expect(answers).toBeGreaterThan(runs / 6);
  });

  it("by the frequency of the row too, up to its ends", () => {
    const ends = [1e-9, 1e9, 25];
    for (const from of types) {
      for (const to of types) {
        const row = evaluated(toSql(from, to, { ...v, at: hz }));
        const [least = 0, most = 0] = [
          ...toSql(from, to, { ...v, at: hz }).matchAll(
            /\+"v" (?:>= |<= |BETWEEN )?(-?[\d.]+e-?\d+)(?: AND (-?[\d.]+e-?\d+))?/g,
          ),
        ]
          .flatMap(([, a, b]) => [a, b])
          .filter((one) => one !== undefined)
          .map(Number);
        for (const hertz of ends) {
          for (const value of [least, most, 1]) {
            const answer = row(value, hertz);
            if (answer === null) continue;
            expect(Number.isFinite(answer), `${value} ${from} to ${to} at ${hertz} Hz`).toBe(true);
            if (!to.startsWith("dB") && value !== 0) expect(answer).toBeGreaterThan(0);
          }
        }
        const mine = (convert as (...given: unknown[]) => number)(90, from, to, { at: { hertz: 25 } });
        const answer = row(90, 25) as number;
        expect(Math.abs(answer - mine), `${from} to ${to}`).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(mine)));
        const needs = toSql(from, to, { ...v, at: hz }).includes('"hz"');
        for (const beyond of [0.99e-9, 1.01e9, 0, -25])
          expect(row(90, beyond) === null, `${from} to ${to}`).toBe(needs);
      }
    }
  });

  it("answers up to just below the greatest product, and no further", () => {
    for (const [from, to, factor] of [
      ["in/s pk", "mm/s pk", 25.4],
      ["m pk", "mm pp", 2000],
      ["g pk", "m/s2 pk", 9.80665],
      ["m rms", "nm rms", 1e9],
    ] as const) {
      const answer = evaluated(toSql(from, to, v));
      const most = Number.MAX_VALUE / factor;
      expect(answer(most * (1 - 1e-14))).toBeGreaterThan(Number.MAX_VALUE * (1 - 1e-13));
      expect(answer(most * (1 + 1e-15))).toBeNull();
      expect(answer(most)).toBeNull();
    }
    expect(evaluated(toSql("mm/s rms", "m/s rms", v))(Number.MAX_VALUE)).toBe(Number.MAX_VALUE * 1e-3);
    expect(evaluated(toSql("mm/s rms", "mm/s rms", v))(Number.MAX_VALUE)).toBe(Number.MAX_VALUE);
  });
});

describe("a remark", () => {
  /** Where a comment ends in engines that count comments within comments, and in those that do not. */
  function endsOf(sql: string): [nested: number, plain: number] {
    let depth = 0;
    for (let i = 0; i < sql.length; i++) {
      const pair = sql.slice(i, i + 2);
      if (pair === "/*") depth++;
      if (pair === "*/" && --depth === 0) return [i + 2, sql.indexOf("*/") + 2];
      if (pair === "/*" || pair === "*/") i++;
    }
    return [-1, sql.indexOf("*/") + 2];
  }

  it.each(hostileTexts)("of %j is one, on one line", (text) => {
    const made = remark(text);
    expect(endsOf(made)).toEqual([made.length, made.length]);
    expect(made.startsWith("/* ")).toBe(true);
    expect(shownAs(made)).toBe(made);
    expect(made).not.toContain("$\u007b");
  });

  it("of any text is one", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom("*", "/", " ", "\n", "-", "$", "{", "a") }), (text) => {
        const made = remark(text);
        expect(endsOf(made)).toEqual([made.length, made.length]);
      }),
    );
  });

  it.each([
    ["a */ b", "/* a * / b */"],
    ["a /* b", "/* a / * b */"],
    ["a  \n\t b", "/* a b */"],
    ["*/*", "/* * / * */"],
    ["/*/", "/* / * / */"],
    ["$\u007bHOME}", "/* $ {HOME} */"],
    ["\u001b[31m", "/* \\u001b[31m */"],
  ])("%j is %j", (text, expected) => expect(remark(text)).toBe(expected));
});

describe("a text", () => {
  it.each([
    ["plain", "'plain'", "'plain'"],
    ["it's", "'it''s'", "'it\\u0027s'"],
    ["''", "''''''", "'\\u0027\\u0027'"],
    ["back\\slash", "'back\\slash'", "'back\\\\slash'"],
    ["\\'", "'\\'''", "'\\\\\\u0027'"],
    ["$\u007bHOME} $ {", "'$\u007bHOME} $ {'", "'\\u0024{HOME} $ {'"],
    ["a`b", "'a`b'", "'a`b'"],
  ])("%j", (text, double, backtick) => {
    expect([textLiteral(text, "duckdb"), textLiteral(text, "spark")]).toEqual([double, backtick]);
  });

  it("in backticks means itself to a reader of backslashes, and holds no quotation mark that ends it", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom("'", "\\", "$", "{", "u", "0", "2", "7", "a") }), (text) => {
        const inner = textLiteral(text, "spark").slice(1, -1);
        expect(inner).not.toMatch(/'|\$\{/);
        const read = inner.replace(
          /\\(?:u([0-9a-f]{4})|(.))/g,
          (_, code, one) => one ?? String.fromCharCode(Number.parseInt(code, 16)),
        );
        expect(read).toBe(text);
      }),
    );
  });

  it.each(hostileTexts.filter((text) => shownAs(text) !== text))("%j is refused", (text) => {
    for (const dialect of ["duckdb", "spark"] as const) {
      expect(() => textLiteral(text, dialect)).toThrow("names of zones and grades without control characters");
      expect(() => toSql("mm/s pk", "mm/s pk", { column: text, dialect })).toThrow(VeladisError);
    }
  });
});

describe("a name", () => {
  it("has 1 to 128 characters, and no variable where Spark would put one", () => {
    const named =
      (column: string, options: Partial<ToSqlOptions> = {}) =>
      () =>
        toSql("mm/s pk", "mm/s pk", { column, ...options } as ToSqlOptions);
    expect(named("v".repeat(128))()).toContain("v".repeat(128));
    expect(named("v".repeat(129))).toThrow("a name of 1 to 128 characters without control characters, received");
    expect(named("")).toThrow(VeladisError);
    expect(named("$\u007bHOME}")()).toContain('"$\u007bHOME}"');
    expect(named("$\u007bHOME}", { dialect: "spark" })).toThrow("without control characters and ${");
    expect(named("$ {", { dialect: "spark" })()).toContain("`$ {`");
  });
});
