import { describe, expect, it } from "vitest";
import { sineFrequency } from "../../src/amplitude/index";
import { currentLoop, sensor } from "../../src/entries/sensor";
import {
  convert,
  convertAmplitude,
  converter,
  equivalents,
  type FrequencyText,
  format,
  hertz,
  parseAmplitude,
  readingType,
  significant,
  unitSymbol,
} from "../../src/index";
import { refusalOf } from "../refusals/refusal-of";

const untyped = convert as (value: unknown, from: unknown, to: unknown, options?: unknown) => number;

describe("convert refuses", () => {
  it.each([
    [[Number.NaN, "mm/s rms", "in/s pk"], "not-a-number"],
    [[Number.POSITIVE_INFINITY, "mm/s rms", "in/s pk"], "not-finite"],
    [[Number.NEGATIVE_INFINITY, "mm/s rms", "in/s pk"], "not-finite"],
    [[-1, "mm/s rms", "in/s pk"], "negative"],
    [["1", "mm/s rms", "in/s pk"], "wrong-type"],
    [[1, "mm/s rms", "in/s pk", { crestfactor: 4 }], "unknown-option"],
    [[1, "mm/s rms", "in/s pk", null], "missing-option"],
    [[1, "mm/s rms", "in/s pk", "25 Hz"], "wrong-type"],
    [["1", "mm/s rms", "mm/s rms"], "wrong-type"],
    [[undefined, "mm/s rms", "in/s pk"], "missing-option"],
    [[1, undefined, "in/s pk"], "missing-option"],
    [[1, "mm/s rms", null], "missing-option"],
    [[1, "mm/s rms", "um pp"], "missing-frequency"],
    [[1, "mm/s rms", "um pp", {}], "missing-frequency"],
    [[1, "mm/s rms", "um pp", { at: "0 Hz" }], "not-positive"],
    [[1, "mm/s rms", "um pp", { at: { hertz: 0 } }], "not-positive"],
    [[1, "mm/s rms", "um pp", { at: { hertz: -25 } }], "not-positive"],
    [[1, "mm/s rms", "um pp", { at: { hertz: Number.NaN } }], "not-a-number"],
    [[1, "mm/s rms", "um pp", { at: { hertz: Number.POSITIVE_INFINITY } }], "not-finite"],
    [[1, "mm/s rms", "um pp", { at: { hertz: "25" } }], "wrong-type"],
    [[1, "mm/s rms", "um pp", { at: 25 }], "wrong-type"],
    [[1, "mm/s rms", "um pp", { at: "-25 Hz" }], "not-positive"],
    [[1, "mm/s rms", "um pp", { at: "0x 1500 r/min" }], "not-positive"],
    [[1, "mm/s rms", "um pp", { at: "1500" }], "syntax"],
    [[1, "mm/s rms", "um pp", { at: "" }], "syntax"],
    [[1, "mm/s rms", "um pp", { at: "25 furlongs" }], "unknown-frequency-unit"],
    [[1, "mm/s rms", "in/s pk", { at: "0 Hz" }], "not-positive"],
    [[95, "dB", "mm/s rms"], "missing-reference"],
    [[95, "dB re", "mm/s rms"], "missing-reference"],
    [[95, "dB re 1e-9", "mm/s rms"], "unknown-reference"],
    [[95, "dB re nothing known", "mm/s rms"], "unknown-reference"],
    [[95, "dB re 0 m/s", "mm/s rms"], "not-positive"],
    [[95, "dB re -1 m/s", "mm/s rms"], "not-positive"],
    [[95, "dB re 1e-9 m/s pk", "mm/s rms"], "unknown-detector"],
    [[95, "dB re 1e-9 m/s", "um rms"], "missing-frequency"],
    [[0, "mm/s rms", "dB re 1e-9 m/s"], "not-positive"],
    [[Number.NaN, "dB re 1e-9 m/s", "dB re 1e-8 m/s"], "not-a-number"],
    [[1e6, "dB re 1e-9 m/s", "mm/s rms"], "not-finite"],
    [[-1e5, "dB re 1e-9 m/s", "mm/s rms"], "out-of-range"],
    [[1e300, "m rms", "pm rms"], "not-finite"],
    [[5e-324, "pm rms", "m rms"], "out-of-range"],
    [[1, "mm/s", "in/s pk"], "missing-detector"],
    [[1, "mm/s rsm", "in/s pk"], "unknown-detector"],
    [[1, "furlong rms", "in/s pk"], "unknown-unit"],
    [[1, "rms", "in/s pk"], "unknown-unit"],
    [[1, "", "in/s pk"], "syntax"],
    [[1, "  ", "in/s pk"], "syntax"],
    [[1, "()", "in/s pk"], "syntax"],
    [[2, "g rms", "g pk", { crestFactor: 0.9 }], "out-of-range"],
    [[2, "g rms", "g pk", { crestFactor: Number.NaN }], "out-of-range"],
    [[2, "g rms", "g pk", { crestFactor: Number.POSITIVE_INFINITY }], "out-of-range"],
    [[2, "g rms", "g avg", { crestFactor: 4 }], "not-a-sine"],
    [[2, "g rms", "mm/s pk", { crestFactor: 4, at: "25 Hz" }], "not-a-sine"],
  ] as const)("%j as %s", (args, code) => {
    const error = refusalOf(() => untyped(...(args as unknown as [number, string, string, object?])));
    expect(error.code).toBe(code);
    expect(error.expected).not.toBe("");
    expect(error.received).not.toBe("");
  });

  it("an overflow on the way is none at the end", () => {
    expect(convert(1e300, "m rms", "km rms".replace("km", "ft") as "ft rms")).toBeCloseTo(3.280839895e300, -292);
    expect(convert(1e307, "g pk", "m/s2 pk")).toBeCloseTo(9.80665e307, -300);
  });

  it("the compiled form refuses the same", () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1, "1", null]) {
      const direct = refusalOf(() => untyped(bad, "mm/s rms", "in/s pk"));
      expect(refusalOf(() => converter("mm/s rms", "in/s pk")(bad as number))).toMatchObject({ code: direct.code });
      expect(refusalOf(() => converter("mm/s pk", "in/s pk")(bad as number))).toMatchObject({ code: direct.code });
    }
    expect(refusalOf(() => (converter as (from: string, to: string) => unknown)("g pk", "mm/s rms")).code).toBe(
      "missing-frequency",
    );
  });
});

