import fc from "fast-check";
import { convertAmplitude } from "veladis";
import { currentLoop } from "veladis/sensor";
import { formatUncertain, parseUncertain, ratioOf, uncertaintyOf, withUncertainty } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { madeOf } from "../../src/reading/index";

describe("a reading with its uncertainty, in words", () => {
  it.each([
    ["4.9 ± 0.3 mm/s rms (k=2)", 0.15],
    ["4.9 +/- 0.3 mm/s rms (k=2)", 0.15],
    ["4.9±0.3mm/s rms (k = 2)", 0.15],
    ["4.9 ± 0.3 (k=2) mm/s rms", 0.15],
    ["4.9 mm/s rms ± 0.3 (k=2)", 0.15],
    ["4.9 mm/s rms ± 0.3 mm/s rms (k=2)", 0.15],
    ["4.9 mm/s rms ± 0.03 cm/s rms (k=2)", 0.15],
    ["5 ± 6 % mm/s rms (k=2)", 0.15],
    ["5 mm/s rms ± 6 % (k=2)", 0.15],
    ["4.9 ± 0.3 mm/s rms k=2", 0.15],
    ["4.9 ± 0.3 mm/s rms, k = 2", 0.15],
    ["4.9 ± 0.3 mm/s rms (2σ)", 0.15],
    ["4.9 ± 0.3 mm/s rms (2 sigma)", 0.15],
    ["4.9 ± 0.15 mm/s rms (1 sigma)", 0.15],
    ["4.9 ± 0.3 mm/s rms (k=2, 95 %)", 0.15],
    // 95 % of a bell lie within 1.96 standard deviations of it (common practice, no source)
    ["4.9 ± 0.3 mm/s rms (95 %)", 0.3 / 1.96],
    ["4.9 ± 0.3 mm/s rms (95%)", 0.3 / 1.96],
    ["4.9 ± 0.3 mm/s rms", 0.3 / Math.sqrt(3)],
    ["95 ± 0.5 dB re 1e-9 m/s (k=2)", 0.25],
    ["95 dB re 1e-9 m/s ± 0.5 dB (k=2)", 0.25],
    ["95 dB re 1e-9 m/s ± 0.5 (k=2)", 0.25],
    ["2 mm/s rms ± 0 %", 0],
    ["2 mm/s rms", 0],
  ])("%s has a standard uncertainty of %f", (text, standard) => {
    expect(uncertaintyOf(text).standard).toBeCloseTo(standard, 12);
  });

  it("in decibels of a linear reading is a share of it", () => {
    const { standard, relative } = uncertaintyOf("5 ± 0.2 dB mm/s rms (k=2)");
    expect(relative).toBeCloseTo((0.1 * Math.LN10) / 20, 12);
    expect(standard).toBeCloseTo(0.0576, 4);
  });

  it("says of a bare bound that its chances were taken as equal", () => {
    expect(parseUncertain("4.9 ± 0.3 mm/s rms").history?.[0]?.note).toBe(
      "± 0.3 mm/s rms, taken as a bound with equal chance within",
    );
    expect(parseUncertain("4.9 ± 0.3 mm/s rms (k=2)").history?.[0]?.note).toBe("± 0.3 mm/s rms (k=2)");
  });

  it.each([
    ["25 ± 0.5 Hz (k=1)", 0.5],
    ["1500 ± 30 r/min (k=1)", 0.5],
    ["1500 r/min ± 30 r/min (k=1)", 0.5],
    ["1500 r/min ± 0.5 Hz (k=1)", 0.5],
    ["1500 r/min ± 2 % (k=1)", 0.5],
    ["2x 1500 r/min ± 2 % (k=1)", 1],
  ])("may have a frequency of %s", (at, standard) => {
    const step = parseUncertain(`4.9 ± 0.1 mm/s rms at ${at}`).history?.[0];
    expect(step?.hertzUncertainty?.standard).toBeCloseTo(standard, 12);
  });

  it("of an order with an amount, which may mean the speed or the order, is refused", () => {
    for (const at of ["2x 1500 r/min ± 10 r/min", "2x 1500 r/min ± 1 Hz", "2x 1500 r/min ± 10"]) {
      expect(() => parseUncertain(`4.9 mm/s rms at ${at}`)).toThrow(/tolerance of an order of a speed in %/);
    }
  });
});

