import { describe, expect, it } from "vitest";
import { convert, converter, isReadingType, quantityOf, type ReadingType, readingType, units } from "../../src/index";
import { refusalOf } from "../refusals/refusal-of";

describe("a text that only run time knows", () => {
  it("converts within its quantity without a frequency, once it was asked for", () => {
    const typed: string = "in/s pk";
    if (!isReadingType(typed)) throw new Error("it is one");
    expect(convert(1, typed, "mm/s pk")).toBe(25.4);
    expect(converter(typed, "mm/s pk")(1)).toBe(25.4);
    expect(convert(1, "mm/s pk", readingType("mm/s pk" as string))).toBe(1);
  });

  it("is refused without a frequency where its quantity turns out to be another", () => {
    const typed: ReadingType = readingType("mil pp" as string);
    expect(refusalOf(() => convert(1, typed, "mm/s rms")).code).toBe("missing-frequency");
    expect(refusalOf(() => converter(typed, "mm/s rms")).code).toBe("missing-frequency");
    expect(convert(1, typed, "mm/s rms", { at: "25 Hz" })).toBeCloseTo((0.0254 * Math.PI * 25) / Math.SQRT2, 12);
  });

  it.each(["mm/s rms", "IPS peak", "dB re 1 nm/s", "Microns P-P", " mm/s  rms "])("%j is a reading type", (text) => {
    expect(isReadingType(text)).toBe(true);
  });

  it.each(["", "mm/s", "rms", "mm/s RSM", "dB", "7.1 mm/s rms", null, undefined, 7, {}, ["mm/s rms"], Symbol("mm/s")])(
    "%j is none",
    (text) => {
      expect(isReadingType(text)).toBe(false);
    },
  );

  it("has the quantity of its unit", () => {
    for (const [unit, { quantity }] of Object.entries(units)) expect(quantityOf(`${unit} rms`)).toBe(quantity);
    expect(quantityOf("dB re ISO 1683 displacement")).toBe("displacement");
    expect(refusalOf(() => quantityOf("mm/s")).code).toBe("missing-detector");
  });
});
