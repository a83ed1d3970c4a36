import { VeladisError } from "veladis";
import {
  changeFromBaseline,
  classifier,
  classify,
  confirmScheme,
  defineScheme,
  limitsFor,
  type SchemeInput,
  schemeById,
} from "veladis/severity";
import { describe, expect, it } from "vitest";

/** A rule of the invented heating works: circulation pumps and their gear drives. Invented, for the tests only. */
const rule = {
  id: "heating-works-drives",
  kind: "zones",
  standard: "Site rule 7, invented",
  classes: [
    {
      named: { class: "main" },
      by: { power: { above: 100 } },
      criteria: [
        {
          as: "mm/s rms",
          limits: { "A/B": 2, "B/C": 4, "C/D": 8 },
          source: { title: "Site rule 7", where: "table 1", provenance: "printed", page: "p. 3" },
        },
        {
          as: "um pp",
          limits: { "A/B": 40, "B/C": 80, "C/D": 160 },
          source: { title: "Site rule 7", provenance: "memory" },
        },
      ],
    },
    {
      named: { class: "auxiliary" },
      by: { power: { to: 100 } },
      criteria: [
        {
          as: "in/s pk",
          limits: { "A/B": 0.1, "B/C": 0.2, "C/D": 0.4 },
          source: { title: "Site rule 7", provenance: "printed", page: "p. 3" },
        },
      ],
    },
  ],
} as const satisfies SchemeInput;

/** A copy of the rule, changed. */
function changed(change: (input: Record<string, unknown>) => void): SchemeInput {
  const input = JSON.parse(JSON.stringify(rule)) as Record<string, unknown>;
  change(input);
  return input as unknown as SchemeInput;
}

// biome-ignore lint/suspicious/noExplicitAny: the tests break the types on purpose
type Loose = any;
const first = (input: Loose): Loose => input.classes[0].criteria[0];