describe("one input", () => {
  const reading = parseUncertain("4.9 ± 0.3 mm/s rms (k=2)");
  const difference = (one: typeof reading, other: typeof reading) =>
    madeOf([one, other], { does: "difference", value: one.value - other.value, type: "mm/s rms" }) as never;

  it("taken off itself leaves nothing uncertain", () => {
    const { value, standard, expanded, interval } = uncertaintyOf(difference(reading, reading));
    expect([value, standard, expanded, ...interval]).toEqual([0, 0, 0, 0, 0]);
    const drawn = uncertaintyOf(difference(reading, reading), { method: "Monte Carlo", draws: 1000 });
    expect([drawn.standard, ...drawn.interval]).toEqual([0, 0, 0]);
  });

  it("stays one by way of other units, and two readings of the same words are two", () => {
    const there = convertAmplitude(convertAmplitude(reading, "in/s pk"), "mm/s rms");
    expect(uncertaintyOf(difference(reading, there)).standard).toBeLessThan(1e-15);
    const other = parseUncertain("4.9 ± 0.3 mm/s rms (k=2)");
    expect(uncertaintyOf(difference(reading, other), { method: "first order" }).standard).toBeCloseTo(
      0.15 * Math.SQRT2,
      12,
    );
  });

  it("over itself is 1 and certain", () => {
    expect(ratioOf(reading, reading).value).toBe(1);
    expect(uncertaintyOf(ratioOf(reading, reading)).standard).toBeLessThan(1e-15);
  });
});

describe("what is written is read back", () => {
  it.each([
    "4.90 ± 0.30 mm/s rms (k=2)",
    "0.250 ± 0.013 in/s pk (k=2)",
    "95.00 ± 0.58 dB re 1e-9 m/s (k=2)",
    "1.000e-120 ± 1.0e-122 m rms (k=2)",
    "4900 ± 120 nm/s rms (k=2)",
    "124000 ± 12000 nm/s rms (k=2)",
    "2.22e7 ± 1.0e6 um pp (k=2)",
    "1.00e7 ± 1.0e6 um pp (k=2)",
    "22230016.40 ± 0.30 um pp (k=2)",
    "1.2340e20 ± 1.1e17 um pp (k=2)",
    "4.9000e-11 ± 1.2e-14 m rms (k=2)",
    "-6.00 ± 0.50 dB re 1e-9 m/s (k=2)",
  ])("%s", (text) => {
    expect(formatUncertain(text)).toBe(text);
  });

  // two digits of an uncertainty and the value to the same place: JCGM 100:2008, 7.2.6
  it("over all sizes, with two digits of the uncertainty", () => {
    const size = fc.double({ min: -12, max: 12, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: -12, max: -1.1, noNaN: true }), (power, share) => {
        const value = 10 ** power;
        const expanded = value * 10 ** share;
        const text = formatUncertain(`${value} ± ${expanded} mm/s rms (k=2)`);
        expect(text.length).toBeLessThan(50);
        expect(formatUncertain(text)).toBe(text);
        const back = uncertaintyOf(text);
        expect(Math.abs(back.expanded - expanded)).toBeLessThanOrEqual(0.0501 * expanded);
        expect(Math.abs(back.value - value)).toBeLessThanOrEqual(0.0501 * expanded + 1e-15 * value);
        const [, digits = ""] = /± ([\d.]+)/.exec(text) ?? [];
        // a zero at the end of a whole number says nothing
        expect(digits.replace(/^0\.0*|\./g, "").replace(/(?<=^\d\d)0+$/, "")).toMatch(/^\d\d$/);
      }),
    );
  });

  it("an uncertainty next to nothing takes no hundred digits", () => {
    expect(formatUncertain("4.9 ± 5e-324 mm/s rms")).toMatch(/^4\.9e0 ± \S+e-32[34] mm\/s rms \(k=2\)$/);
    expect(uncertaintyOf(formatUncertain("4.9 ± 5e-324 mm/s rms")).value).toBe(4.9);
  });

  it("a reading survives JSON with all it is known by", () => {
    const reading = convertAmplitude(
      withUncertainty("4.9 ± 0.3 mm/s rms at 25 ± 0.5 Hz", "± 5 % (k=2)", "sensitivity of the sensor"),
      "um pp",
    );
    const back = JSON.parse(JSON.stringify(reading));
    expect(uncertaintyOf(back)).toEqual(uncertaintyOf(reading));
    expect(formatUncertain(back)).toBe(formatUncertain(reading));
    expect(uncertaintyOf(convertAmplitude(back, "mil pp")).relative).toBeCloseTo(
      uncertaintyOf(reading).relative as number,
      12,
    );
  });

  it("a clipped reading says so", () => {
    const clipped = currentLoop("0 to 16 mm/s rms").reading(20.9);
    expect(formatUncertain(withUncertainty(clipped, "± 2 % (k=2)", "loop"))).toBe(
      "16.50 ± 0.33 mm/s rms (k=2) (above range)",
    );
    expect(formatUncertain(clipped)).toBe("16.5 mm/s rms (above range)");
  });
});

