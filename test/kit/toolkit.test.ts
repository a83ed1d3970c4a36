/** Units and detectors of one's own, held against another engine of units. */
import { all, create, type MathJsInstance } from "mathjs";
import { convert, type VeladisError } from "veladis";
import { defineDetector, defineUnit, type OwnUnit, toolkit } from "veladis/kit";
import { classify } from "veladis/severity";
import { describe, expect, it } from "vitest";

const source = { title: "Hollowmere workshop sheet 3", provenance: "memory" } as const;
const furlong = defineUnit({
  symbol: "fur/fn",
  also: ["furlongs/fortnight"],
  quantity: "velocity",
  num: 201_168,
  den: 1_209_600_000,
  name: "furlong per fortnight",
  source,
});
const rope = defineUnit({
  symbol: "rope",
  quantity: "displacement",
  num: 762,
  den: 125,
  name: "rope, 20 feet",
  source,
});
const twice = defineDetector({
  symbol: "twice",
  num: 1,
  den: 1,
  rootTwo: 1,
  ofSamples: (samples) => (2 * Math.hypot(...Array.from(samples))) / Math.sqrt(samples.length),
  name: "twice the RMS value",
  source,
});
const kit = toolkit({ units: [furlong, rope], detectors: [twice] });

const code = (run: () => unknown): unknown => {
  try {
    return run();
  } catch (error) {
    return (error as VeladisError).code;
  }
};

describe("a unit of one's own against createUnit of mathjs", () => {
  const math = create(all as never, {}) as MathJsInstance;
  math.createUnit("furlongPerFortnight", math.divide(math.unit(201.168, "m"), math.unit(1_209_600, "s")) as never);
  math.createUnit("ropeLength", "20 ft");
  let seed = 18;
  const values = Array.from({ length: 100 }, () => {
    seed = (seed * 48271) % 2147483647;
    return 10 ** ((seed / 2147483647) * 12 - 6);
  });

  it("agrees within 1e-12 on 100 values, both ways", () => {
    for (const value of values) {
      const there = math.unit(value, "furlongPerFortnight").toNumber("mm/s");
      expect(Math.abs(kit.convert(value, "fur/fn pk", "mm/s pk") / there - 1)).toBeLessThan(1e-12);
      const back = math.unit(value, "mm/s").toNumber("furlongPerFortnight");
      expect(Math.abs(kit.convert(value, "mm/s rms", "furlongs/fortnight rms") / back - 1)).toBeLessThan(1e-12);
      const length = math.unit(value, "mil").toNumber("ropeLength");
      expect(Math.abs(kit.convert(value, "mil pp", "rope pp") / length - 1)).toBeLessThan(1e-12);
    }
  });
});

