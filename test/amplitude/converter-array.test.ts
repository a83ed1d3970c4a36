import { describe, expect, it } from "vitest";
import { convert, converter } from "../../src/index";
import { codeAndExpectedOf } from "../refusals/refusal-of";

const toMetric = converter("in/s pk", "mm/s pk");
const ramp = (length: number): Float64Array => Float64Array.from({ length }, (_, i) => i / 8);

describe("converter", () => {
  const exact = converter("mm/s pk", "in/s pk");
  const irrational = converter("um pk", "m rms");

  it("gives plain zero for zero of either sign", () => {
    for (const one of [exact, irrational]) {
      expect(Object.is(one(0), 0)).toBe(true);
      expect(Object.is(one(-0), 0)).toBe(true);
    }
  });

  it("stays what it was compiled as, whatever becomes of the options", () => {
    for (const from of ["mm/s rms", "dB re 1 nm/s"] as const) {
      const options = { at: { hertz: 25 } };
      const compiled = converter(from, "um pp", options);
      const before = compiled(95);
      options.at.hertz = 50;
      expect(compiled(95)).toBe(before);
      expect(converter(from, "um pp", options)(95)).toBeCloseTo(before / 2, 10);
    }
  });

  it("by way of a level gives the same bits as convert", () => {
    const options = { at: "1500 r/min" } as const;
    for (const [from, to] of [
      ["mm/s rms", "dB re 1 um/s2"],
      ["dB re 1 nm/s", "um pp"],
      ["dB re 1 nm/s", "dB re 1 pm"],
    ] as const) {
      const compiled = converter(from, to, options);
      for (const value of [0.1, 4.5, 95]) expect(compiled(value)).toBe(convert(value, from, to, options));
    }
  });

  it("refuses what becomes zero by rounding, or infinite", () => {
    for (const one of [exact, irrational]) expect(codeAndExpectedOf(() => one(5e-324))).toMatch(/^out-of-range/);
    for (const back of [converter("in/s pk", "mm/s pk"), converter("m rms", "um pk")]) {
      expect(codeAndExpectedOf(() => back(1e308))).toMatch(/^not-finite/);
    }
  });
});