describe("a scheme of your own", () => {
  const own = defineScheme(rule);

  it("works everywhere a built-in one does", () => {
    expect(classify("5 mm/s rms", { scheme: own, machine: "class main" })).toMatchObject({
      zone: "C",
      verified: true,
      scheme: rule.id,
    });
    expect(classify("5 mm/s rms at 10 Hz", { scheme: own, machine: "160 kW" })).toMatchObject({
      zone: "D",
      quantity: "displacement",
      verified: false,
    });
    expect(classifier(own, "90 kW", "mm/s rms")(3)).toBe("B");
    expect(limitsFor({ scheme: own, machine: "class auxiliary" })[0]?.limits["B/C"]?.value).toBe(0.2);
    expect(changeFromBaseline("3.1 mm/s rms", "2 mm/s rms", { scheme: own, machine: "class main" }).significant).toBe(
      true,
    );
  });

  it("is JSON in and JSON out", () => {
    const text = JSON.stringify(own);
    expect(JSON.stringify(defineScheme(JSON.parse(text) as SchemeInput))).toBe(text);
    expect(JSON.parse(text)).toEqual(own);
  });

  it("may bear the standard and edition of a built-in one with its limits alone, in any order of keys, or confirmed", () => {
    const [first, second] = schemeById("iso-10816-7-2009").classes as unknown as Loose[];
    const bearing = (classes: unknown[], more: object = {}): Loose => ({
      ...{ id: "our-pumps", kind: "zones", standard: "ISO 10816-7", edition: "2009", classes, ...more },
    });
    const zoneBy = (scheme: Loose): unknown => classify("4.5 mm/s rms", { scheme, machine: "category I 90 kW" }).zone;
    const { criteria, ...rest } = first;
    expect(zoneBy(defineScheme(bearing([{ criteria, ...rest }, second])))).toBe("C");
    const other = [{ ...rest, criteria: [{ ...criteria[0], limits: { "A/B": 2.5, "B/C": 5, "C/D": 6.5 } }] }];
    for (const more of [{}, { standard: "iso 10816-7" }, { id: "other", title: "pumps" }]) {
      expect(() => zoneBy(defineScheme(bearing(other, more)))).toThrow(/own copy.*confirmScheme/);
    }
    // the row of one category with the limits of another
    expect(() => zoneBy(bearing([{ ...rest, criteria: second.criteria }]))).toThrow(/built-in iso-10816-7-2009/);
    expect(zoneBy(bearing(other, { edition: "2009, own copy" }))).toBe("B");
    const copy = defineScheme({ ...schemeById("iso-10816-7-2009"), id: "our-pumps" } as SchemeInput);
    const signed = { page: "12", by: "J. Example", on: "2024-03-04" };
    const row = "category I, power up to 200 kW";
    const read = { scheme: "our-pumps", edition: "2009", row, limit: "B/C", as: "mm/s rms", printed: 3.9, ...signed };
    expect(zoneBy(confirmScheme(copy, [read]))).toBe("C");
  });

  it("is a frozen copy", () => {
    const input = changed(() => {});
    const scheme = defineScheme(input);
    first(input).limits["A/B"] = 99;
    expect(classify("3 mm/s rms", { scheme, machine: "class main" }).zone).toBe("B");
    expect(Object.isFrozen(scheme.classes[0]?.criteria[0]?.limits)).toBe(true);
  });

  it("is checked also where it was never defined", () => {
    const bare = changed((input) => {
      first(input).limits["A/B"] = 5;
    }) as never;
    expect(() => classify("3 mm/s rms", { scheme: bare, machine: "class main" })).toThrow(/ascending/);
  });

  it("may fall with speed, pass or fail, or have grades of its own", () => {
    const source = { title: "Site rule 8", provenance: "printed", page: "p. 3" } as const;
    const shaft = defineScheme({
      id: "a",
      kind: "acceptance",
      standard: "Site rule 8, invented",
      place: "shaft",
      classes: [
        {
          when: { speed: { from: 600 } },
          criteria: [{ as: "mil pp", limits: { acceptance: { rootOf: 12000, atMost: 2 } }, source }],
        },
      ],
    });
    expect(classify("1.9 mil pp", { scheme: shaft, machine: "3000 r/min" })).toMatchObject({
      zone: "pass",
      limit: { value: 2 },
    });
    expect(classify("1.1 mil pp", { scheme: shaft, machine: "12000 r/min" })).toMatchObject({
      zone: "fail",
      limit: { value: 1 },
    });
    const grades = defineScheme({
      id: "b",
      kind: "grades",
      standard: "Site rule 9, invented",
      grades: ["calm", "lively", "wild"],
      classes: [{ criteria: [{ as: "g pk", limits: { calm: 1, lively: 4 }, source }] }],
    });
    expect(classify("9.9 m/s2 pk", { scheme: grades })).toMatchObject({
      zone: "lively",
      zones: ["calm", "lively", "wild"],
    });
  });

  // biome-ignore format: a row of a table is a line
  const faults: [what: string, change: (input: Loose) => void, code: string, says: RegExp][] = [
    ["limits that do not ascend", (input) => { first(input).limits["B/C"] = 2; }, "out-of-range", /ascending/],
    ["a limit of zero", (input) => { first(input).limits["A/B"] = 0; }, "not-positive", /A\/B/],
    ["a limit that is no number", (input) => { first(input).limits["A/B"] = "2"; }, "wrong-type", /A\/B/],
    ["no limit at all", (input) => { first(input).limits = {}; }, "missing-fact", /one limit/],
    ["a limit of another kind", (input) => { first(input).limits.shutdown = 9; }, "unknown-option", /allowed: A\/B, B\/C, C\/D/],
    ["criteria that part other zones", (input) => { delete first(input).limits["A/B"]; }, "out-of-range", /same names/],
    ["an unknown unit", (input) => { first(input).as = "furlong rms"; }, "unknown-unit", /unit/],
    ["an unknown detector", (input) => { first(input).as = "mm/s max"; }, "unknown-detector", /detector/],
    ["no detector", (input) => { first(input).as = "mm/s"; }, "missing-detector", /detector/],
    ["a spelling that is not plain", (input) => { first(input).as = "ips peak"; }, "syntax", /did you mean in\/s pk/],
    ["a level", (input) => { first(input).as = "dB re 1 nm/s"; }, "syntax", /linear/],
    ["no source", (input) => { delete first(input).source; }, "missing-fact", /source/],
    ["a source without text", (input) => { first(input).source.title = " "; }, "syntax", /title/],
    ["a source of unknown provenance", (input) => { first(input).source.provenance = "hearsay"; }, "unknown-option", /memory, practice, reported, quoted, printed, confirmed/],
    ["a fact there is none of", (input) => { input.classes[0].by = { colour: "red" }; }, "unknown-option", /allowed: type, power/],
    ["a range upside down", (input) => { input.classes[0].by = { power: { from: 9, to: 3 } }; }, "out-of-range", /lower bound below/],
    ["two lower bounds", (input) => { input.classes[0].by = { power: { from: 1, above: 2 } }; }, "out-of-range", /one lower bound/],
    ["classes that overlap", (input) => { input.classes[1].named.class = "Main"; }, "out-of-range", /no machine can belong to two/],
    ["classes that overlap by size", (input) => { input.classes[1].by.power.to = 101; }, "out-of-range", /class 1 .* and class 2/],
    ["an unknown kind", (input) => { input.kind = "traffic"; }, "unknown-option", /zones, acceptance, operation, grades/],
    ["grades that are whole numbers", (input) => { input.kind = "grades"; input.grades = ["11", "2"]; }, "out-of-range", /no whole number/],
    ["a withdrawn edition without its successor", (input) => { input.status = "withdrawn"; }, "missing-option", /replaced/],
    ["a misspelt part", (input) => { input.standart = "x"; }, "unknown-option", /did you mean standard/],
    ["a kind of machine there is none of", (input) => { input.classes[0].by = { type: "toaster" }; }, "unknown-option", /pump, fan/],
    ["a number that is none", (input) => { first(input).limits["A/B"] = Number.NaN; }, "not-a-number", /finite/],
    ["a function", (input) => { input.title = () => "x"; }, "wrong-type", /plain data/],
    ["a default for a fact", (input) => { input.defaults = { grade: { is: "A", because: "x" } }; }, "unknown-option", /"defaults"/],
    ["no id", (input) => { delete input.id; }, "missing-option", /id of a scheme/],
    ["no classes", (input) => { input.classes = []; }, "missing-option", /classes/],
    ["a band upside down", (input) => { input.band = [1000, 10]; }, "out-of-range", /band/],
  ];

  it.each(faults)("is refused with %s", (_, change, code, says) => {
    try {
      defineScheme(changed(change));
    } catch (error) {
      expect(error).toBeInstanceOf(VeladisError);
      expect((error as VeladisError).message).toMatch(says);
      expect((error as VeladisError).code).toBe(code);
      return;
    }
    throw new Error("was not refused");
  });

  // biome-ignore format: a row of a table is a line
  it.each<[what: string, change: (input: Loose) => void]>([
    ["a range of one value", (input) => { input.within = { speed: { from: 1500, to: 1500 } }; }],
    ["a range without an end", (input) => { input.within = { power: { above: 15 }, speed: { below: 3600 } }; }],
    ["several labels for a fact", (input) => { input.within = { support: ["rigid", "flexible"], part: ["gear", "motor side"] }; }],
    ["grades whose names begin with a number", (input) => {
      Object.assign(input, { kind: "grades", grades: ["1st", "2nd", "no 3"], classes: [input.classes[1]] });
      first(input).limits = { "1st": 1, "2nd": 2 };
    }],
    ["laws of speed that stop at the same value", (input) => {
      first(input).limits = { "A/B": { rootOf: 1, atMost: 5 }, "B/C": { rootOf: 4, atMost: 5 }, "C/D": { rootOf: 9 } };
    }],
    ["a limit that all criteria have as nothing", (input) => {
      for (const one of input.classes[0].criteria) one.limits["A/B"] = null;
    }],
    ["a criterion with a band of its own, for slow machines", (input) => {
      Object.assign(first(input), { band: [2, 1000], when: { speed: { below: 600 } } });
    }],
    ["the edition that replaced a withdrawn one", (input) => { Object.assign(input, { status: "withdrawn", replacedBy: "Site rule 8" }); }],
  ])("may have %s", (_, change) => {
    const input = changed(change);
    expect(defineScheme(input)).toMatchObject(input);
  });

  it.each([undefined, null, 3, "x", []])("is refused as %s", (input) => {
    expect(() => defineScheme(input as never)).toThrow(VeladisError);
  });
});
