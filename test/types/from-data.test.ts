import type { StandardSchemaV1 } from "@standard-schema/spec";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseUncertain } from "../../src/entries/uncertainty";
import { type Amplitude, amplitude, attempt, parseAmplitude, readingSchema, tryConvert } from "../../src/index";
import { refusalOf } from "../refusals/refusal-of";

/** What a reading says, as data. */
function dataOf({ value, unit, detector, quantity, hertz, level, crestFactor }: Amplitude) {
  return {
    value: level?.decibels ?? value,
    unit: level === undefined ? unit : `dB re ${level.re}`,
    detector,
    quantity,
    ...(hertz !== undefined && { at: { hertz } }),
    ...(crestFactor !== undefined && { crestFactor }),
  };
}

describe("a reading made of data", () => {
  it("is the one that its text says", () => {
    const type = fc.constantFrom("mm/s rms", "IPS peak", "um pp", "dB re 1 nm/s", "g true pk", "dB re 1e-6 m/s2");
    const value = fc.double({ min: 0, max: 5000, noNaN: true });
    const at = fc.option(fc.double({ min: 0.1, max: 1e5, noNaN: true }), { nil: undefined });
    const crest = fc.option(fc.double({ min: 1, max: 20, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(value, type, at, crest, (number, written, hertz, factor) => {
        const text = `${number} ${written}${hertz ? ` at ${hertz} Hz` : ""}${factor ? `, crest factor ${factor}` : ""}`;
        const read = parseAmplitude(text);
        const made = amplitude(dataOf(read));
        expect(made).toEqual(read);
        expect(Object.isFrozen(made)).toBe(true);
      }),
    );
  });

  it("takes a frequency in words, and how well the value is known", () => {
    expect(amplitude({ value: 2, unit: "g", detector: "rms", at: "1500 r/min" }).hertz).toBe(25);
    const read = parseUncertain("4.2 mm/s rms ± 0.3 mm/s rms (k=2)");
    const uncertainty = read.history?.[0]?.uncertainty;
    if (uncertainty === undefined) throw new Error("it has one");
    const made = amplitude({ value: 4.2, unit: "mm/s", detector: "rms", uncertainty });
    expect(made.history?.[0]?.uncertainty).toEqual(uncertainty);
  });

  const rms = { value: 7.1, unit: "mm/s", detector: "rms" };
  it.each([
    ["a quantity of another unit", { ...rms, quantity: "displacement" }, "wrong-quantity", /the quantity velocity/],
    ["a value that is none", { ...rms, value: Number.NaN }, "not-a-number", /a value/],
    ["a negative value", { ...rms, value: -1 }, "negative", /a value/],
    ["a value as text", { ...rms, value: "7.1" }, "wrong-type", /a value/],
    ["decibels without a reference", { value: 95, unit: "dB" }, "missing-reference", /reference/],
    ["decibels of a peak", { value: 95, unit: "dB re 1 nm/s", detector: "pk" }, "unknown-detector", /RMS/],
    ["decibels and a unit", { value: 95, unit: "dB mm/s", detector: "rms" }, "missing-reference", /reference/],
    ["no detector", { value: 7.1, unit: "mm/s" }, "missing-detector", /a detector/],
    ["no unit", { value: 7.1, detector: "rms" }, "missing-option", /a unit/],
    ["a key of another name", { ...rms, hertz: 25 }, "unknown-option", /a part of a reading/],
    ["a speed by itself", { ...rms, rpm: 1500 }, "unknown-option", /a part of a reading/],
    ["a crest factor below 1", { ...rms, crestFactor: 0.5 }, "out-of-range", /crest factor/],
    ["a frequency of zero", { ...rms, at: "0 Hz" }, "not-positive", /a frequency/],
    ["an uncertainty of another form", { ...rms, uncertainty: "0.3" }, "missing-option", /uncertainty/],
  ])("is refused with %s", (_, data, code, said) => {
    const refusal = refusalOf(() => amplitude(data as never));
    expect(refusal.expected).toMatch(said);
    expect(refusal.code).toBe(code);
  });
});

describe("an answer or a refusal, as a value", () => {
  it("is what convert says", () => {
    expect(tryConvert(25.4, "mm/s pk", "in/s pk")).toEqual({ ok: true, value: 1 });
    const refused = tryConvert(1, "mm/s RSM", "in/s pk");
    expect(refused.ok ? "" : refused.error.code).toBe("unknown-detector");
    const mistyped = tryConvert(1, "g pk", "g rms", { crestfactor: 4 } as never);
    expect(mistyped.ok ? "" : mistyped.error.code).toBe("unknown-option");
  });

  it("does not hide what is no refusal", () => {
    expect(() =>
      attempt(() => {
        throw new TypeError("a fault of the program");
      }),
    ).toThrow(TypeError);
  });
});

describe("the schema of a reading", () => {
  // the types of Standard Schema, version 1, as its package publishes them
  const schema: StandardSchemaV1<string, Amplitude> = readingSchema;

  it("gives the reading, or why there is none", async () => {
    const { validate, version, vendor } = schema["~standard"];
    expect([version, vendor]).toEqual([1, "veladis"]);
    expect(await validate("7.1 mm/s rms")).toEqual({ value: parseAmplitude("7.1 mm/s rms") });
    for (const value of ["7.1 mm/s", "", 7.1, null, undefined, {}]) {
      const { issues } = await validate(value);
      expect(issues).toHaveLength(1);
      expect(issues?.[0]?.message).toMatch(/^expected /);
    }
  });
});
