import { VeladisError } from "veladis";
import { classifier } from "veladis/severity";
import { describe, expect, it } from "vitest";

describe("a compiled classifier", () => {
  const judge = classifier("iso-10816-3-2009", "group 1 rigid", "in/s pk", { at: "10 Hz" });

  it("takes the lowest limit of the criteria that apply", () => {
    // at 10 Hz the displacement limits govern: 57 um RMS is 3.58 mm/s RMS, below 4.5
    expect(judge.limits[1]).toBeCloseTo((57e-3 * 2 * Math.PI * 10 * Math.SQRT2) / 25.4, 9);
    expect({ ...judge }).toMatchObject({
      from: "in/s pk",
      scheme: "iso-10816-3-2009",
      verified: false,
      assumedFacts: [],
    });
    expect([...judge.assumed].sort()).toEqual(["one-frequency", "sine"]);
    expect(classifier("iso-10816-3-2009", "group 1 rigid", "in/s pk").verified).toBe(true);
  });

  it("judges arrays, into a new one or a given one", () => {
    const few = classifier("iso-10816-3-2009", "group 1 rigid", "mm/s rms");
    const zones = new Uint8Array(5);
    expect(few.array(Float64Array.of(0, 2.3, 2.4, 7.1, 8), zones)).toBe(zones);
    expect([...zones]).toEqual([0, 0, 1, 2, 3]);
    const many = classifier("iso-10816-6-1995-grades", "reciprocating engine 500 kW", "mm/s rms");
    const values = Float64Array.of(0, 1.12, 1.13, 4.4, 27, 112, 120);
    expect([...many.array(values)]).toEqual([0, 0, 1, 3, 7, 10, 11]);
    expect([...many.array(values)].map((at) => many.zones[at])).toEqual([...values].map((value) => many(value)));
  });

  it("judges levels, also below zero", () => {
    const level = classifier("iso-10816-3-2009", "group 1 rigid", "dB re 1 mm/s");
    expect(level(-20)).toBe("A");
    expect(level(20 * Math.log10(4.5))).toBe("B");
    expect(level(20 * Math.log10(4.51))).toBe("C");
    expect(() => level(Number.NaN)).toThrow(VeladisError);
  });

  it("refuses what is no reading and arrays that do not fit", () => {
    expect(() => judge(-1)).toThrow(/zero or more/);
    expect(() => judge("1" as never)).toThrow(VeladisError);
    expect(() => judge(null as never)).toThrow(VeladisError);
    expect(() => judge.array(Float64Array.of(1, Number.NaN))).toThrow(/index 1/);
    expect(() => judge.array(Float64Array.of(1), new Uint8Array(2))).toThrow(/1 elements/);
    expect(() => judge.array([1] as never)).toThrow(/Float64Array/);
    expect(() => classifier("iso-10816-3-2009", "group 1 rigid", "g pk")).toThrow(/frequency/);
  });
});
