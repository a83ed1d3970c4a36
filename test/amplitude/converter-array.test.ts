import { describe, expect, it } from "vitest";
import { converter, VeladisError } from "../../src/index";

const codeOf = (act: () => unknown): string => {
  try {
    act();
  } catch (error) {
    if (error instanceof VeladisError) return `${error.code}: ${error.expected}`;
    throw error;
  }
  return "accepted";
};

const toMetric = converter("in/s pk", "mm/s pk");
const ramp = (length: number): Float64Array => Float64Array.from({ length }, (_, i) => i / 8);

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
      const half = source.map((value, i) => (i < place ? value * toMetric.factor : value));
      const message = `${code}: an amplitude of zero or more at index ${place}`;
      expect(codeOf(() => toMetric.array(source))).toBe(message);
      expect(codeOf(() => toMetric.array(source, source))).toBe(message);
      expect(source, "converted before the refused one, untouched from there").toEqual(half);
    }
  });

  it("accepts negative zero, refuses what overflows", () => {
    expect(toMetric.array(Float64Array.of(-0, 1))).toEqual(Float64Array.of(-0, 25.4));
    expect(codeOf(() => toMetric.array(Float64Array.of(1, 1e308)))).toBe(
      "not-finite: a result that a number can hold at index 1",
    );
  });

  it("refuses a destination of other length, of other kind, or overlapping in part", () => {
    const buffer = new Float64Array(20);
    expect(codeOf(() => toMetric.array(ramp(3), ramp(4)))).toMatch(/^length-mismatch/);
    expect(codeOf(() => toMetric.array([1, 2] as unknown as Float64Array))).toMatch(/^wrong-type/);
    expect(codeOf(() => toMetric.array(ramp(2), new Float32Array(2) as unknown as Float64Array))).toMatch(
      /^wrong-type/,
    );
    expect(codeOf(() => toMetric.array(buffer.subarray(0, 10), buffer.subarray(1, 11)))).toMatch(/^out-of-range/);
    expect(codeOf(() => toMetric.array(buffer.subarray(0, 10), buffer.subarray(10, 20)))).toBe("accepted");
    expect(codeOf(() => toMetric.array(buffer.subarray(3, 9), buffer.subarray(3, 9)))).toBe("accepted");
  });

  it("goes through levels element by element", () => {
    const toLevel = converter("mm/s rms", "dB re 1e-9 m/s");
    expect("factor" in toLevel).toBe(false);
    expect([...toLevel.array(Float64Array.of(1e-6, 1e-3))]).toEqual([0, 60].map((level) => expect.closeTo(level, 12)));
    expect(codeOf(() => toLevel.array(Float64Array.of(1, 0)))).toBe(
      "not-positive: an amplitude above zero, since zero has no level in dB at index 1",
    );
    expect(codeOf(() => toLevel.array(ramp(2), ramp(3)))).toMatch(/^length-mismatch/);
  });

  it("is frozen and says its ends in plain spelling", () => {
    const compiled = converter("µm pp", "ips pk", { at: "1500 rpm" });
    expect(Object.isFrozen(compiled)).toBe(true);
    expect([compiled.from, compiled.to]).toEqual(["um pp", "in/s pk"]);
    expect(converter("dB re FTA velocity", "mm/s rms").from).toBe("dB re 1 uin/s");
  });
});
