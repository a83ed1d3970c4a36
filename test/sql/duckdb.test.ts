import { describe, expect, it } from "vitest";
import { convert, converter, VeladisError } from "../../src/index";
import { builtInSchemes, classifier, classify, judge, machineClassifier, type Scheme } from "../../src/severity/index";
import { machineToSql, schemeToSql, toSql } from "../../src/sql/index";
import { machineFor } from "../severity/machine-for";
import { answersTo, portions, single } from "./duckdb";
import { orNull } from "./or-null";

const ROWS = 5_000_000;

/** The next number above. */
function above(value: number): number {
  const bits = new BigInt64Array(new Float64Array([value]).buffer);
  bits[0] = (bits[0] as bigint) + 1n;
  return new Float64Array(bits.buffer)[0] as number;
}

/** The next number below. */
function below(value: number): number {
  const bits = new BigInt64Array(new Float64Array([value]).buffer);
  bits[0] = (bits[0] as bigint) - 1n;
  return new Float64Array(bits.buffer)[0] as number;
}

const refused = [null, -1, -1e-300, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

describe("an engine gives the library's own answers", () => {
  it("on five million rows, refused ones among them", { timeout: 60_000 }, async () => {
    const value = "(i * 7919 % 1000003) / 7.3e4";
    const rows = `SELECT CASE i % 1000 WHEN 0 THEN NULL WHEN 1 THEN -1 - ${value} WHEN 2 THEN 'NaN'::DOUBLE
      WHEN 3 THEN 'Infinity'::DOUBLE ELSE ${value} END AS x, 600 + i % 2400 AS speed FROM range(${ROWS}) AS t(i)`;
    const linear = toSql("in/s pk", "mm/s rms", { column: "x" });
    const byRow = toSql("um pp", "mm/s rms", { column: "x", at: { column: "speed", unit: "r/min" } });
    const zone = schemeToSql("iso-10816-3-2009", "group 2 rigid", { column: "x", from: "mm/s rms" });
    const { factor } = converter("in/s pk", "mm/s rms");
    const toRms = converter("in/s pk", "mm/s rms");
    const own = classifier("iso-10816-3-2009", "group 2 rigid", "mm/s rms");
    let seen = 0;
    let wrong = 0;
    let nulls = 0;
    for await (const [xs, speeds, rms, across, zones] of portions(
      `SELECT x, speed, ${linear}, ${byRow}, ${zone} FROM (${rows})`,
    )) {
      for (let i = 0; i < (xs as unknown[]).length; i++, seen++) {
        const x = xs?.[i] as number | null;
        const valid = x !== null && x >= 0 && x < Number.POSITIVE_INFINITY;
        if (!valid) {
          nulls++;
          if (rms?.[i] !== null || across?.[i] !== null || zones?.[i] !== null) wrong++;
          if (x !== null && orNull(() => toRms(x)) !== null) wrong++;
          continue;
        }
        const hertz = Number(speeds?.[i]) / 60;
        const expected = convert(x, "um pp", "mm/s rms", { at: { hertz } });
        if (rms?.[i] !== x * factor || zones?.[i] !== own(x)) wrong++;
        if (Math.abs((across?.[i] as number) - expected) > 1e-15 * expected) wrong++;
      }
    }
    expect({ seen, wrong, nulls }).toEqual({ seen: ROWS, wrong: 0, nulls: ROWS / 250 });
  });

  it.each([
    ["in/s pk", "mm/s pk", {}],
    ["mil pp", "um pp", {}],
    ["mm/s rms", "g pk", { at: "1500 r/min" }],
    ["g pk", "mil pp", { at: "2x 1490 r/min" }],
    ["g rms", "g pk", { crestFactor: 4 }],
    ["mm/s rms", "dB re 1e-9 m/s", {}],
    ["g pk", "dB re 1e-9 m/s", { at: { hertz: 24.75 } }],
  ] as const)("%s to %s with %j", async (from, to, options) => {
    const values = [0, 1e-6, 0.25, 1, 4.5, 71, 1e9, ...refused];
    const answers = await answersTo(toSql(from, to, { column: "x", ...options }), values);
    const own = values.map((value) =>
      value === null ? null : orNull(() => (convert as (...all: unknown[]) => number)(value, from, to, options)),
    );
    for (const [i, answer] of answers.entries()) {
      if (own[i] === null) expect(answer, `${values[i]}`).toBeNull();
      else
        expect(Math.abs((answer as number) - (own[i] as number))).toBeLessThanOrEqual(
          1e-13 * Math.max(to.startsWith("dB") ? 1 : 0, Math.abs(own[i] as number)),
        );
    }
  });

  it.each([
    ["dB re 1e-9 m/s", "mm/s rms", {}],
    ["dB re 1e-6 m/s2", "g pk", {}],
    ["dB re 1e-9 m/s", "dB re ANSI S1.8-1969 velocity", {}],
    ["dB re 1e-6 m/s2", "dB re 1e-9 m/s", { at: "25 Hz" }],
  ] as const)("%s to %s with %j: levels may be negative", async (from, to, options) => {
    const values = [-20, 0, 95, 126.8, 200];
    const answers = await answersTo(toSql(from, to, { column: "x", ...options }), values);
    for (const [i, value] of values.entries()) {
      const own = (convert as (...all: unknown[]) => number)(value, from, to, options);
      expect(Math.abs((answers[i] as number) - own)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(own)));
    }
    expect(await answersTo(toSql(from, to, { column: "x", ...options }), [null, Number.NaN, 1e300])).toEqual([
      null,
      null,
      null,
    ]);
  });

  it("refuses a row whose frequency is none, and keeps the row whose quantity needs none", async () => {
    const at = { expression: "x", unit: "r/min" } as const;
    expect(await answersTo(toSql("g pk", "mm/s rms", { expression: "1e0", at }), [0, ...refused])).toEqual(
      [0, ...refused].map(() => null),
    );
    expect(await answersTo(toSql("mm/s pk", "mm/s pk", { expression: "1e0", at }), [0])).toEqual([1]);
    const once = toSql("g pk", "mm/s rms", { expression: "1e0", at: { ...at, order: 2 } });
    const [answer] = (await answersTo(once, [1500])) as number[];
    expect(answer).toBeCloseTo(convert(1, "g pk", "mm/s rms", { at: "50 Hz" }), 12);
  });
});

