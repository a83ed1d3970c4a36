import { describe, expect, it } from "vitest";
import { convertAmplitude, equivalents } from "../../src/amplitude/index";
import { amplitudeOf, parseAmplitude } from "../../src/reading/index";

// biome-ignore lint/suspicious/noExplicitAny: readings are handed over that no type allows
type Loose = any;

const reading = { value: 0.25, unit: "in/s", detector: "pk", quantity: "velocity", hertz: 25 } as const;

describe("a reading taken apart", () => {
  it("is itself as long as it is written in symbols", () => {
    for (const one of [reading, parseAmplitude("95 dB re 1 nm/s"), parseAmplitude("4.5 mm/s rms")]) {
      expect(amplitudeOf(one)).toBe(one);
    }
    expect(amplitudeOf("0.25 in/s pk at 1500 r/min")).toEqual(reading);
  });

  it.each([
    ["unit", "IPS"],
    ["unit", "inches per second"],
    ["detector", "zero to peak"],
    ["quantity", undefined],
  ])("with the %s %j is brought to symbols", (part, written) => {
    const spoken = { ...reading, [part]: written } as Loose;
    expect(amplitudeOf(spoken)).toEqual(reading);
    expect(convertAmplitude(spoken, "mm/s pk").value).toBe(6.35);
    expect(spoken[part], "the caller's own object stays as it was").toBe(written);
  });

  it("may be zero, have no frequency and carry a level", () => {
    for (const part of [
      { value: 0 },
      { hertz: undefined },
      { level: { decibels: 20 * Math.log10(reading.value), re: "1 in/s" } },
    ]) {
      expect(amplitudeOf({ ...reading, ...part })).toEqual({ ...reading, ...part });
    }
  });

  it.each([
    ["a value below zero", { value: -1 }, "negative"],
    ["a text for the value", { value: "0.25" }, "wrong-type"],
    ["no unit", { unit: undefined }, "missing-option"],
    ["a unit that is none", { unit: "furlong" }, "unknown-unit"],
    ["no detector", { detector: undefined }, "missing-option"],
    ["the quantity of another unit", { quantity: "acceleration" }, "wrong-quantity"],
    ["a detector that is none", { detector: "max" }, "unknown-detector"],
    ["a level for the unit", { unit: "dB re 1 nm/s", detector: "rms" }, "wrong-type"],
    ["a frequency of zero", { hertz: 0 }, "not-positive"],
    ["a text for the frequency", { hertz: "25 Hz" }, "wrong-type"],
    ["null for the frequency", { hertz: null }, "missing-option"],
    ["null for the level", { level: null }, "missing-option"],
    ["a level that is no number", { level: { decibels: Number.NaN, re: "1 nm/s" } }, "not-a-number"],
    ["a level without its reference", { level: { decibels: 95 } }, "missing-option"],
  ])("is refused with %s", (_, part, code) => {
    expect(() => amplitudeOf({ ...reading, ...part } as Loose)).toThrow(expect.objectContaining({ code }));
  });
});

describe("the options of a conversion", () => {
  it.each([
    [null, "missing-option"],
    ["25 Hz", "wrong-type"],
    [25, "wrong-type"],
    [true, "wrong-type"],
  ])("are refused as %j", (options, code) => {
    for (const act of [convertAmplitude, equivalents] as Loose[]) {
      const rest = act === convertAmplitude ? ["um pp", options] : [options];
      expect(() => act("1 mm/s rms", ...rest)).toThrow(expect.objectContaining({ code }));
    }
  });

  it("may be left out or be empty", () => {
    for (const options of [undefined, {}]) {
      expect(convertAmplitude("1 in/s pk", "mm/s pk", options).value).toBe(25.4);
      expect(convertAmplitude("1 in/s pk", "mm/s pk", options).hertz).toBeUndefined();
    }
  });

  it("give a frequency to a reading that has none", () => {
    const answer = convertAmplitude("1 mm/s rms", "um rms", { at: "25 Hz" });
    expect(answer.hertz).toBe(25);
    expect(answer.value).toBeCloseTo(1000 / (2 * Math.PI * 25), 12);
  });
});