describe("parseAmplitude refuses", () => {
  it.each([
    ["", "syntax"],
    ["in/s pk", "syntax"],
    ["0.25", "missing-unit"],
    ["0.25 in/s", "missing-detector"],
    ["-0.25 in/s pk", "negative"],
    ["1,500 um pp", "not-a-number"],
    ["0,25 in/s pk", "not-a-number"],
    ["1e999 in/s pk", "not-finite"],
    ["0.25 in/s pk at", "syntax"],
    ["0.25 in/s pk at 1500 r/min at 25 Hz", "syntax"],
    ["0.25 in/s pk at 1500 rmp", "unknown-frequency-unit"],
    ["NaN mm/s rms", "syntax"],
    ["Infinity mm/s rms", "syntax"],
    ["0x10 mm/s rms", "unknown-unit"],
    ["95 dB", "missing-reference"],
    ["3 mm rms rms", "unknown-unit"],
  ])("%j as %s", (text, code) => {
    expect(refusalOf(() => parseAmplitude(text)).code).toBe(code);
  });

  it("says how a comma was meant", () => {
    expect(refusalOf(() => parseAmplitude("1,500 um pp")).message).toMatch(/a point for decimals and no comma/);
  });

  it("what is no text", () => {
    for (const bad of [undefined, null, 5, {}, []])
      expect(refusalOf(() => parseAmplitude(bad as never)).code).toBe(bad == null ? "missing-option" : "wrong-type");
  });
});

describe("suggestions", () => {
  it.each([
    ["in/z pk", ["in/s"]],
    ["mm/sx rms", ["mm/s"]],
    ["gal pk", ["Gal"]],
    ["micorn pp", ["um"]],
  ])("%j is near %j", (type, near) => {
    expect(refusalOf(() => readingType(type)).didYouMean).toEqual(expect.arrayContaining(near));
  });

  it("come before the list of all that is allowed", () => {
    const error = refusalOf(() => unitSymbol("in/z"));
    expect(error.message).toBe('expected a unit of vibration, received "in/z"; did you mean in/s?');
    expect(error.allowed).toContain("mm/s");
    expect(JSON.parse(JSON.stringify(error))).toMatchObject({
      code: "unknown-unit",
      received: '"in/z"',
      didYouMean: ["in/s"],
    });
  });

  it("none for what is near nothing, and then the list is in the message", () => {
    const error = refusalOf(() => unitSymbol("furlong"));
    expect(error.didYouMean).toBeUndefined();
    expect(error.message).toMatch(/allowed: m\/s2/);
  });
});