describe("converter().array", () => {
  it.each([0, 1, 7, 8, 9, 15, 16, 17, 1000])("multiplies %i elements by the factor", (length) => {
    const source = ramp(length);
    const expected = source.map((value) => value * toMetric.factor);
    expect(toMetric.array(source)).toEqual(expected);
    const target = new Float64Array(length);
    expect(toMetric.array(source, target)).toBe(target);
    expect(target).toEqual(expected);
    expect(toMetric.array(source, source)).toBe(source);
    expect(source).toEqual(expected);
  });

  it("differs from the single call in the last bit at the most", () => {
    const back = converter("mm/s pk", "in/s pk");
    const source = ramp(4096);
    back.array(source).forEach((value, i) => {
      expect(Math.abs(value - back(source[i] as number))).toBeLessThanOrEqual(value * 2.3e-16);
    });
  });

  it.each([
    [Number.NaN, "not-a-number"],
    [Number.POSITIVE_INFINITY, "not-finite"],
    [Number.NEGATIVE_INFINITY, "not-finite"],
    [-1e-300, "negative"],
  ])("refuses %d wherever it stands, and names its place", (bad, code) => {
    for (let place = 0; place < 19; place++) {
      const source = ramp(19);
      source[place] = bad;
      const before = source.slice();
      const message = `${code}: an amplitude of zero or more at index ${place}`;
      expect(codeAndExpectedOf(() => toMetric.array(source))).toBe(message);
      expect(codeAndExpectedOf(() => toMetric.array(source, source))).toBe(message);
      expect(source, "all or nothing in place").toEqual(before);
    }
  });

  it("accepts negative zero, refuses what overflows", () => {
    expect(toMetric.array(Float64Array.of(-0, 1))).toEqual(Float64Array.of(-0, 25.4));
    expect(codeAndExpectedOf(() => toMetric.array(Float64Array.of(1, 1e308)))).toBe(
      "not-finite: a result that a number can hold at index 1",
    );
  });

  it("refuses a target of other length, of other kind, or overlapping in part", () => {
    const buffer = new Float64Array(20);
    expect(codeAndExpectedOf(() => toMetric.array(ramp(3), ramp(4)))).toMatch(/^length-mismatch/);
    expect(codeAndExpectedOf(() => toMetric.array("12" as never))).toMatch(/^wrong-type/);
    expect(codeAndExpectedOf(() => toMetric.array(ramp(2), new Int16Array(2) as never))).toMatch(/^wrong-type/);
    expect(codeAndExpectedOf(() => toMetric.array(buffer.subarray(0, 10), buffer.subarray(1, 11)))).toMatch(
      /^out-of-range/,
    );
    expect(codeAndExpectedOf(() => toMetric.array(buffer.subarray(0, 10), buffer.subarray(10, 20)))).toBe("accepted");
    expect(codeAndExpectedOf(() => toMetric.array(buffer.subarray(3, 9), buffer.subarray(3, 9)))).toBe("accepted");
  });

  it("looks at where two arrays lie, on one buffer or on two", () => {
    const buffer = new Float64Array(40);
    const other = new Float64Array(40);
    for (const [from, to] of [
      [20, 21],
      [21, 20],
      [20, 29],
      [29, 20],
    ] as const) {
      const source = buffer.subarray(from, from + 10);
      expect(codeAndExpectedOf(() => toMetric.array(source, buffer.subarray(to, to + 10)))).toMatch(/^out-of-range/);
      expect(codeAndExpectedOf(() => toMetric.array(source, other.subarray(to, to + 10)))).toBe("accepted");
    }
    expect(codeAndExpectedOf(() => toMetric.array(buffer.subarray(20, 30), buffer.subarray(10, 20)))).toBe("accepted");
    expect(codeAndExpectedOf(() => toMetric.array(buffer.subarray(20, 30), buffer.subarray(30, 40)))).toBe("accepted");
  });

  it("accepts the largest number there is", () => {
    const same = converter("m pk", "m pk");
    for (const length of [1, 8]) {
      const source = new Float64Array(length).fill(Number.MAX_VALUE);
      expect(same.array(source)).toEqual(source);
    }
  });

  it("goes through levels element by element", () => {
    const toLevel = converter("mm/s rms", "dB re 1e-9 m/s");
    expect("factor" in toLevel).toBe(false);
    expect([...toLevel.array(Float64Array.of(1e-6, 1e-3))]).toEqual([0, 60].map((level) => expect.closeTo(level, 12)));
    expect(codeAndExpectedOf(() => toLevel.array(Float64Array.of(1, 0)))).toBe(
      "not-positive: an amplitude above zero at index 1",
    );
    expect(codeAndExpectedOf(() => toLevel.array(ramp(2), ramp(3)))).toMatch(/^length-mismatch/);
  });

  it("goes from levels, between levels, and into the source itself", () => {
    const fromLevel = converter("dB re 1e-9 m/s", "mm/s rms");
    expect("factor" in fromLevel).toBe(false);
    expect(fromLevel(120)).toBeCloseTo(1, 14);
    const levels = Float64Array.of(120, 100, -20);
    const target = new Float64Array(3);
    expect(fromLevel.array(levels, target)).toBe(target);
    expect([...target]).toEqual([1, 0.1, 1e-7].map((value) => expect.closeTo(value, 14)));
    expect(fromLevel.array(levels, levels)).toBe(levels);
    expect(levels).toEqual(target);
    // 20 lg(10) = 20 dB between the references of ISO 1683 and ANSI S1.8-1969
    const between = converter("dB re ISO 1683 velocity", "dB re ANSI S1.8-1969 velocity");
    expect([...between.array(Float64Array.of(95, 0))]).toEqual([75, -20].map((level) => expect.closeTo(level, 12)));
  });

  it("names the place of a level that is refused, and leaves the target as it was", () => {
    const fromLevel = converter("dB re 1e-9 m/s", "mm/s rms");
    const levels = Float64Array.of(95, 100, Number.NaN, 100);
    const target = new Float64Array(4).fill(7);
    expect(codeAndExpectedOf(() => fromLevel.array(levels, target))).toBe("not-a-number: a level in dB at index 2");
    expect(target).toEqual(Float64Array.of(7, 7, 7, 7));
  });

  it("is frozen and says its ends in plain spelling", () => {
    const compiled = converter("µm pp", "ips pk", { at: "1500 rpm" });
    expect(Object.isFrozen(compiled)).toBe(true);
    expect([compiled.from, compiled.to]).toEqual(["um pp", "in/s pk"]);
    expect(converter("dB re FTA velocity", "mm/s rms").from).toBe("dB re 1 uin/s");
  });
});
