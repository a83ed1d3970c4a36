import fc from "fast-check";
import { convert, VeladisError } from "veladis";
import {
  asFoundAsLeft,
  bandResponse,
  cautions,
  checkAgainstKnown,
  combinedUncertainty,
  delayTest,
  linearity,
  resetPointTest,
  tripPointTest,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import hollowmere from "../../docs/examples/hollowmere.json";
import { expectAgreement } from "../references/agreement";
import {
  calls,
  combined,
  falseAccept,
  fieldCheck,
  micrometer,
  referenceFrequencies,
  wrongReference,
} from "../references/calibration";
import { practiceCheck } from "../references/common-practice";
import { bandReferences } from "../references/protection-logic";

/** The check of the invented plant: 7.3 for 8 mm/s as found, 7.9 as left, within 5 % or not. */
const { check: plant } = hollowmere;

/** Share of a normal distribution beyond z, by numerical integration. */
function beyond(z: number): number {
  let sum = 0;
  for (let x = z; x < 10; x += 1e-4) sum += Math.exp((-(x + 5e-5) * (x + 5e-5)) / 2) * 1e-4;
  return sum / Math.sqrt(2 * Math.PI);
}

describe("check against a known level", () => {
  it("common practice, no source: a device that reads high", () => {
    const { known, indicated, error, percent, decibels } = practiceCheck;
    const check = checkAgainstKnown({ known, indicated, tolerance: "10 %" });
    expect(check.error).toBeCloseTo(error, 12);
    expect(check.errorPercent).toBeCloseTo(percent, 9);
    expect(check.errorDecibels).toBeCloseTo(decibels, 2);
    expect([check.verdict, check.rule]).toEqual(["pass", "simple acceptance"]);
    expect(check.cautions).toBe(cautions);
  });

  it("the switch of the fan, 7.3 for 8 mm/s: low by 0.7 mm/s, 8.75 %", () => {
    const { known, asFound: indicated, tolerance } = plant;
    const check = checkAgainstKnown({ known, indicated, tolerance });
    expect(check.error).toBeCloseTo(-0.7, 12);
    expect(check.errorPercent).toBeCloseTo(-8.75, 9);
    expect(check.errorDecibels).toBeCloseTo(20 * Math.log10(7.3 / 8), 12);
    expect(check.verdict).toBe("fail");
  });

  it.each(calls.cases)(`${calls.id}: %s is a %s`, (deviation, call) => {
    const found = checkAgainstKnown({
      known: "100 mm/s rms",
      indicated: `${100 + deviation} mm/s rms`,
      tolerance: `${calls.limit} mm/s rms`,
      uncertainty: `${calls.guard} mm/s rms (k=2)`,
    });
    expect(found.call).toBe(call);
    expect(found.verdict).toBe(call.startsWith("conditional") ? "undecided" : call);
    expect(found.rule).toBe("guard band");
  });

  it.each(micrometer.cases)("I13, I14: a deviation of %s is accepted: %s", (deviation, accepted) => {
    const found = checkAgainstKnown({
      known: "1 mm pp",
      indicated: `${1 + deviation} mm pp`,
      tolerance: `${micrometer.tolerance} mm pp`,
      uncertainty: `${micrometer.uncertainty} mm pp (k=2)`,
    });
    expect(found.acceptance.above).toBeCloseTo(micrometer.acceptance, 12);
    expect(found.verdict === "pass").toBe(accepted);
  });

  it("I18 (ours): 9.6 for 10 mm/s, 5 % and 3 %", () => {
    const { errorPercent, acceptance, call, provenance: _, ...check } = fieldCheck;
    const found = checkAgainstKnown(check);
    expect(found.errorPercent).toBeCloseTo(errorPercent, 9);
    expect(found.acceptance.below).toBeCloseTo(acceptance, 12);
    expect(found.call).toBe(call);
  });

  it("I10, I11: a reading at the acceptance limit is wrong half the time without, 2.28 % with a guard band of 2 u", () => {
    expect(100 * beyond(0)).toBeCloseTo(50, 3);
    expect(100 * beyond(2)).toBeCloseTo(falseAccept.exact, 2);
    expect(100 * beyond(2)).toBeLessThan(falseAccept.most);
  });

  it("takes tolerances in percent, in decibels and as an amount, and the indicated level in any unit", () => {
    const known = "10 mm/s rms at 50 Hz";
    const at = (indicated: string, tolerance: string) => checkAgainstKnown({ known, indicated, tolerance }).verdict;
    expect(at("10.5 mm/s rms", "5 %")).toBe("pass");
    expect(at("10.51 mm/s rms", "5 %")).toBe("fail");
    expect(at("10.59 mm/s rms", "0.5 dB")).toBe("pass");
    expect(at("9.43 mm/s rms", "0.5 dB")).toBe("fail");
    expect(at("9.45 mm/s rms", "0.5 dB")).toBe("pass");
    expect(at("0.57 in/s pk", "0.6 mm/s rms")).toBe("pass");
    expect(checkAgainstKnown({ known, indicated: "0.57 in/s pk", tolerance: "5 %" }).assumed).toEqual(["sine"]);
    expect(at("0.32 g rms", "1 %")).toBe("pass");
  });

  it("never passes what simple acceptance fails, and a larger uncertainty decides less", () => {
    const order = { pass: 0, "conditional pass": 1, "conditional fail": 2, fail: 3 } as const;
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 12, noNaN: true }),
        fc.double({ min: 0.1, max: 15, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (value, tolerance, uncertainty) => {
          const base = {
            known: "10 mm/s rms",
            indicated: `${value.toFixed(6)} mm/s rms`,
            tolerance: `${tolerance.toFixed(4)} %`,
          };
          const simple = checkAgainstKnown(base);
          const guarded = checkAgainstKnown({ ...base, uncertainty: `${uncertainty.toFixed(4)} %` });
          if (guarded.verdict === "pass") expect(simple.verdict).toBe("pass");
          if (guarded.verdict === "fail") expect(simple.verdict).toBe("fail");
          expect(order[guarded.call] <= 1).toBe(simple.verdict === "pass");
        },
      ),
    );
  });

  it("a device that shows nothing fails, without a level in decibels", () => {
    const found = checkAgainstKnown({ known: "10 mm/s rms", indicated: "0 mm/s rms", tolerance: "10 %" });
    expect(found).toMatchObject({ verdict: "fail", errorDecibels: null, errorPercent: -100 });
  });

  it.each([
    [{ known: "0 mm/s rms" }, "not-positive"],
    [{ known: "10 mm/s" }, "missing-detector"],
    [{ tolerance: 5 }, "missing-unit"],
    [{ tolerance: "5" }, "missing-unit"],
    [{ tolerance: undefined }, "missing-option"],
    [{ tolerance: "-5 %" }, "negative"],
    [{ rule: "guard band" }, "missing-fact"],
    [{ rule: "best guess" }, "unknown-option"],
    [{ indicated: "5 um pp" }, "missing-frequency"],
  ])("refuses %j", (more, code) => {
    const check = { known: "10 mm/s rms", indicated: "10 mm/s rms", tolerance: "5 %", ...more };
    expect(() => checkAgainstKnown(check as never)).toThrow(expect.objectContaining({ code }));
  });
});