/** Values at, just below and just beyond every bound, the limits as 32-bit numbers among them. */
function around(limits: readonly number[], bounds: readonly number[]): number[] {
  const single = limits.map(Math.fround);
  return [0, ...limits, ...limits.map(above), ...single, ...bounds, ...bounds.map(above), ...bounds.map(below), 1e6];
}

const informative = (builtInSchemes as readonly Scheme[]).filter((one) => one.informative);

describe("zones at their limits", () => {
  const schemes = (builtInSchemes as readonly Scheme[]).filter((one) => !one.informative);

  it.each(schemes.map((scheme) => [scheme.id, scheme] as const))("%s", async (_, scheme) => {
    let judged = 0;
    for (const chosen of scheme.classes) {
      const machine = machineFor(scheme, chosen);
      for (const { as } of chosen.criteria) {
        const own = orNull(() => classifier(scheme, machine, as));
        if (own === null) continue;
        judged++;
        const { limits, bounds } = own;
        const values = [...around(limits, bounds), ...refused];
        const zone = await answersTo(schemeToSql(scheme, machine, { column: "x", from: as }), values);
        expect(zone).toEqual(values.map((value) => (value === null ? null : orNull(() => own(value)))));
        const worst = await answersTo(schemeToSql(scheme, machine, { column: "x", from: as, answer: "worst" }), values);
        expect(worst).toEqual(values.map((value) => (value === null ? null : orNull(() => own.worst(value)))));
        // a value at a limit, as a 64-bit or a 32-bit number, belongs to the better zone
        for (const [i, limit] of limits.entries()) {
          const at = values.indexOf(limit);
          expect(own.zones.indexOf(zone[at] as string)).toBeLessThanOrEqual(i);
          expect(zone[values.indexOf(Math.fround(limit))]).toBe(zone[at]);
          const { zone: mine, worst: most } = classify(`${limit} ${as}`, { scheme, machine });
          expect([zone[at], worst[at]]).toEqual([mine, most]);
        }
      }
    }
    expect(judged).toBeGreaterThanOrEqual(scheme.classes.length);
  });

  it.each(informative.map((scheme) => [scheme.id, scheme] as const))("%s is informative: no zones", (_, scheme) => {
    const machine = machineFor(scheme, scheme.classes[0] as Scheme["classes"][number]);
    expect(() => schemeToSql(scheme, machine, { column: "x", from: "mm/s rms" })).toThrow(VeladisError);
  });

  it("of a column of 32-bit numbers", async () => {
    const machine = "pump 90 kW 2980 r/min category II";
    const sql = schemeToSql("iso-10816-7-2009", machine, { column: "x", from: "mm/s rms" });
    const values = [3.2, 5.1, 8.5].flatMap((limit) => [limit, limit * (1 + 2 ** -22)]);
    expect(await answersTo(sql, values, "FLOAT")).toEqual(["A", "B", "B", "C", "C", "D"]);
    expect(await answersTo(sql, values, "DOUBLE")).toEqual(["A", "B", "B", "C", "C", "D"]);
  });

  it("of another unit and quantity, and of a level", async () => {
    const { bounds } = classifier("iso-10816-3-2009", "group 1 flexible", "dB re 1e-9 m/s");
    const sql = schemeToSql("iso-10816-3-2009", "group 1 flexible", { column: "x", from: "dB re 1e-9 m/s" });
    expect(await answersTo(sql, [-20, ...bounds, ...bounds.map(above), null, Number.NaN])).toEqual([
      "A",
      "A",
      "B",
      "C",
      "B",
      "C",
      "D",
      null,
      null,
    ]);
    const from = { column: "x", from: "in/s pk", at: "1490 r/min" } as const;
    const own = classifier("iso-10816-3-2009", "group 1 flexible", "in/s pk", { at: "1490 r/min" });
    const values = [0.1, ...own.bounds, ...own.bounds.map(above)];
    expect(await answersTo(schemeToSql("iso-10816-3-2009", "group 1 flexible", from), values)).toEqual(
      values.map((value) => own(value)),
    );
  });
});