describe("a megabyte of junk is refused at once and quoted shortly", () => {
  const megabyte = 1 << 20;
  const junk = {
    letters: "x".repeat(megabyte),
    digits: "1".repeat(megabyte),
    spaces: `1${" ".repeat(megabyte)}mm/s`,
    ats: "1 at ".repeat(megabyte / 5),
    dots: `1${".".repeat(megabyte)}`,
    commas: `1${",1".repeat(megabyte / 2)}`,
    brackets: `1 ${"(".repeat(megabyte)}`,
    decibels: `1 dB re ${"1".repeat(megabyte)}`,
    micros: `1 ${"μ".repeat(megabyte)}m pp`,
    combining: `1 m${"\u0301".repeat(megabyte)} pp`,
  };
  const readers: Record<string, (text: string) => unknown> = {
    parseAmplitude,
    readingType,
    unitSymbol,
    hertz: (text) => hertz(text as FrequencyText),
    sensor,
    currentLoop,
    "convert to": (text) => untyped(1, "mm/s rms", text),
    "voltage of a sensor": (text) => sensor("100 mV/g").reading(text, "g pk"),
    "type of a voltage": (text) => sensor("100 mV/g").voltage("1 g pk", text as never),
  };

  it.each(Object.entries(readers))("%s", (_, read) => {
    for (const text of Object.values(junk)) {
      const error = refusalOf(() => read(text));
      expect(error.message.length).toBeLessThan(1200);
    }
  });

  it("in time that grows no faster than its length", () => {
    const secondsFor = (length: number): number => {
      const start = performance.now();
      for (const read of Object.values(readers)) refusalOf(() => read(`1 ${"a ".repeat(length / 2)}`));
      return performance.now() - start;
    };
    secondsFor(megabyte);
    // eight times the length; quadratic work would take sixty-four times as long
    expect(secondsFor(8 * megabyte)).toBeLessThan(Math.max(24 * secondsFor(megabyte), 1000));
  });
});

describe("the others refuse", () => {
  it.each([
    ["a sensitivity without a unit", () => sensor("100 mV"), "syntax"],
    ["a sensitivity of nothing", () => sensor(""), "syntax"],
    ["a sensitivity of zero", () => sensor("0 mV/g"), "not-positive"],
    ["an unknown voltage", () => sensor("100 kV/g"), "unknown-unit"],
    ["an unknown unit", () => sensor("100 mV/furlong"), "unknown-unit"],
    ["another quantity", () => sensor("100 mV/g").sensitivity("mV/mil"), "wrong-quantity"],
    ["velocity without a frequency", () => sensor("100 mV/g").voltage("1 in/s pk", "mV rms"), "missing-frequency"],
    ["a voltage without detector", () => sensor("100 mV/g").reading("70 mV", "g pk"), "syntax"],
    ["a voltage of unknown detector", () => sensor("100 mV/g").reading("70 mV bogus", "g pk"), "unknown-detector"],
    ["a negative voltage", () => sensor("100 mV/g").reading("-70 mV rms", "g pk"), "negative"],
    ["a range without end", () => currentLoop("25.4 mm/s rms"), "syntax"],
    ["a range that falls", () => currentLoop("10 to 5 mm/s rms"), "out-of-range"],
    ["a range in decibels", () => currentLoop("0 to 100 dB re 1 nm/s"), "out-of-range"],
    ["a dead loop", () => currentLoop("0 to 25.4 mm/s rms").reading(0), "sensor-fault"],
    ["a current just under the fault limit", () => currentLoop("0 to 25.4 mm/s rms").reading(3.59), "sensor-fault"],
    ["a shorted loop", () => currentLoop("0 to 25.4 mm/s rms").reading(21.01), "sensor-fault"],
    ["no current", () => currentLoop("0 to 25.4 mm/s rms").reading(Number.NaN), "not-a-number"],
    [
      "crossed limits",
      () => currentLoop("0 to 1 g pk", { lowFault: 5, lowest: 4, highest: 20, highFault: 21 }),
      "out-of-range",
    ],
    ["no digits", () => significant(1, 0), "out-of-range"],
    ["half a digit", () => format(1, "g pk", { digits: 2.5 }), "out-of-range"],
    ["half a digit of a level", () => format(1, "dB re 1 g", { digits: 2.5 }), "out-of-range"],
    ["a number that is none", () => significant(Number.NaN), "not-a-number"],
    ["two readings of one quantity", () => sineFrequency("1 g pk", "1 m/s2 pk"), "wrong-quantity"],
    ["a zero reading", () => sineFrequency("0 g pk", "1 mm pp"), "not-positive"],
    ["an unknown target", () => convertAmplitude("1 g pk", "bogus"), "unknown-unit"],
    ["a reading of nothing", () => equivalents(""), "syntax"],
    ["null for a reading", () => convertAmplitude(null as never, "g pk"), "missing-option"],
    ["null for a reading to compare", () => sineFrequency("1 mm pp", null as never), "missing-option"],
  ] as const)("%s", (_, act, code) => {
    expect(refusalOf(act).code).toBe(code);
  });
});
