import { describe, expect, it } from "vitest";
import { convert, convertAmplitude, converter, frequency, readingType } from "../../src/index";

describe("what compiles", () => {
  it("one quantity without a frequency", () => {
    expect(convert(1, "ips pk", "mm/s pk")).toBe(25.4);
    expect(convert(1, "m/s² pk", "m/s^2 pk")).toBe(1);
    expect(convert(1, "µm pp", "micron pp")).toBe(1);
    expect(convert(20, "dB re 1 um/s", "um/s rms")).toBe(10);
    expect(converter("in/s pk", "mm/s pk").factor).toBe(25.4);
  });

  it("another quantity with one, in each way it can be written", () => {
    const rpm = 1500;
    const expected = convert(1, "mm/s rms", "um pp", { at: "25 Hz" });
    expect(convert(1, "mm/s rms", "um pp", { at: { hertz: 25 } })).toBe(expected);
    expect(convert(1, "mm/s rms", "um pp", { at: `${rpm} r/min` })).toBe(expected);
    expect(convert(1, "mm/s rms", "um pp", { at: `2x ${750} rpm` })).toBe(expected);
    expect(convert(1, "mm/s rms", "um pp", { at: "0.025 kHz" })).toBe(expected);
  });

  it("texts of unknown content, by the checked path", () => {
    const [reading, target, speed]: string[] = ["0.25 IPS peak", "Microns P-P", "1500 RPM"];
    const checked = convert(0.25, readingType("IPS peak"), readingType(target as string), {
      at: frequency(speed as string),
    });
    expect(checked).toBe(convert(0.25, "in/s pk", "um pp", { at: "1500 r/min" }));
    expect(convertAmplitude(`${reading} at ${speed}`, target as string).value).toBe(checked);
  });
});
