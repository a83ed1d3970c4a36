import { describe, expect, it } from "vitest";
import { convert, convertAmplitude, converter } from "../../src/index";

// peak = crest factor x RMS: the definition, used so by the FTA manual, 2018 (PPV over RMS of 4 for passing trucks)
const crestFactor = 4;

describe("a stated crest factor", () => {
  it.each([
    [2, "g rms", "g pk", 8],
    [2, "g rms", "g pp", 16],
    [8, "g pk", "g rms", 2],
    [16, "g pp", "g rms", 2],
    // the inch is 25.4 mm exactly: NIST SP 811, Appendix B.8
    [2, "in/s rms", "mm/s pk", 203.2],
    [2, "in/s rms", "mm/s pp", 406.4],
    [203.2, "mm/s pk", "in/s rms", 2],
    [406.4, "mm/s pp", "in/s rms", 2],
    [2, "in/s pk", "mm/s rms", 12.7],
    [2, "in/s pp", "mm/s rms", 6.35],
    [12.7, "mm/s rms", "in/s pk", 2],
  ])("%d %s is %s %d", (value, from, to, expected) => {
    const answer = convert(value, from as "g rms", to as "g pk", { crestFactor });
    expect(answer).toBeCloseTo(expected, 12);
    expect(converter(from as "g rms", to as "g pk", { crestFactor })(value)).toBe(answer);
  });

  it("changes nothing where peak and RMS do not meet", () => {
    expect(convert(3, "g pk", "g pp", { crestFactor })).toBe(6);
    expect(convert(3, "g pp", "g pk", { crestFactor })).toBe(1.5);
    expect(convert(3, "in/s rms", "mm/s rms", { crestFactor })).toBe(convert(3, "in/s rms", "mm/s rms"));
    expect(convert(25.4, "mm/s pk", "in/s pk", { crestFactor })).toBe(1);
    expect(convertAmplitude("3 g pk", "g pp", { crestFactor })).not.toHaveProperty("crestFactor");
  });

  it("is 1 for a square wave, the least there is", () => {
    expect(convert(3, "g rms", "g pk", { crestFactor: 1 })).toBe(3);
    expect(() => convert(3, "g rms", "g pk", { crestFactor: 1 - 2 ** -53 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });

  it("is told with the answer it was used for", () => {
    expect(convertAmplitude("2 g rms", "g pk", { crestFactor })).toMatchObject({
      value: 8,
      assumed: ["crest-factor"],
      crestFactor,
    });
  });
});

describe("without one", () => {
  it("peak, RMS and average are those of a sine", () => {
    for (const [from, to] of [
      ["g pk", "g avg"],
      ["g avg", "g pp"],
      ["g rms", "g avg"],
      ["g pk", "g rms"],
      ["g rms", "g pp"],
    ] as const) {
      const answer = convertAmplitude(`1 ${from}`, to);
      expect(answer.assumed, `${from} to ${to}`).toEqual(["sine"]);
      expect(answer).not.toHaveProperty("crestFactor");
    }
    expect(convertAmplitude("1 g pk", "g pp").assumed).toEqual([]);
    expect(convertAmplitude("1 g avg", "mg avg").assumed).toEqual([]);
  });
});