describe("the decision on a check", () => {
  const known = "10 mm/s rms";
  const check = (indicated: number, more: object) =>
    checkAgainstKnown({ known, indicated: `${indicated} mm/s rms`, tolerance: "5 %", ...more });

  it("leaves a stated uncertainty out of simple acceptance, which needs none", () => {
    const simple = { rule: "simple acceptance" } as const;
    expect(check(10.45, simple)).toMatchObject({ call: "pass", uncertainty: null, rule: "simple acceptance" });
    const beside = check(10.45, { ...simple, uncertainty: "3 % (k=2)" });
    expect(beside).toMatchObject({ call: "pass", rule: "simple acceptance" });
    expect(beside.uncertainty).toBeCloseTo(0.3, 12);
    expect(beside.acceptance).toEqual({ below: 0.5, above: 0.5 });
    expect(check(10.51, { ...simple, uncertainty: "3 % (k=2)" }).call).toBe("fail");
    expect(check(10.45, { rule: "guard band", uncertainty: "3 % (k=2)" }).call).toBe("conditional pass");
  });

  it("passes no error but none where the guard band takes the whole tolerance, and nothing where it takes more", () => {
    expect(check(10, { uncertainty: "5 % (k=2)" })).toMatchObject({ call: "pass", acceptance: { below: 0, above: 0 } });
    expect(check(10.01, { uncertainty: "5 % (k=2)" }).call).toBe("conditional pass");
    expect(check(10, { uncertainty: "6 % (k=2)" })).toMatchObject({
      call: "conditional pass",
      acceptance: { above: 0 },
    });
  });

  it("gives an error at its limit to the better side, however large the numbers", () => {
    // 105000.945 - 100000.9 is a hair more than 5000.045 in binary numbers
    for (const [level, indicated] of [
      ["100000.9", "105000.945"],
      ["1000000.3", "1050000.315"],
      ["0.3", "0.315"],
      ["0.003", "0.00285"],
    ]) {
      const found = checkAgainstKnown({
        known: `${level} mm/s rms`,
        indicated: `${indicated} mm/s rms`,
        tolerance: "5 %",
      });
      expect(found.call).toBe("pass");
    }
  });

  it("takes decibels as a ratio both ways", () => {
    // 6 dB is a ratio of 1.99526, by 20 lg: ISO 1683, from memory
    const ratio = 10 ** 0.3;
    const { acceptance, tolerance } = checkAgainstKnown({ known, indicated: known, tolerance: "6 dB" });
    expect(acceptance.below).toBeCloseTo(10 - 10 / ratio, 12);
    expect(acceptance.above).toBeCloseTo(10 * ratio - 10, 12);
    expect(tolerance).toBe(acceptance.above);
    for (const odd of ["6 dB re 1 um/s", "6 mdB", "6 dBx"]) {
      expect(() => check(10, { tolerance: odd })).toThrow(VeladisError);
    }
  });
});