describe("a toolkit", () => {
  it("converts what is built in bit for bit as the library does", () => {
    expect(kit.convert(0.25, "in/s pk", "mil pp", { at: "1500 r/min" })).toBe(
      convert(0.25, "in/s pk", "mil pp", { at: "1500 r/min" }),
    );
    expect(kit.convert(95, "dB re 1e-9 m/s", "mm/s rms")).toBe(convert(95, "dB re 1e-9 m/s", "mm/s rms"));
    expect(kit.convert(2, "g rms", "g pk", { crestFactor: 4 })).toBe(8);
  });

  it("relates a detector of one's own by the sine, and names that", () => {
    // common practice, no source: of a sine, twice the RMS value is 1.414 times the peak
    expect(kit.convert(1, "mm/s pk", "mm/s twice")).toBeCloseTo(Math.SQRT2, 15);
    expect(kit.converter("mm/s rms", "mm/s twice").assumed).toEqual(["sine"]);
    expect(kit.converter("mm/s twice", "rope twice", { at: "25 Hz" }).assumed).toEqual(["one-frequency"]);
    expect(kit.read(Float64Array.of(3, -3, 3, -3), "twice")).toBeCloseTo(6, 12);
    expect(kit.read(Float64Array.of(3, -3, 3, -3), "peak-to-peak")).toBe(6);
    expect(code(() => kit.convert(1, "mm/s twice", "mm/s true pk"))).toBe("not-a-sine");
    expect(code(() => kit.convert(1, "mm/s twice", "mm/s pk", { crestFactor: 3 }))).toBe("not-a-sine");
  });

  it("knows the quantity in its types", () => {
    // @ts-expect-error: velocity becomes displacement
    expect(code(() => kit.convert(1, "fur/fn pk", "rope pp"))).toBe("missing-frequency");
    // @ts-expect-error: no such unit
    expect(code(() => kit.convert(1, "fur/fm pk", "mm/s pk"))).toBe("unknown-unit");
    // @ts-expect-error: no such detector
    expect(code(() => kit.convert(1, "fur/fn thrice", "mm/s pk"))).toBe("unknown-detector");
    // @ts-expect-error: no detector
    expect(code(() => kit.convert(1, "rope", "mm pk"))).toBe("missing-detector");
    // @ts-expect-error: a toolkit knows what it was made of
    expect(code(() => toolkit({ units: [rope] }).convert(1, "fur/fn pk", "mm/s pk"))).toBe("unknown-unit");
    expect(code(() => kit.convert(1, "fur/fn true pk", "mm/s true pk"))).toBeCloseTo(0.1663, 4);
    expect(kit.quantityOf("rope p-p")).toBe("displacement");
  });

  it("hands an amplitude with what was assumed to every other function", () => {
    const reading = kit.amplitude(30, "fur/fn twice", "mm/s rms");
    expect(reading).toMatchObject({ unit: "mm/s", detector: "rms", assumed: ["sine"] });
    const { zone, assumed } = classify(reading, { scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    expect([zone, assumed]).toEqual(["B", ["sine"]]);
    expect(code(() => kit.amplitude(30, "mm/s rms", "fur/fn rms" as "mm/s rms"))).toBe("unknown-option");
  });

  it("leaves the library as it was", () => {
    expect(code(() => convert(1, "fur/fn pk" as "mm/s pk", "mm/s pk"))).toBe("unknown-unit");
  });
});

describe("defineUnit refuses", () => {
  const line = {
    symbol: "lin/s",
    quantity: "velocity",
    num: 127,
    den: 60_000,
    name: "line per second",
    source,
  } as const;
  it.each([
    ["a symbol that is built in", { symbol: "mm/s" }, "out-of-range"],
    ["a spelling that is built in", { symbol: "IPS" }, "out-of-range"],
    ["another symbol that is built in", { also: ["microns"] }, "out-of-range"],
    ["a detector", { symbol: "rms" }, "out-of-range"],
    ["a frequency", { symbol: "Hz" }, "out-of-range"],
    ["the word for a level", { symbol: "dB" }, "out-of-range"],
    ["a key of every object", { symbol: "constructor" }, "out-of-range"],
    ["__proto__", { symbol: "__proto__" }, "syntax"],
    ["two words", { symbol: "line s" }, "syntax"],
    ["a ratio of zero", { num: 0 }, "out-of-range"],
    ["a ratio below zero", { den: -1 }, "out-of-range"],
    ["a ratio that is not exact", { num: 0.1 }, "out-of-range"],
    ["a ratio beyond 2^53", { num: 2 ** 53 }, "out-of-range"],
    ["a ratio as text", { num: "127" }, "wrong-type"],
    ["another quantity", { quantity: "jerk" }, "unknown-option"],
    ["no source", { source: undefined }, "missing-option"],
    ["a key it has not", { ratio: 2 }, "unknown-option"],
  ])("%s", (_, part, expected) => {
    expect(code(() => defineUnit({ ...line, ...part } as OwnUnit))).toBe(expected);
  });

  it("two of one name in a toolkit", () => {
    expect(code(() => toolkit({ units: [rope, { ...rope, quantity: "velocity" }] }))).toBe("out-of-range");
    expect(code(() => toolkit({ units: [rope], detectors: [{ ...twice, symbol: "rope" }] }))).toBe("out-of-range");
  });
});

describe("defineDetector refuses", () => {
  it.each([
    ["a symbol that is built in", { symbol: "peak" }, "out-of-range"],
    ["a ratio that its function contradicts", { rootTwo: 0 }, "out-of-range"],
    ["a power that is no whole number", { pi: 0.5 }, "out-of-range"],
    ["no function", { ofSamples: 1 }, "wrong-type"],
  ])("%s", (_, part, expected) => {
    expect(code(() => defineDetector({ ...twice, ...part } as typeof twice))).toBe(expected);
  });
});
