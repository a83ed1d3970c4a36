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
      assumedFacts: ["condition in service: not given, assumed", "place housing: not given, assumed"],
    });
    expect([...judge.assumed].sort()).toEqual(["one-frequency", "sine"]);
    expect(judge.provenance).toBe("reported");
    const read = classifier("iso-10816-5-2000", "hydro set group 2", "in/s pk");
    expect([read.provenance, read.verified]).toEqual(["printed", true]);
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
  });

  it("refuses zones that would be written over readings, and takes those that lie clear of them", () => {
    const judge = classifier("iso-10816-3-2009", "group 2 rigid", "mm/s rms");
    const readings = [1, 2, 3, 5, 1, 2, 3, 5];
    const memory = new ArrayBuffer(96);
    const source = new Float64Array(memory, 16, 8);
    source.set(readings);
    for (const start of [9, 16, 72, 79]) {
      expect(() => judge.array(source, new Uint8Array(memory, start, 8)), `${start}`).toThrow(/clear of the source/);
    }
    expect([...source]).toEqual(readings);
    for (const start of [0, 8, 80, 88]) {
      expect([...judge.array(source, new Uint8Array(memory, start, 8))]).toEqual([0, 1, 2, 3, 0, 1, 2, 3]);
    }
    for (const none of [undefined, null]) expect(() => judge.array(none as never)).toThrow(VeladisError);
    expect(() => judge.array(["1"] as never)).toThrow(/a number at index 0/);
    expect(() => classifier("iso-10816-3-2009", "group 1 rigid", "g pk")).toThrow(/frequency/);
  });

  // the tables with three limits and with ten, and levels below and above zero
  it.each([
    ["iso-10816-3-2009", "group 1 rigid", "mm/s rms"],
    ["iso-10816-3-2009", "group 1 rigid", "dB re 1 mm/s"],
    ["iso-10816-3-2009", "group 1 rigid", "dB re 1 m/s"],
    ["iso-10816-6-1995-grades", "reciprocating engine 500 kW", "mm/s rms"],
    ["iso-14694-2003", "fan 3 kW rigid BV-2", "mm/s rms"],
    ["iec-60034-14-2003", "motor 280 mm grade A mounting free", "mm/s rms"],
  ] as const)("%s, %s, in %s: a bound is the last value of its zone", (scheme, machine, type) => {
    const own = classifier(scheme, machine, type);
    expect(own.bounds.length).toBe(own.zones.length - 1);
    const steps = own.bounds.flatMap((bound, k) => [
      { value: bound, at: k },
      { value: bound + Math.abs(bound) * 1e-15, at: k + 1 },
    ]);
    const values = Float64Array.from(steps, ({ value }) => value);
    const places = steps.map(({ at }) => at);
    expect([...own.array(values)]).toEqual(places);
    expect([...values].map((value) => own.index(value))).toEqual(places);
    expect([...values].map((value) => own(value))).toEqual(places.map((at) => own.zones[at]));
  });

  it("takes the largest reading there is for the worst zone, zero for the best, and names the first that is none", () => {
    const few = classifier("iso-10816-3-2009", "group 1 rigid", "mm/s rms");
    expect([few(0), few(Number.MAX_VALUE)]).toEqual(["A", "D"]);
    expect([...few.array(Float64Array.of(0, Number.MAX_VALUE))]).toEqual([0, 3]);
    expect(() => few.array(Float64Array.of(0, -1, -2))).toThrow(/at index 1,/);
    expect(() => few.array(Float64Array.of(Number.MAX_VALUE, Number.NaN))).toThrow(/at index 1,/);
    for (const value of ["1", null, true, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => few(value as never)).toThrow(VeladisError);
      expect(() => few.index(value as never)).toThrow(VeladisError);
    }
    const level = classifier("iso-10816-3-2009", "group 1 rigid", "dB re 1 mm/s");
    const lowest = -Number.MAX_VALUE;
    expect([...level.array(Float64Array.of(lowest, -20, 40))]).toEqual([0, 0, 3]);
    expect(() => level.array(Float64Array.of(lowest, Number.NEGATIVE_INFINITY))).toThrow(/at index 1,/);
    for (const value of ["1", Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(() => level(value as never)).toThrow(VeladisError);
      expect(() => level.index(value as never)).toThrow(VeladisError);
    }
  });

  it("takes a crest factor in place of the sine", () => {
    const peaks = classifier("iso-10816-3-2009", "group 1 rigid", "mm/s pk", { crestFactor: 4 });
    // ISO 10816-3:2009 group 1 rigid: 2.3, 4.5, 7.1 mm/s RMS; four times that as peaks
    expect(peaks.limits.map((limit) => Number(limit.toPrecision(12)))).toEqual([9.2, 18, 28.4]);
    expect(peaks.assumed).toEqual(["crest-factor"]);
    expect(classifier("iso-10816-3-2009", "group 1 rigid", "mm/s pk").assumed).toEqual(["sine"]);
  });
});
