import { convertAmplitude } from "veladis";
import { parseUncertain, uncertaintyOf, withUncertainty } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { madeOf } from "../../src/reading/index";

/** Some readings, added up as numbers. */
function sumOf(...texts: string[]) {
  const readings = texts.map(parseUncertain);
  const value = readings.reduce((sum, { value }) => sum + value, 0);
  return madeOf(readings, { does: "sum", value, type: "mm/s rms" }) as { history: NonNullable<unknown> } as never;
}
const four = (text: string, last = text) => sumOf(text, text, text, last);

describe("JCGM 100:2008, from memory", () => {
  it("4.3.7, example: 16.52 within 0.40 either way has a standard uncertainty of 0.23", () => {
    expect(uncertaintyOf("16.52 ± 0.40 um pk").standard.toFixed(2)).toBe("0.23");
    expect(uncertaintyOf("16.52 ± 0.40 um pk").standard).toBeCloseTo(0.4 / Math.sqrt(3), 12);
  });

  it("4.3.3, example: 240 at the level of three standard deviations is 80", () => {
    expect(uncertaintyOf("1000000.325 ± 240 um pk (k=3)").standard).toBeCloseTo(80, 9);
  });

  it("5.1.2: independent inputs of a sum by the root of the sum of squares", () => {
    const { standard, parts } = uncertaintyOf(sumOf("10 ± 0.3 mm/s rms (k=1)", "20 ± 0.4 mm/s rms (k=1)"));
    expect(standard).toBeCloseTo(0.5, 12);
    expect(parts.map(({ share }) => share.toFixed(2))).toEqual(["0.64", "0.36"]);
  });

  it("5.1.6: a power p of an input adds p times its relative uncertainty", () => {
    const to = (type: string) => convertAmplitude(parseUncertain("2 ± 1 % g pk (k=1) at 50 ± 0.2 Hz (k=1)"), type);
    expect(uncertaintyOf(to("m/s2 pk")).relative).toBeCloseTo(0.01, 12);
    expect(uncertaintyOf(to("mm/s pk")).relative).toBeCloseTo(Math.hypot(0.01, 0.004), 12);
    expect(uncertaintyOf(to("um pk")).relative).toBeCloseTo(Math.hypot(0.01, 0.008), 12);
  });

  it("H.1: a length of 50 000 838 nm by parts of 25, 9.7, 2.9 and 16.6 nm has 32 nm", () => {
    const standard = parseUncertain("50000623 ± 25 nm pk (k=1)");
    const between = parseUncertain("215 ± 9.7 nm pk (k=1)");
    const value = standard.value + between.value;
    const sum = { ...standard, value, ...madeOf([standard, between], { does: "sum", value, type: "nm pk" }) };
    const warm = withUncertainty(sum, "± 2.9 nm pk (k=1)", "difference of the expansion coefficients");
    const length = withUncertainty(warm, "± 16.6 nm pk (k=1)", "difference of the temperatures");
    const answer = uncertaintyOf(length);
    expect(answer.value).toBe(50_000_838);
    expect(answer.standard.toFixed(0)).toBe("32");
    expect(answer.parts.map(({ standard }) => standard.toFixed(1))).toEqual(["25.0", "16.6", "9.7", "2.9"]);
  });
});

// the values of the additive model: the Guide draws about zero, which no amplitude lies about; here about 400
describe("JCGM 101:2008, 9.2, from memory", () => {
  const options = { method: "Monte Carlo", draws: 1_000_000 } as const;
  const halfWidth = ([low, high]: readonly [number, number]) => (high - low) / 2;

  it("9.2.2: four normal inputs of standard uncertainty 1 have 2.0 and an interval of 3.92 either way", () => {
    const sum = four("100 ± 1 mm/s rms (k=1)");
    expect(uncertaintyOf(sum).standard).toBeCloseTo(2, 12);
    const drawn = uncertaintyOf(sum, options);
    expect(Math.abs(drawn.standard - 2)).toBeLessThan(0.006);
    expect(Math.abs(halfWidth(drawn.interval) - 3.92)).toBeLessThan(0.02);
    expect(Math.abs((drawn.mean as number) - 400)).toBeLessThan(0.008);
  });

  it("9.2.3: four rectangular ones have 2.0 and 3.88", () => {
    const sum = four("100 ± 1.7320508075688772 mm/s rms");
    expect(uncertaintyOf(sum).standard).toBeCloseTo(2, 12);
    const drawn = uncertaintyOf(sum, options);
    expect(Math.abs(drawn.standard - 2)).toBeLessThan(0.006);
    expect(Math.abs(halfWidth(drawn.interval) - 3.88)).toBeLessThan(0.02);
  });

  it("9.2.4: with one of standard uncertainty 10 they have 10.1 and 17.0", () => {
    const sum = four("100 ± 1.7320508075688772 mm/s rms", "100 ± 17.320508075688775 mm/s rms");
    expect(uncertaintyOf(sum).standard.toFixed(1)).toBe("10.1");
    const drawn = uncertaintyOf(sum, options);
    expect(drawn.standard.toFixed(1)).toBe("10.1");
    expect(Math.abs(halfWidth(drawn.interval) - 17.0)).toBeLessThan(0.06);
  });
});
