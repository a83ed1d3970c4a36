import { describe, expect, it } from "vitest";
import { conversionAssumes } from "../../src/amplitude/index";
import { converter } from "../../src/index";
import { classifier } from "../../src/severity/index";
import { refusalOf } from "../refusals/refusal-of";

const linear = converter("in/s pk", "mm/s pk");
const level = converter("dB re 1e-9 m/s", "mm/s rms");

describe("a batch", () => {
  it.each([[linear], [level]])("comes back as the kind it was: %#", (one) => {
    const values = Array.from({ length: 19 }, (_, i) => i + 1);
    const expected = [...one.array(Float64Array.from(values))];
    expect(one.array(values)).toEqual(expected);
    expect(one.array(Float32Array.from(values))).toEqual(Float32Array.from(expected));
    expect([...one.array(Uint8Array.from(values))]).toEqual(expected);
    expect([...one.array({ length: 2, 0: 1, 1: 2 })]).toEqual(expected.slice(0, 2));
    for (const target of [new Float64Array(19), new Float32Array(19), new Array<number>(19)]) {
      for (const source of [values, Float64Array.from(values), Float32Array.from(values)]) {
        expect(one.array(source, target)).toBe(target);
        expect([...target]).toEqual(target instanceof Float32Array ? expected.map(Math.fround) : expected);
      }
    }
    expect(values).toEqual(Array.from({ length: 19 }, (_, i) => i + 1));
    expect(one.array(values, values)).toBe(values);
    expect(values).toEqual(expected);
  });

  it("in place is converted whole or not at all", () => {
    for (const make of [Float64Array, Float32Array, Array] as (Float64ArrayConstructor | Float32ArrayConstructor)[]) {
      for (const one of [linear, level]) {
        for (let at = 0; at < 19; at++) {
          const source = make.from(Array.from({ length: 19 }, (_, i) => (i === at ? Number.NaN : i + 1)));
          const before = make.from(source as ArrayLike<number>);
          const error = refusalOf(() => one.array(source, source));
          expect(error).toMatchObject({ code: "not-a-number", parameter: "source", index: at });
          expect(source).toEqual(before);
        }
      }
    }
  });

  it("told whole: false, writes up to the one that is refused", () => {
    const source = Float64Array.of(1, 2, -1, 4);
    expect(refusalOf(() => linear.array(source, source, { whole: false })).index).toBe(2);
    expect([...source]).toEqual([25.4, 50.8, -1, 4]);
  });

  it("keeps NaN where told so, and nothing else", () => {
    for (const one of [linear, level]) {
      for (const source of [Float64Array.of(1, Number.NaN, 3), Float32Array.of(1, Number.NaN, 3), [1, Number.NaN, 3]]) {
        const kept = one.array(source, undefined, { nan: "keep" });
        expect([...kept].map(Number.isNaN)).toEqual([false, true, false]);
        expect(refusalOf(() => one.array(source, undefined, { nan: "refuse" })).index).toBe(1);
      }
      const odd = Float64Array.of(Number.NaN, Number.POSITIVE_INFINITY);
      expect(refusalOf(() => one.array(odd, undefined, { nan: "keep" })).index).toBe(1);
    }
  });

  it("refuses what a Float32Array cannot hold, an element that is no number, and options that nobody has", () => {
    expect(refusalOf(() => linear.array(Float32Array.of(1, 3e38))).code).toBe("not-finite");
    expect(refusalOf(() => linear.array([1e300], new Float32Array(1))).code).toBe("not-finite");
    expect(refusalOf(() => level.array([1000], new Float32Array(1))).code).toBe("not-finite");
    expect(refusalOf(() => linear.array([1, "2" as never]))).toMatchObject({ code: "wrong-type", index: 1 });
    const misspelt = refusalOf(() => linear.array([1], undefined, { nann: "keep" } as never));
    expect(misspelt).toMatchObject({ code: "unknown-option", option: "nann", didYouMean: ["nan"] });
    expect(refusalOf(() => linear.array([1], undefined, { nan: "skip" as never })).option).toBe("nan");
  });

  it("of zones takes the same kinds", () => {
    const judge = classifier("iso-10816-3-2009", "group 1 rigid", "mm/s rms");
    for (const values of [[1, 3, 5], Float32Array.of(1, 3, 5)]) {
      expect(judge.array(values)).toEqual(judge.array(Float64Array.of(1, 3, 5)));
    }
    expect(refusalOf(() => judge.array([1, -1]))).toMatchObject({ code: "negative", parameter: "source", index: 1 });
    const gaps = judge.array([1, Number.NaN, 9], undefined, { nan: "keep" });
    expect([...gaps]).toEqual([...judge.array([1]), 255, ...judge.array([9])]);
    expect(refusalOf(() => judge.array([1, Number.NaN, -1], undefined, { nan: "keep" })).index).toBe(2);
    expect(refusalOf(() => judge.array([1], undefined, { nan: "drop" as "keep" })).option).toBe("nan");
  });
});

describe("a converter", () => {
  it("goes the other way by the same options", () => {
    const there = converter("in/s pk", "mil pp", { at: "1500 r/min" });
    expect(there.inverse(there(0.25))).toBeCloseTo(0.25, 14);
    expect(there.inverse).toBe(there.inverse);
    expect(there.inverse.inverse).toBe(there);
    expect([there.inverse.from, there.inverse.to]).toEqual([there.to, there.from]);
    const crest = converter("g rms", "g pk", { crestFactor: 4 });
    expect(crest.inverse(crest(2))).toBe(2);
    expect(level.inverse(level(95))).toBeCloseTo(95, 10);
  });

  it("says what it assumes, as a single conversion does", () => {
    for (const [from, to, crestFactor] of [
      ["in/s pk", "mm/s pk", undefined],
      ["in/s pk", "mm/s rms", undefined],
      ["g rms", "g pk", 4],
    ] as const) {
      const one = converter(from, to as "g pk", { ...(crestFactor !== undefined && { crestFactor }) } as never);
      expect(one.assumed).toEqual(conversionAssumes(from, to, crestFactor));
    }
    expect(converter("mm/s rms", "um pp", { at: "25 Hz" }).assumed).toEqual(["one-frequency", "sine"]);
  });
});