describe("as found and as left", () => {
  it("tells what the adjustment came to, if it showed anything", () => {
    const pair = (asFound: string) =>
      asFoundAsLeft({ known: "10 mm/s rms", tolerance: "5 %", asFound, asLeft: "10 mm/s rms" });
    expect(pair("8 mm/s rms").adjustment).toBeCloseTo(1.25, 12);
    expect(pair("0 mm/s rms").adjustment).toBeNull();
    const unsure = asFoundAsLeft({
      known: "10 mm/s rms",
      tolerance: "5 %",
      uncertainty: "3 % (k=2)",
      asFound: "10.4 mm/s rms",
      asLeft: "10 mm/s rms",
    });
    expect(unsure.meaning).toMatch(/neither within nor out of tolerance/);
  });

  it.each([
    [plant.asFound, "fail", /in doubt/],
    ["7.7 mm/s rms", "pass", /stand/],
  ] as const)("%s", (asFound, verdict, meaning) => {
    const { known, tolerance, asLeft } = plant;
    const pair = asFoundAsLeft({ known, tolerance, asFound, asLeft });
    expect([pair.asFound.verdict, pair.asLeft.verdict]).toEqual([verdict, "pass"]);
    expect(pair.meaning).toMatch(meaning);
  });
});

describe("linearity", () => {
  const points = (slope: number, offset: number, bend = 0) =>
    [1, 2, 5, 10].map((level) => ({
      known: `${level} mm/s rms`,
      indicated: `${slope * level + offset + (level === 5 ? bend : 0)} mm/s rms`,
    }));

  it("finds slope and offset of a straight device", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (slope, offset) => {
          const found = linearity(points(slope, offset), { tolerance: "1 %" });
          expect(found.slope).toBeCloseTo(slope, 9);
          expect(found.offset).toBeCloseTo(offset, 9);
          expect(found.nonLinearity).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it("agrees with a least-squares line worked by hand", () => {
    // known 1 2 3, indicated 1 2 6: slope 2.5, offset -2, off the line 0.5 -1 0.5
    const found = linearity(
      [1, 2, 3].map((x, i) => ({ known: `${x} g pk`, indicated: `${[1, 2, 6][i]} g pk` })),
      { tolerance: "5 %" },
    );
    expect([found.slope, found.offset]).toEqual([expect.closeTo(2.5, 12), expect.closeTo(-2, 12)]);
    expect(found.points.map(({ offLine }) => Number(offLine.toFixed(9)))).toEqual([0.5, -1, 0.5]);
    expect(found.worst.known.value).toBe(3);
    expect([found.verdict, found.nonLinearity]).toEqual(["fail", expect.closeTo(100 / 3, 9)]);
  });

  it("names the worst point and the worst verdict, wherever they stand", () => {
    const of = (...indicated: number[]) =>
      linearity(
        indicated.map((level, i) => ({ known: `${i + 1} g pk`, indicated: `${level} g pk` })),
        { tolerance: "5 %", uncertainty: "2 % (k=2)" },
      );
    expect(of(1.2, 2, 3)).toMatchObject({ worst: { known: { value: 1 } }, verdict: "fail" });
    expect(of(1, 2.4, 3)).toMatchObject({ worst: { known: { value: 2 } }, verdict: "fail" });
    expect(of(1, 2, 3.12)).toMatchObject({ worst: { known: { value: 3 } }, verdict: "undecided" });
    expect(of(1.04, 2)).toMatchObject({ worst: { known: { value: 1 } }, verdict: "undecided" });
    expect(of(1.25, 2.5).worst.known.value).toBe(1);
    expect(of(1, 2)).toMatchObject({ slope: 1, offset: 0, nonLinearity: 0, verdict: "pass" });
  });

  it("needs two different levels of one quantity", () => {
    expect(() => linearity(points(1, 0).slice(0, 1), { tolerance: "1 %" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    const mixed = [...points(1, 0), { known: "1 g pk", indicated: "1 g pk" }];
    expect(() => linearity(mixed, { tolerance: "1 %" })).toThrow(expect.objectContaining({ code: "wrong-quantity" }));
  });
});

describe("switching points and delay", () => {
  const threshold = "0.35 in/s pk";
  const rest = { tolerance: "5 %" };
  const steps = (levels: readonly number[], set: readonly boolean[]) =>
    levels.map((level, i) => ({ level: `${level} in/s pk`, set: set[i] as boolean }));

  it("finds the trip point between two steps, and the reset point on the way down", () => {
    const rising = tripPointTest(threshold, steps([0.33, 0.34, 0.36], [false, false, true]), rest);
    expect(rising.between).toEqual([0.34, 0.36]);
    expect(rising.error).toBeCloseTo(0, 12);
    // 90 % of 0.35 in/s
    const falling = resetPointTest("0.315 in/s pk", steps([0.33, 0.32, 0.31], [true, true, false]), rest);
    expect(falling.between).toEqual([0.32, 0.31]);
    expect(falling.verdict).toBe("pass");
    const late = tripPointTest(threshold, steps([0.34, 0.37, 0.4], [false, false, true]), rest);
    expect(late.verdict).toBe("fail");
  });

  it("takes steps in another quantity at the frequency of the setting", () => {
    const at = { at: "1180 r/min" } as const;
    const microns = (level: number) => ({
      level: `${convert(level, "in/s pk", "um pp", at)} um pp`,
      set: level > 0.35,
    });
    const found = tripPointTest("0.35 in/s pk at 1180 r/min", [0.34, 0.36].map(microns), rest);
    expect(found.between).toEqual([expect.closeTo(0.34, 9), expect.closeTo(0.36, 9)]);
    expect(found.as).toBe("in/s pk");
    expect(() => tripPointTest(threshold, [0.34, 0.36].map(microns), rest)).toThrow(
      expect.objectContaining({ code: "missing-frequency" }),
    );
  });

  it("refuses a level that stands, up and down", () => {
    const code = expect.objectContaining({ code: "out-of-range" });
    expect(() => tripPointTest(threshold, steps([0.3, 0.3, 0.4], [false, false, true]), rest)).toThrow(code);
    expect(() => resetPointTest(threshold, steps([0.4, 0.4, 0.3], [true, true, false]), rest)).toThrow(code);
  });

  it("refuses steps without a change, in disorder, or that change back", () => {
    for (const [levels, set] of [
      [
        [0.3, 0.4],
        [false, false],
      ],
      [
        [0.4, 0.3],
        [false, true],
      ],
      [
        [0.3, 0.4, 0.5],
        [false, true, false],
      ],
      [
        [0.3, 0.4],
        [true, true],
      ],
    ] as const) {
      expect(() => tripPointTest(threshold, steps(levels, set), rest)).toThrow(
        expect.objectContaining({ code: "out-of-range" }),
      );
    }
  });

  it("holds measured delays against the set one", () => {
    expect(delayTest(8, [8.4], "5 %").verdict).toBe("pass");
    expect(delayTest(8, [8.41], "5 %").verdict).toBe("fail");
    const measured = [8.1, 7.6, 8.3];
    const found = delayTest(8, measured, "5 %");
    expect(found).toMatchObject({ set: 8, measured, verdict: "pass" });
    expect([found.worstError, found.worstPercent, found.tolerance].map((one) => Number(one?.toFixed(9)))).toEqual([
      -0.4, -5, 0.4,
    ]);
    // of two as far off, the first
    expect(delayTest(8, [8.25, 7.75], "5 %").worstError).toBe(0.25);
    expect(delayTest(8, [8.2, 7.9], "5 %").worstError).toBeCloseTo(0.2, 9);
    expect(delayTest(0, [0.1], "0.1 s")).toMatchObject({ verdict: "pass", worstPercent: null });
    expect(() => delayTest(8, [8], "5")).toThrow(expect.objectContaining({ code: "missing-unit" }));
    expect(() => delayTest(8, [], "5 %")).toThrow(expect.objectContaining({ code: "missing-option" }));
  });
});

describe("uncertainty, band and reference frequencies", () => {
  it("I17 (memory): root sum of squares", () => {
    expectAgreement(combined, combinedUncertainty(["3 % (k=2)", "5 % (k=2)"]));
    // arithmetic: 0.1 of 5 is 2 %; 0.5 dB upwards are 10^(0.5/20) - 1 = 5.925 %
    expect(combinedUncertainty(["0.1 mm/s rms (k=2)", "1.5 % (k=2)"], "5 mm/s rms")).toBeCloseTo(2.5, 12);
    expect(combinedUncertainty(["0.005 in/s pk (k=2)"], "0.25 in/s pk")).toBeCloseTo(2, 12);
    expect(combinedUncertainty(["0.5 dB (k=2)"])).toBeCloseTo(5.9254, 4);
    expect(combinedUncertainty(["3 % (k=3)", "± 1.7320508 %"])).toBeCloseTo(2 * Math.SQRT2, 6);
    expect(combinedUncertainty(["2 % (k=2)"])).toBe(2);
    // JCGM 100:2008, 4.3.7 (memory): a bound without a coverage factor is divided by root 3, with ± before it or without
    expect(combinedUncertainty(["3 %"])).toBeCloseTo((2 * 3) / Math.sqrt(3), 12);
    expect(combinedUncertainty(["3 %", "4 % (k=2)"])).toBe(combinedUncertainty(["± 3 %", "4 % (k=2)"]));
    expect(() => combinedUncertainty(["3"])).toThrow(expect.objectContaining({ code: "missing-unit" }));
  });

  it("H15 to H17: ISO 2954 band in decibels", () => {
    const decibels = (share: number) => 20 * Math.log10(share);
    const band = { lowest: "10 Hz", highest: "1000 Hz" } as const;
    expectAgreement(bandReferences.upper, decibels(1.1));
    expectAgreement(bandReferences.lower, decibels(0.9));
    expectAgreement(bandReferences.edge, decibels(bandResponse("10 Hz", { ...band, highest: "100 kHz" })));
    expectAgreement(bandReferences.inside, decibels(bandResponse("12.6 Hz", band)));
    expect(bandResponse("1000 Hz", band)).toBeCloseTo(Math.SQRT1_2, 6);
    expect(() => bandResponse("10 Hz", { lowest: "1 kHz", highest: "10 Hz" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => bandResponse("10 Hz", { lowest: "10 Hz", highest: "10 Hz" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });

  it.each(referenceFrequencies.map((one, i) => [one, [1000, 500, 100][i] as number] as const))("%o", (one, radians) => {
    expectAgreement(one, radians / (2 * Math.PI));
  });

  it("I03 (ours): 160 Hz taken for 159.155 Hz", () => {
    const { hertz, exact, velocity, displacement } = wrongReference;
    const error = (to: "mm/s pk" | "um pk") =>
      100 * (convert(10, "m/s2 pk", to, { at: { hertz } }) / convert(10, "m/s2 pk", to, { at: { hertz: exact } }) - 1);
    expect(error("mm/s pk")).toBeCloseTo(velocity, 3);
    expect(error("um pk")).toBeCloseTo(displacement, 2);
  });
});
