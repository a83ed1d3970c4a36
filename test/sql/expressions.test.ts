import { describe, expect, it } from "vitest";
import { classifier, defineScheme, type Scheme } from "../../src/severity/index";
import { machineToSql, schemeToSql, toSql } from "../../src/sql/index";
import { codeOf } from "../refusals/refusal-of";
import { confirmedGroup2 } from "../severity/confirmed-limits";

const value = { column: "v" } as const;

describe("conversions as SQL", () => {
  it.each([
    [toSql("mm/s rms", "mm/s rms", value), '+"v"'],
    [toSql("in/s pk", "mm/s pk", value), '+"v" * 2.54e1'],
    [toSql("mm/s pk", "mm/s pk", { column: ["readings", "v"] }), '+"readings"."v"'],
    [toSql("mm/s pk", "mm/s pk", { column: "a`b", dialect: "spark" }), "`a``b` >= 0e0"],
    [toSql("mm/s pk", "mm/s pk", { expression: "raw / 1000" }), "+(raw / 1000)"],
    [toSql("g pk", "mm/s pk", { ...value, at: { column: "hz", unit: "Hz" } }), '+"v" * (1.56077682'],
    [toSql("um pp", "m/s2 pk", { ...value, at: { column: "hz", unit: "Hz" } }), ' * (+"hz" * +"hz"))'],
    [toSql("dB re 1e-9 m/s", "m/s rms", value), '1e-9 * POWER(1e1, +"v" / 2e1)'],
  ])("%s", (sql, part) => {
    expect(sql).toContain(part);
    expect(sql).toMatch(/^CASE WHEN .* END \/\* .* \*\/$/);
  });

  it.each([
    [toSql("mm/s pk", "mm/s rms", value), "mm/s pk to mm/s rms; assumed: sine"],
    [toSql("g rms", "g pk", { ...value, crestFactor: 4 }), "assumed: crest factor 4"],
    [toSql("g pk", "mm/s rms", { ...value, at: "1500 r/min" }), "at 1500 r/min; assumed: one frequency, sine"],
    [toSql("g pk", "mm/s pk", { ...value, at: { hertz: 25 } }), "at 25 Hz; assumed: one frequency"],
    [
      toSql("g pk", "mm/s pk", { ...value, at: { column: "n", unit: "r/min", order: 2 } }),
      "at 2x the frequency of the row",
    ],
  ])("the remark of %s", (sql, part) => expect(sql).toContain(part));
});

