import { describe, expect, it } from "vitest";
import { amountOf, convertAmplitude } from "../../src/amplitude/index";
import { assumedText, parseAmplitude, writtenValue } from "../../src/reading/index";

describe("an amount of a reading", () => {
  it.each(["3 %", "3%", " 3  % ", "3 percent", "3 PerCent", "3 per cent", "3 PER CENT"])("%j is a share", (written) => {
    expect(amountOf(written, "200 um pp")).toBe(6);
    expect(amountOf(written, parseAmplitude("200 um pp"))).toBe(6);
  });

  it("may be nothing, and more than the whole", () => {
    expect(amountOf("0 %", "10 mm/s rms")).toBe(0);
    expect(amountOf("250 %", "10 mm/s rms")).toBe(25);
  });

  it.each(["3 mm %", "3 x percent", "3 % rms", "3 percents", "3 per cent of it"])(
    "%j is no share, and no amplitude either",
    (written) => {
      expect(() => amountOf(written, "10 mm/s rms")).toThrow(
        expect.objectContaining({ code: expect.stringMatching(/^unknown-/) }),
      );
    },
  );

  it("in a unit of its own comes in unit and detector of the reading", () => {
    // NIST SP 811, Appendix B.8: the inch is 25.4 mm exactly
    expect(amountOf("0.1 in/s rms", "10 mm/s rms")).toBe(2.54);
    expect(amountOf("0.1 in/s rms", "10 mm/s pk")).toBeCloseTo(2.54 * Math.SQRT2, 12);
    expect(amountOf("5.08 mm/s pp", "0.35 in/s pk")).toBeCloseTo(0.1, 15);
  });

  it("of another quantity is taken at the frequency of the reading", () => {
    // x = v / (2 pi f): W. T. Thomson, Theory of Vibration with Applications, problem 1-3
    const expected = (1000 * 2) / (2 * Math.PI * 25);
    expect(amountOf("2 mm/s pk", "80 um pk at 1500 r/min")).toBeCloseTo(expected, 10);
    expect(amountOf("2 mm/s pk at 25 Hz", "80 um pk at 25 Hz")).toBeCloseTo(expected, 10);
    expect(() => amountOf("2 mm/s pk at 10 Hz", "80 um pk at 25 Hz")).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => amountOf("2 mm/s pk", "80 um pk")).toThrow(expect.objectContaining({ code: "missing-frequency" }));
  });
});

describe("what was assumed, in brackets", () => {
  it("is empty when it is nothing", () => {
    expect(assumedText(convertAmplitude("1 in/s pk", "mm/s pp"))).toBe("");
    expect(assumedText({ assumed: [], crestFactor: 4 })).toBe("");
  });

  it("names each assumption in its words", () => {
    expect(assumedText(convertAmplitude("2 g rms", "g pk"))).toBe("(sine)");
    expect(assumedText(convertAmplitude("1 in/s pk at 25 Hz", "um pk"))).toBe("(one frequency)");
    expect(assumedText(convertAmplitude("1 in/s pk at 25 Hz", "um rms"))).toBe("(one frequency, sine)");
    expect(assumedText(convertAmplitude("2 g rms", "g pk", { crestFactor: 3.5 }))).toBe("(crest factor 3.5)");
  });
});

describe("the number of a reading as it is written", () => {
  it("is the value in its unit", () => {
    expect(writtenValue(parseAmplitude("0.25 in/s pk"))).toBe(0.25);
    expect(writtenValue(parseAmplitude("0 mm/s rms"))).toBe(0);
  });

  it("is the decibels of a level, also zero and below", () => {
    for (const decibels of [95, 0, -20]) {
      expect(writtenValue(parseAmplitude(`${decibels} dB re 1 mm/s`))).toBe(decibels);
    }
    expect(writtenValue(convertAmplitude("1 m/s rms", "dB re 1e-9 m/s"))).toBeCloseTo(180, 12);
  });

  it("is none where the level is null or has no decibels", () => {
    for (const level of [null, {}, { decibels: "95" }] as never[]) {
      expect(() => writtenValue({ value: 1, level })).toThrow(
        expect.objectContaining({ code: expect.stringMatching(/^(wrong-type|missing-option)$/) }),
      );
    }
  });
});