describe("verdicts on a machine", () => {
  it.each([
    ["pump 90 kW 2980 r/min category II", "mm/s rms"],
    ["pump 90 kW", "in/s pk"],
    ["motor 1485 r/min rigid", "mm/s rms"],
    ["motor 5.5 kW 1485 r/min rigid", "mm/s rms"],
    ["motor 400 kW rigid", "mm/s rms"],
    ["motor 400 kW 600 r/min rigid", "mm/s rms"],
    ["motor 400 kW 3570 r/min rigid housing", "mil pp"],
    ["compressor 2 MW 11000 r/min", "um pp"],
    ["steam turbine 12 MW 5400 r/min", "um pp"],
    ["steam turbine 12 MW 5400 r/min shaft", "mil pp"],
    ["fan 132 kW 1485 r/min rigid BV-3", "mm/s pk"],
    ["pump 90 kW new", "mm/s rms"],
  ] as const)("%s in %s: the answers of judge, NULL for what is no reading", async (machine, from) => {
    const own = machineClassifier(machine, from);
    const values = [...around(own.limits, own.bounds), ...own.worstBounds, ...own.worstBounds.map(above), ...refused];
    const zone = await answersTo(machineToSql(machine, { column: "x", from }), values);
    const worst = await answersTo(machineToSql(machine, { column: "x", from, answer: "worst" }), values);
    for (const [i, value] of values.entries()) {
      if (value === null || !(value >= 0 && value < Number.POSITIVE_INFINITY)) {
        expect([zone[i], worst[i]]).toEqual([null, null]);
        continue;
      }
      expect([zone[i], worst[i]]).toEqual([own(value), own.worst(value)]);
      // beside a bound in another unit the last digit of the conversion decides
      const isBeside = [...own.bounds, ...own.worstBounds].some((bound) => Math.abs(value - bound) < 1e-12 * bound);
      if (isBeside) continue;
      const verdict = judge(`${value} ${from}`, machine);
      expect([zone[i], worst[i]], `${value}`).toEqual([verdict.zone, verdict.worst]);
    }
  });

  it("are those of judge for nameplates of any kind, and a fact left out removes no worst zone", async () => {
    const facts = [
      ["motor", "pump", "compressor", "gear drive", "steam turbine"],
      ["5.5 kW", "90 kW", "301 kW", "12 MW"],
      ["110 r/min", "590 r/min", "1485 r/min", "12001 r/min"],
      ["rigid", "flexible"],
      ["housing", "housing", "housing", "shaft"],
      ["category I", "group 2", "class II", "painted", "category II"],
    ] as const;
    // every choice comes up, in a mixture that is the same each time
    const plates = Array.from({ length: 480 }, (_, i) =>
      facts.map((choices, fact) => choices[Math.floor((i * 7919 + fact * 104729) / 3 ** fact) % choices.length]),
    );
    const values = [0.5, 0.9, 1.6, 2.5, 3.7, 5.2, 6.6, 8, 12, 60];
    const sqlOf = (machine: string, answer: "zone" | "worst") =>
      orNull(() => machineToSql(machine, { column: "x", from: "mm/s rms", answer }));
    const order = ["A", "AB", "B", "C", "D"];
    let judged = 0;
    let drops = 0;
    for (const plate of plates) {
      const machine = plate.join(", ");
      const worst = sqlOf(machine, "worst");
      if (worst === null) continue;
      judged++;
      const zone = await answersTo(sqlOf(machine, "zone") as string, values);
      const most = (await answersTo(worst, values)) as string[];
      for (const [i, value] of values.entries()) {
        const verdict = judge(`${value} mm/s rms`, machine);
        expect([zone[i], most[i]], `${value} on ${machine}`).toEqual([verdict.zone, verdict.worst]);
      }
      for (let left = 1; left < plate.length; left++) {
        const sql = sqlOf(plate.filter((_, i) => i !== left).join(", "), "worst");
        if (sql === null) continue;
        drops++;
        const less = (await answersTo(sql, values)) as string[];
        for (const [i, value] of values.entries()) {
          const milder = order.indexOf(less[i] as string) < order.indexOf(most[i] as string);
          expect(milder, `${value} on ${machine} without ${plate[left]}: ${less[i]}, with it ${most[i]}`).toBe(false);
        }
      }
    }
    // refusals are counted apart: refusing more does not pass
    expect(judged).toBeGreaterThan(150);
    expect(drops).toBeGreaterThan(700);
  });

  it("never become better by a fact left out", async () => {
    const values = Array.from({ length: 200 }, (_, i) => 0.07 * (i + 1));
    const at = async (machine: string) =>
      (await answersTo(machineToSql(machine, { column: "x", from: "mm/s rms", answer: "worst" }), values)) as string[];
    const [all, less] = [await at("motor 5.5 kW 1485 r/min rigid"), await at("motor 1485 r/min rigid")];
    for (const [i, zone] of all.entries()) expect((less[i] as string) >= zone, `${values[i]}`).toBe(true);
  });
});

describe("names are names", () => {
  it.each(['v"; DROP TABLE t; --', "v' OR 1=1", "SELECT", "été µm/s", "a.b", "/* */", " ", "`"])("%j", async (name) => {
    const quoted = `"${name.replaceAll('"', '""')}"`;
    const sql = toSql("mm/s pk", "mm/s rms", { column: name });
    expect(await single(`SELECT ${sql} FROM (SELECT 2e0 AS ${quoted})`)).toBeCloseTo(Math.SQRT2, 12);
    const table = toSql("mm/s pk", "mm/s rms", { column: [name, name] });
    expect(await single(`SELECT ${table} FROM (SELECT 2e0 AS ${quoted}) AS ${quoted}`)).toBeCloseTo(Math.SQRT2, 12);
  });
});