describe("tables of limits as SQL", () => {
  it("says how far the limits are known, and what was assumed", () => {
    const table = { column: "v", from: "mm/s rms" } as const;
    expect(schemeToSql("iso-20816-3-2022", "group 2 rigid", table)).toContain("limits from memory: check them");
    expect(schemeToSql("iso-10816-7-2009", "pump 250 kW category II", table)).toContain(
      "limits read on a page whose making is unknown: check them",
    );
    // group 3 of ISO 10816-5:2000 was read on a page of the standard: there is nothing to be said
    expect(schemeToSql("iso-10816-5-2000", "group 3", table)).not.toMatch(/limits (?!in )|check them/);
    expect(schemeToSql("iso-10816-7-2009", "pump 250 kW", { ...table, assume: "lowest limits" })).toContain(
      "not given, and taken for its lower limits",
    );
  });

  it("says who confirmed limits, all or in part, and where the printed copy has another limit", () => {
    const remarkOf = (scheme: Scheme) => schemeToSql(scheme, "group 2 rigid", { column: "v", from: "mm/s rms" });
    const by = "confirmed by H. Example, 2024-03-04, p. 12";
    expect(remarkOf(confirmedGroup2(/./))).toContain(`; limits ${by}`);
    expect(remarkOf(confirmedGroup2(/./))).not.toMatch(/from memory|check them|DIFFERS/);
    expect(remarkOf(confirmedGroup2(/C\/D/))).toContain(
      `; limits from memory; in part C/D mm/s rms ${by}: check them against the standard`,
    );
    expect(remarkOf(confirmedGroup2(/C\/D/, (shipped) => shipped * 0.9))).toContain(
      "DIFFERS FROM THE TABLE AS SHIPPED: ",
    );
  });

  it("gives the worst possible zone on request, and says which of the two it gives", () => {
    const column = { column: "v", from: "mm/s rms" } as const;
    const [zone, worst] = (["zone", "worst"] as const).map((answer) =>
      schemeToSql("iso-10816-3-2009", "group 2 rigid", { ...column, answer }),
    ) as [string, string];
    expect(zone).toBe(schemeToSql("iso-10816-3-2009", "group 2 rigid", column));
    expect(zone).toContain("the zone that was judged; worse is possible; not judged: limits in um rms");
    expect(worst).toContain(
      "1.7976931348623157e308 THEN 'D' END /* ISO 10816-3 (2009), mm/s rms; the worst zone that is",
    );
    // at 1485 r/min a velocity in a zone is a displacement in no worse one: nothing is left open
    const known = schemeToSql("iso-10816-3-2009", "group 2 rigid 1485 r/min", { ...column, answer: "worst" });
    expect(known).not.toContain("possible");
    expect(known).toContain("nothing below running speed, 24.8 Hz: assumed");
  });

  it("names for a machine the schemes, what was set aside and what was assumed", () => {
    const sql = machineToSql("motor 1485 r/min rigid, painted blu", { column: "v", from: "mm/s rms" });
    expect(sql).toContain("ISO 20816-3 (2022) and ISO 10816-1 (1995, Annex B), mm/s rms; the worst of them governs");
    expect(sql).toContain("power up to 15 kW: not given, assumed");
    expect(sql).toMatch(/set aside: ".*blu.*": not understood/);
    const either = machineToSql("steam turbine 12 MW 5400 r/min rigid", { column: "d", from: "um pp" });
    expect(either).toContain("ISO 20816-3 (2022) on the housing and ISO 20816-3 (2022) on the shaft");
  });

  it("of a machine by schemes of one's own", () => {
    const rule = defineScheme({
      id: "site-rule",
      kind: "zones",
      standard: "Site rule",
      machines: ["gear drive"],
      classes: [
        {
          criteria: [
            {
              as: "mm/s rms",
              limits: { "A/B": 1.8, "B/C": 3.5, "C/D": 5.6 },
              source: { title: "rule", provenance: "printed", page: "p. 3" },
            },
          ],
        },
      ],
    });
    const sql = machineToSql("gear drive", { column: "v", from: "mm/s rms", schemes: [rule] });
    expect(sql).toMatch(/\/\* Site rule \([^)]*\), mm\/s rms; place housing: not given, assumed \*\/$/);
  });

  it("of a table of one's own, whatever its texts hold", () => {
    const scheme = defineScheme({
      id: "site-rule",
      kind: "grades",
      standard: "Site rule */ DROP",
      edition: "2",
      title: "Rule of the station",
      status: "guide",
      statusNote: "invented for this test",
      scope: "any",
      place: "housing",
      measuredOn: "bearing housings",
      band: null,
      grades: ["it's fine", "back\\slash", "rough"],
      classes: [
        {
          criteria: [
            {
              as: "mm/s rms",
              limits: { "it's fine": 2, "back\\slash": 4 },
              source: { title: "rule", provenance: "memory" },
            },
          ],
        },
      ],
    });
    const sql = schemeToSql(scheme, {}, { column: "v", from: "mm/s rms" });
    expect(sql).toContain("'it''s fine'");
    expect(sql).toContain("'back\\slash'");
    expect(sql.match(/\*\//g)).toHaveLength(1);
    expect(schemeToSql(scheme, {}, { column: "v", from: "mm/s rms", dialect: "spark" })).toContain("'back\\\\slash'");
  });
});

describe("what is refused", () => {
  it.each([
    ["missing-option", () => toSql("mm/s pk", "mm/s rms", {} as never)],
    ["missing-option", () => toSql("mm/s pk", "mm/s rms", undefined as never)],
    ["wrong-type", () => toSql("mm/s pk", "mm/s rms", { column: "v", expression: "v" } as never)],
    ["syntax", () => toSql("mm/s pk", "mm/s rms", { column: "" })],
    ["missing-option", () => toSql("mm/s pk", "mm/s rms", { column: [] })],
    ["syntax", () => toSql("mm/s pk", "mm/s rms", { column: "a\u0000b" })],
    ["syntax", () => toSql("mm/s pk", "mm/s rms", { column: "v".repeat(129) })],
    ["syntax", () => toSql("mm/s pk", "mm/s rms", { expression: " " })],
    ["wrong-type", () => toSql("mm/s pk", "mm/s rms", { column: [7] as never })],
    ["unknown-option", () => toSql("mm/s pk", "mm/s rms", { column: "v", dialect: "single" as never })],
    ["missing-frequency", () => toSql("g pk", "mm/s rms", value)],
    ["unknown-frequency-unit", () => toSql("g pk", "mm/s rms", { ...value, at: { column: "n", unit: "turns" } })],
    ["missing-option", () => toSql("g pk", "mm/s rms", { ...value, at: { unit: "Hz" } as never })],
    ["not-a-sine", () => toSql("g pk", "mm/s rms", { ...value, at: "25 Hz", crestFactor: 3 })],
    ["unknown-unit", () => toSql("furlong pk", "mm/s rms", value)],
    ["missing-detector", () => toSql("mm/s", "mm/s rms", value)],
    ["unknown-option", () => schemeToSql("iso-0" as never, "group 2", { column: "v", from: "mm/s rms" })],
    ["missing-fact", () => schemeToSql("iso-10816-3-2009", "group 2", { column: "v", from: "mm/s rms" })],
    ["missing-fact", () => machineToSql("1485 r/min rigid", { column: "v", from: "mm/s rms" })],
    ["missing-fact", () => machineToSql("motor 1485 r/min", { column: "v", from: "mm/s rms", assume: "nothing" })],
    ["missing-option", () => machineToSql("motor", undefined as never)],
    [
      "unknown-option",
      () =>
        schemeToSql("iso-10816-7-2009", "pump category I", { column: "v", from: "mm/s rms", answer: "best" as never }),
    ],
    [
      "missing-frequency",
      () => schemeToSql("iso-10816-7-2009", "pump 250 kW category I", { column: "v", from: "g pk" }),
    ],
  ])("%s", (code, act) => expect(codeOf(act)).toBe(code));

  it("of RMS values by limits in true peak, as the classifiers judge them", () => {
    const source = { title: "rule", provenance: "printed", page: "p. 3" } as const;
    const limits = { "A/B": 1.8, "B/C": 3.5, "C/D": 5.6 };
    const rule = defineScheme({
      ...{ id: "site-rule", kind: "zones", standard: "Site rule", machines: ["gear drive"] },
      classes: [{ criteria: [{ as: "g true pk", limits, source }] }],
    } as const);
    const taken = "crest factor 1.414, of a sine: not given, assumed";
    const options = { column: "x", from: "g rms" } as const;
    for (const more of [{}, { crestFactor: 4 }]) {
      const judge = classifier(rule, "gear drive", "g rms", more);
      const told = { ...options, ...more };
      for (const sql of [
        schemeToSql(rule, "gear drive", told),
        machineToSql("gear drive", { ...told, schemes: [rule] }),
      ]) {
        const ends = [...sql.matchAll(/<= (\S+) THEN '/g)].map(([, end]) => Number(end));
        expect(ends).toEqual(judge.bounds);
        expect(sql.includes(taken)).toBe(!("crestFactor" in more));
        expect(sql.includes("assumed: crest factor 4")).toBe("crestFactor" in more);
      }
      const worst = schemeToSql(rule, "gear drive", { ...told, answer: "worst" });
      expect([...worst.matchAll(/<= (\S+) THEN '/g)].map(([, end]) => Number(end)).slice(-3)).toEqual(
        "crestFactor" in more ? judge.worstBounds : [Number.MAX_VALUE],
      );
    }
  });
});
