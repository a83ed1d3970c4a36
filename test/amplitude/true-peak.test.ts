import { describe, expect, it } from "vitest";
import { explain } from "../../src/entries/explain";
import { sensor } from "../../src/entries/sensor";
import {
  assumedText,
  convert,
  convertAmplitude,
  converter,
  equivalents,
  format,
  type ReadingType,
  readingType,
  units,
} from "../../src/index";

const refused = expect.objectContaining({ code: "not-a-sine" });

describe("a true peak", () => {
  it.each([
    ["3 g true peak", "m/s2 true pk", "29.4 m/s2 true pk"],
    ["0.5 in/s True-Peak", "mm/s true pk", "12.7 mm/s true pk"],
    ["3 g tpk", "g true peak", "3.00 g true pk"],
  ])("%s in %s is %s: units of one quantity", (reading, to, expected) => {
    const answer = convertAmplitude(reading, to);
    expect(format(answer)).toBe(expected);
    expect(answer.assumed).toEqual([]);
  });

  // crest factor: peak over RMS by definition, used so by the FTA manual, 2018
  it.each([
    ["3 g true pk", "g rms", 0.75],
    ["2 g rms", "g true pk", 8],
    ["1 in/s rms", "mm/s true pk", 101.6],
    ["101.6 mm/s true pk", "in/s rms", 1],
  ])("%s in %s is %d by a crest factor of 4, named", (reading, to, expected) => {
    const answer = convertAmplitude(reading, to, { crestFactor: 4 });
    expect(answer.value).toBeCloseTo(expected, 12);
    expect(assumedText(answer)).toBe("(crest factor 4)");
    expect(explain(answer).text).toContain("crest factor 4");
  });

  it.each(["g rms", "g pk", "g pp", "g avg", "dB re 1 um/s2"])("is not %s by the ratios of a sine", (to) => {
    expect(() => convertAmplitude("3 g true peak", to)).toThrow(refused);
    expect(() => convertAmplitude(`3 ${to}`, "g true pk")).toThrow(refused);
    expect(() => converter(readingType("g true pk"), readingType(to), { at: "25 Hz" })).toThrow(refused);
  });

  it.each(["g pk", "g pp", "g avg"])("is not %s by a crest factor either", (to) => {
    expect(() => convertAmplitude("3 g true peak", to, { crestFactor: 4 })).toThrow(refused);
    expect(() => convertAmplitude(`3 ${to}`, "g true pk", { crestFactor: 4 })).toThrow(refused);
  });

  it("is not carried to another quantity, whether the frequency is its own or told", () => {
    expect(() => convertAmplitude("3 g true pk at 50 Hz", "mm/s true pk")).toThrow(refused);
    expect(() => convertAmplitude("3 g true pk", "mm/s true pk", { at: "50 Hz" })).toThrow(refused);
    expect(() => convertAmplitude("3 g true pk at 50 Hz", "mm/s rms", { crestFactor: 4 })).toThrow(refused);
  });

  it("keeps its crest factor on the way back, where it was stated", () => {
    const there = convertAmplitude("2 g rms", "g true pk", { crestFactor: 4 });
    expect(convertAmplitude(there, "m/s2 rms").value).toBeCloseTo(2 * 9.80665, 12);
  });

  it("has no table of equivalents, and a sensor gives it as volts", () => {
    expect(() => equivalents("3 g true pk")).toThrow(refused);
    expect(format(sensor("100 mV/g").reading("300 mV true pk", "g true pk"))).toBe("3.00 g true pk");
    expect(() => sensor("100 mV/g").reading("300 mV true pk", "g rms")).toThrow(refused);
  });

  it("is a literal of the types, which ask for a crest factor", () => {
    const there: ReadingType = "in/s true pk";
    expect(convert(1, "in/s true pk", "mm/s true pk")).toBe(25.4);
    expect(convert(8, "g true pk", "g rms", { crestFactor: 4 })).toBe(2);
    // @ts-expect-error a true peak has no ratio of a sine
    expect(() => convert(8, "g true pk", "g rms")).toThrow(refused);
    // @ts-expect-error nor has what becomes one
    expect(() => convert(8, "g rms", "g true pk", { at: "25 Hz" })).toThrow(refused);
    expect(readingType("ips true peak")).toBe(there);
  });

  it("goes through every unit and back unchanged", () => {
    for (const [unit, { quantity }] of Object.entries(units)) {
      const base = quantity === "displacement" ? "m" : quantity === "velocity" ? "m/s" : "m/s2";
      const there = convertAmplitude(`3 ${base} true pk`, `${unit} true pk`);
      expect(convertAmplitude(there, `${base} true pk`).value).toBeCloseTo(3, 10);
    }
  });
});