describe("what reaches zero", () => {
  it("is refused as a divisor and as a level, by drawn inputs", () => {
    expect(() => uncertaintyOf(ratioOf("5 ± 1 mm/s rms", "2 ± 2 mm/s rms (k=1)"))).toThrow(
      /leave a reading above zero/,
    );
    expect(() => uncertaintyOf(convertAmplitude(parseUncertain("5 ± 5 mm/s rms (k=1)"), "dB re 1 nm/s"))).toThrow(
      /leave a reading above zero/,
    );
  });

  it("leaves a share of a difference below zero where its inputs are", () => {
    const [x, y] = [parseUncertain("5 ± 2 mm/s rms (k=1)"), parseUncertain("4 ± 2 mm/s rms (k=1)")];
    const difference = madeOf([x, y], { does: "difference", value: 1, type: "mm/s rms" });
    const amplitude = { ...x, value: 1, ...difference };
    const answer = uncertaintyOf(withUncertainty(amplitude, "± 10 % (k=1)", "sensor"));
    expect(answer.method).toBe("Monte Carlo");
    // about root 8, and the mean of a difference
    expect(Math.abs(answer.standard - Math.sqrt(8))).toBeLessThan(0.06);
    expect(Math.abs((answer.mean as number) - 1)).toBeLessThan(0.05);
  });

  it("keeps numbers that no square of can be held", () => {
    for (const text of ["1e-200 ± 1e-201 m rms (k=1)", "1e200 ± 1e199 m rms (k=1)"]) {
      expect(uncertaintyOf(text).relative).toBeCloseTo(0.1, 2);
      expect(uncertaintyOf(text, { method: "first order" }).relative).toBeCloseTo(0.1, 12);
    }
  });
});

describe("the method", () => {
  it("is first order up to 10 % and for known divisors, else Monte Carlo by a stated seed and count", () => {
    expect(uncertaintyOf("5 ± 0.5 mm/s rms (k=2)").method).toBe("first order");
    const { method, draws, seed, history } = uncertaintyOf("5 ± 0.51 mm/s rms (k=2)");
    expect([method, draws, seed]).toEqual(["Monte Carlo", 200_000, 1]);
    expect(history.at(-1)?.note).toBe("standard uncertainty, Monte Carlo, 200000 draws, seed 1");
    expect(history.at(-1)?.assumed).toEqual(["independent"]);
    expect(uncertaintyOf(ratioOf("5 mm/s rms", "2 ± 4 % mm/s rms (k=1)")).method).toBe("first order");
    expect(uncertaintyOf(ratioOf("5 mm/s rms", "2 ± 4.5 % mm/s rms (k=1)")).method).toBe("Monte Carlo");
  });

  it("gives the same draws for the same seed", () => {
    const of = (seed: number) => uncertaintyOf("5 ± 2 mm/s rms (k=2)", { seed, draws: 5000 });
    expect(of(3)).toEqual(of(3));
    expect(of(3).standard).not.toBe(of(4).standard);
  });
});

describe("a 95 % interval, as a skewed answer is written", () => {
  it.each(["4.9 ± 4.9 mm/s rms", "4.9 ± 4 mm/s rms (k=1)", "10 ± 9 mm/s rms (k=1) at 25 Hz", "2 ± 2 um pp"])(
    "of %s is read back, and known no better than it was",
    (text) => {
      const written = formatUncertain(text);
      expect(written).toContain("95 % within");
      const [before, after] = [uncertaintyOf(text), uncertaintyOf(written)];
      expect(after.value).toBeCloseTo(before.value, 2);
      expect(after.type).toBe(before.type);
      // an end is written in three digits
      expect(after.standard).toBeGreaterThan(0.99 * before.standard);
      expect(after.interval[1]).toBeGreaterThan(0.99 * before.interval[1]);
    },
  );

  it("is read within a line to the types behind it", () => {
    const { standard, parts } = uncertaintyOf("4.90 mm/s rms, 95 % within 0.248 to 9.56");
    // of a bound a with equal chance within, 95 % lie within 0.95 a, and u is a / root 3
    expect(standard).toBeCloseTo(4.9 / Math.sqrt(3), 1);
    expect(parts.map(({ stated }) => stated)).toEqual(["95 % within 0.248 to 9.56"]);
  });
});

describe("the parts of an answer", () => {
  it("have a number behind their name where two have one name", () => {
    const one = convertAmplitude(parseUncertain("4.9 ± 0.3 mm/s rms at 40 ± 1 Hz"), "um rms");
    const other = convertAmplitude(parseUncertain("4.9 ± 0.2 mm/s rms at 40 ± 2 Hz"), "um rms");
    const sum = madeOf([one, other], { does: "sum", value: one.value + other.value, type: "um rms" }) as never;
    const names = uncertaintyOf(sum, { method: "first order" }).parts.map(({ name }) => name);
    expect([...names].sort()).toEqual(["4.9 mm/s rms (1)", "4.9 mm/s rms (2)", "40 Hz (1)", "40 Hz (2)"]);
  });
});
