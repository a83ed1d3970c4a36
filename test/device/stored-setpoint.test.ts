import { convert, parseAmplitude } from "veladis";
import { storedSetpoint } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { practiceStep } from "../references/common-practice";

describe("the device", () => {
  const step = { step: "0.05 in/s pk" } as const;

  it("common practice, no source: stores the step next to what was asked", () => {
    const { step, asked, stored, percent } = practiceStep;
    const found = storedSetpoint(asked, { step });
    expect(found.acts).toBe("later");
    expect(found.stored.value).toBeCloseTo(parseAmplitude(stored).value, 12);
    expect(found.percent).toBeCloseTo(percent, 9);
  });

  it("asked 0.33, stored 0.35: the difference and its effect are told", () => {
    const found = storedSetpoint("0.33 in/s pk", step);
    expect(found).toMatchObject({ acts: "later", stored: { value: 0.35 } });
    expect(found.difference).toBeCloseTo(0.02, 12);
    // 0.02 / 0.33 is 6.06 %
    expect(found.effect).toBe(
      "the device stores 0.350 in/s pk for 0.330 in/s pk: levels up to 6.1 % above what was asked do not act",
    );
    expect(storedSetpoint("0.35 in/s pk", step).acts).toBe("as asked");
    expect(storedSetpoint("0.33 in/s pk", step, undefined, "down")).toMatchObject({
      acts: "earlier",
      stored: { value: 0.3 },
    });
  });

  it("says what a setting comes to", () => {
    const effect = (...given: Parameters<typeof storedSetpoint>) => storedSetpoint(...given).effect;
    expect(effect("0.33 in/s pk", {})).toBe("no steps of the device were given");
    expect(effect("0.33 in/s pk", { lowest: "0.1 in/s pk" })).toBe("no steps of the device were given");
    expect(effect("0.33 in/s pk", { highest: "1 in/s pk" })).toBe("the device stores what was asked");
    expect(effect("0.35 in/s pk", step)).toBe("the device stores what was asked");
    // 0.03 / 0.33 is 9.09 %
    expect(effect("0.33 in/s pk", step, undefined, "down")).toBe(
      "the device stores 0.300 in/s pk for 0.330 in/s pk: it acts at a level 9.1 % lower than asked",
    );
    expect(effect("2 in/s pk", { highest: "1 in/s pk" })).toMatch(/a level 50\.0 % lower than asked/);
  });

  it("goes to the step below, the nearest or the one above, as the device does", () => {
    const stored = (asked: string, rounds: "down" | "nearest" | "up") =>
      storedSetpoint(`${asked} in/s pk`, { ...step, rounds }).stored.value;
    expect((["down", "nearest", "up"] as const).map((rounds) => stored("0.31", rounds))).toEqual([0.3, 0.3, 0.35]);
    expect((["down", "nearest", "up"] as const).map((rounds) => stored("0.33", rounds))).toEqual([0.3, 0.35, 0.35]);
  });

  it("leaves a setting on a step where it is, though binary numbers say it lies a hair beside", () => {
    // 0.3 / 0.1 is 2.9999999999999996, 100000.2 / 0.1 is 1000001.9999999999
    for (const [asked, step] of [
      ["0.3", "0.1"],
      ["100000.2", "0.1"],
      ["10000000.1", "0.1"],
      ["0.7", "0.1"],
    ] as const) {
      for (const rounds of ["down", "up", "nearest"] as const) {
        const found = storedSetpoint(`${asked} mm/s rms`, { step: `${step} mm/s rms`, rounds });
        expect(found).toMatchObject({ stored: { value: Number(asked) }, difference: 0, percent: 0, acts: "as asked" });
      }
    }
    // 2.54 mm/s is 0.09999999999999999 in/s here
    for (const asked of ["2.54 mm/s pk", "5.08 mm/s pk", "17.78 mm/s pk", "0.0254 mm/s pk"]) {
      const found = storedSetpoint(asked, { step: "0.001 in/s pk", rounds: "down" });
      expect(found).toMatchObject({ difference: 0, acts: "as asked", effect: "the device stores what was asked" });
    }
  });

  it("shows another quantity at a frequency, and holds its lowest and highest themselves", () => {
    const { stored } = storedSetpoint("7.1 mm/s rms", { step: "1 um pp" }, "25 Hz", "down");
    expect(stored).toMatchObject({ unit: "um", detector: "pp" });
    expect(stored.value).toBe(Math.floor(convert(7.1, "mm/s rms", "um pp", { at: "25 Hz" })));
    expect(() => storedSetpoint("7.1 mm/s rms", { step: "1 um pp" })).toThrow(
      expect.objectContaining({ code: "missing-frequency" }),
    );
    const range = { lowest: "1 mm/s rms", highest: "25 mm/s rms" };
    expect(storedSetpoint("1 mm/s rms", range)).toMatchObject({ stored: { value: 1 }, acts: "as asked" });
    expect(storedSetpoint("25 mm/s rms", range)).toMatchObject({ stored: { value: 25 }, acts: "as asked" });
    // nearer to zero than to the first step: nothing that could be set
    expect(() => storedSetpoint("0.01 in/s pk", step)).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });

  it("holds what it can, in its own unit", () => {
    expect(storedSetpoint("9 mm/s rms", { step: "0.01 in/s pk" }).stored).toMatchObject({ value: 0.5, unit: "in/s" });
    expect(storedSetpoint("99 mm/s rms", { highest: "25 mm/s rms" }).stored.value).toBe(25);
    expect(() => storedSetpoint("0.1 mm/s rms", { lowest: "1 mm/s rms" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => storedSetpoint("1 mm/s rms", { rounds: "off" as never })).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    );
  });
});
