import { explain } from "veladis/explain";
import { asFoundAsLeft, checkAgainstKnown, linearity, setpointSheet, sheetMarkdown } from "veladis/protection";
import { parseUncertain, uncertaintyOf } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";

const known = "8 ± 0.16 mm/s rms (k=2) at 2400 r/min";
const check = { known, indicated: "7.7 ± 0.05 mm/s rms", tolerance: "5 %" } as const;

describe("a check of levels with their uncertainty", () => {
  const found = checkAgainstKnown(check);

  it("has the expanded uncertainty of its error, and decides with it as the guard band", () => {
    // JCGM 100:2008, 5.1.2: two independent inputs; 4.3.7: a bare bound over root 3
    const standard = Math.hypot(0.16 / 2, 0.05 / Math.sqrt(3));
    expect(found.uncertainty).toBeCloseTo(2 * standard, 12);
    expect(found.rule).toBe("guard band");
    expect(found.verdict).toBe("undecided");
    expect(found.call).toBe("conditional pass");
    expect(found.acceptance.below).toBeCloseTo(0.4 - 2 * standard, 12);
    expect(found.method).toBe("first order");
  });

  it("names its parts, and that they were taken as independent", () => {
    expect(found.parts.map(({ name, stated }) => `${name} ${stated}`)).toEqual([
      "8 mm/s rms ± 0.16 mm/s rms (k=2)",
      "7.7 mm/s rms ± 0.05 mm/s rms",
    ]);
    expect(found.assumed).toContain("independent");
    expect(explain(found).text).toContain("taken as independent");
    expect(uncertaintyOf(JSON.parse(JSON.stringify(found)), { method: "first order" }).expanded).toBeCloseTo(
      (100 * (found.uncertainty ?? 0)) / 8,
      9,
    );
  });

  it("puts the uncertainty stated beside the levels to it as one more part", () => {
    const { uncertainty, parts } = checkAgainstKnown({ ...check, uncertainty: "1 % (k=2)" });
    expect(uncertainty).toBeCloseTo(Math.hypot(0.08, found.uncertainty ?? 0), 12);
    expect(parts.find(({ name }) => name === "known level")).toMatchObject({ stated: "± 1 % (k=2)", standard: 0.04 });
    expect(parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it("may be decided by simple acceptance all the same", () => {
    const simple = checkAgainstKnown({ ...check, rule: "simple acceptance" });
    expect([simple.verdict, simple.rule]).toEqual(["pass", "simple acceptance"]);
    expect(simple.uncertainty).toBe(found.uncertainty);
  });

  it("is as before where no level has one", () => {
    const { uncertainty, parts, method, assumed } = checkAgainstKnown({
      ...check,
      known: "8 mm/s rms",
      indicated: "7.7 mm/s rms",
    });
    expect([uncertainty, parts, method, assumed]).toEqual([null, [], null, []]);
    const beside = checkAgainstKnown({
      known: "8 mm/s rms",
      indicated: "7.7 mm/s rms",
      tolerance: "5 %",
      uncertainty: "2 % (k=2)",
    });
    expect([beside.uncertainty, beside.parts, beside.method]).toEqual([0.16, [], null]);
  });

  it("reads levels and uncertainties in dB and in per cent", () => {
    const decibels = checkAgainstKnown({
      known: "95 ± 0.2 dB re 1 nm/s (k=2)",
      indicated: "95.1 dB re 1 nm/s",
      tolerance: "0.5 dB",
    });
    expect((decibels.uncertainty ?? 0) / decibels.known.value).toBeCloseTo((0.2 * Math.LN10) / 20, 12);
    const percent = checkAgainstKnown({ ...check, known: "8 mm/s rms ± 2 % (k=2)", indicated: "7.7 mm/s rms" });
    expect(percent.uncertainty).toBeCloseTo(0.16, 12);
  });

  it("carries the tolerance of the known frequency where the level shown is of another quantity", () => {
    const indicated = "90 um pp";
    const exact = checkAgainstKnown({ known: "8 mm/s rms at 2400 r/min", indicated, tolerance: "5 %" });
    expect(exact.uncertainty).toBeNull();
    const { uncertainty, indicated: level } = checkAgainstKnown({
      known: "8 mm/s rms at 2400 ± 24 r/min (k=2)",
      indicated,
      tolerance: "5 %",
    });
    expect(uncertainty).toBeCloseTo(0.01 * level.value, 9);
  });

  it("is drawn where an input is known less well than to 10 %, and says by which seed", () => {
    const { method, uncertainty } = checkAgainstKnown({ ...check, indicated: "7.7 ± 3 mm/s rms (k=2)" });
    expect(method).toBe("Monte Carlo, 200000 draws, seed 1");
    expect(uncertainty).toBeGreaterThan(2.9);
  });

  it("of one level against itself has no uncertainty left", () => {
    const one = parseUncertain("8 ± 0.16 mm/s rms (k=2)");
    expect(checkAgainstKnown({ known: one, indicated: one, tolerance: "5 %" }).uncertainty).toBeNull();
  });

  it("needs an uncertainty for a guard band, and one that is above zero", () => {
    expect(() =>
      checkAgainstKnown({ ...check, known: "8 mm/s rms", indicated: "7.7 mm/s rms", rule: "guard band" }),
    ).toThrow(/the guard band is made of/);
    expect(() => checkAgainstKnown({ ...check, indicated: "7.7 ± -0.05 mm/s rms" })).toThrow(/zero or more/);
    expect(() => checkAgainstKnown({ ...check, tolerance: "5 ± 1 %" })).toThrow(/without ±/);
  });
});

describe("checks of several levels", () => {
  it("each have their own uncertainty", () => {
    const pair = asFoundAsLeft({
      known,
      tolerance: "5 %",
      asFound: "7.3 mm/s rms",
      asLeft: "7.9 ± 0.1 mm/s rms (k=2)",
    });
    expect(pair.asFound.uncertainty).toBeCloseTo(0.16, 12);
    expect(pair.asLeft.uncertainty).toBeCloseTo(Math.hypot(0.16, 0.1), 12);
    expect(pair.assumed).toContain("independent");
    const line = linearity(
      [
        { known: "2 ± 0.02 mm/s rms (k=2)", indicated: "2.05 mm/s rms" },
        { known: "5 mm/s rms", indicated: "5.05 mm/s rms" },
      ],
      { tolerance: "5 %" },
    );
    expect(line.points.map(({ rule }) => rule)).toEqual(["guard band", "simple acceptance"]);
  });

  it("show the parts on their sheet", () => {
    const sheet = sheetMarkdown(setpointSheet({ machine: "ID fan 2", check: checkAgainstKnown(check) }));
    expect(sheet).toContain(
      "uncertainty 0.170 mm/s rms (k = 2) made of: 8 mm/s rms ± 0.16 mm/s rms (k=2) (88 %); 7.7 mm/s rms ± 0.05 mm/s rms (12 %), taken as independent, first order",
    );
  });
});

describe("an uncertainty stated beside the known level", () => {
  const of = (uncertainty: string) =>
    checkAgainstKnown({ known: "8 mm/s rms", indicated: "7.7 mm/s rms", tolerance: "5 %", uncertainty });

  // JCGM 100:2008, 4.3.7: of a bound a/root 3; else the k-th part. 95 % of a bell is 1.96 (common practice, no source)
  it.each([
    ["2 % (k=2)", 0.16],
    ["± 2 % (k=1)", 0.32],
    ["+/- 0.1 mm/s rms (k=2)", 0.1],
    ["2 %", 0.32 / Math.sqrt(3)],
    ["± 2 %", 0.32 / Math.sqrt(3)],
    ["2 % (95 %)", 0.32 / 1.96],
    ["0.2 dB (k=2)", 8 * (10 ** 0.01 - 1)],
  ])("%s is expanded, k = 2, as the ± of a reading is", (text, expanded) => {
    expect(of(text).uncertainty).toBeCloseTo(expanded, 12);
  });

  it("says what was taken of one without a coverage factor, which is the wider", () => {
    expect(of("2 %").cautions[0]).toMatch(/^± 2 % without a coverage factor is taken as a bound/);
    expect(of("2 % (k=2)").cautions[0]).not.toContain("bound");
    expect(of("2 %").uncertainty).toBeGreaterThan(of("2 % (k=2)").uncertainty ?? 0);
    const own = checkAgainstKnown(check).cautions[0];
    expect(own).toMatch(/^± 0.05 mm\/s rms without a coverage factor/);
  });
});
