import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type FrequencyText,
  type FrequencyUnit,
  type FrequencyUnitSymbol,
  frequency,
  frequencyUnitSymbol,
  frequencyUnits,
  hertz,
} from "../../src/index";

describe("frequencies", () => {
  it.each([
    ["25 Hz", 25],
    ["0.025 kHz", 25],
    ["1500 r/min", 25],
    ["1500 rpm", 25],
    ["1500rpm", 25],
    ["1500 CPM", 25],
    ["25 r/s", 25],
    ["1500 min-1", 25],
    ["1500 min^-1", 25],
    ["1500 min⁻¹", 25],
    ["1500 1/min", 25],
    ["1500 /min", 25],
    ["1500/min", 25],
    ["1500 1/minute", 25],
    ["1500 revolutions per minute", 25],
    ["1500 rev/minute", 25],
    ["25 cycles per second", 25],
    ["25 rev/sec", 25],
    ["2x 1500 r/min", 50],
    ["2X 1500 rpm", 50],
    ["2 x 1500 rpm", 50],
    ["2× 1500 rpm", 50],
    ["0.5x 3000 r/min", 25],
    ["2x of 1500 rpm", 50],
    ["2x  of   1500 rpm", 50],
    ["2x1500rpm", 50],
    ["1x 25 Hz", 25],
    ["  25   Hz ", 25],
    ["1e3 Hz", 1000],
    [".5 Hz", 0.5],
    ["5. Hz", 5],
  ])("%j is %d Hz", (text, expected) => {
    expect(frequency(text)).toEqual({ hertz: expected });
  });

  it("radians are divided by 2 pi", () => {
    expect(hertz("157 rad/s")).toBe(157 / (2 * Math.PI));
  });

  it("each spelling of each unit is read in any case", () => {
    const spellings = (Object.entries(frequencyUnits) as [FrequencyUnitSymbol, FrequencyUnit][]).flatMap(
      ([symbol, { also = [], spoken }]) => [symbol, ...also, ...spoken].map((spelling) => [spelling, symbol] as const),
    );
    for (const [spelling, symbol] of spellings) expect(frequencyUnitSymbol(spelling.toUpperCase())).toBe(symbol);
  });

  it("units are read with spaces about them", () => {
    expect(frequencyUnitSymbol("  cycles per second ")).toBe("Hz");
  });

  it("null is no frequency", () => {
    expect(() => hertz(null as unknown as FrequencyText)).toThrow(expect.objectContaining({ code: "missing-option" }));
  });

  it("r/min and Hz agree to the last bit where 60 divides", () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 1e6 }), (n) => hertz(`${60 * n} r/min` as FrequencyText) === n));
  });

  it.each([
    ["1,500 r/min", "not-a-number"],
    ["-1500 r/min", "not-positive"],
    ["0 Hz", "not-positive"],
    ["1e999 Hz", "not-finite"],
    ["1e308 kHz", "not-finite"],
    ["1e-320x 1e-300 Hz", "not-positive"],
    ["2x", "syntax"],
    ["x 1500 rpm", "syntax"],
    ["1500", "syntax"],
    ["rpm", "syntax"],
    ["2x 1500", "syntax"],
    ["1500 rmp", "unknown-frequency-unit"],
    ["1500 rpm rpm", "unknown-frequency-unit"],
    ["25 constructor", "unknown-frequency-unit"],
    ["25 max", "unknown-frequency-unit"],
    ["25 Hz x 2", "unknown-frequency-unit"],
    ["25 rev/min-1", "unknown-frequency-unit"],
  ])("%j is refused as %s", (text, code) => {
    expect(() => frequency(text)).toThrow(expect.objectContaining({ code }));
  });

  it("suggests the nearest unit", () => {
    expect(() => frequency("1500 rmp")).toThrow(/did you mean r\/min/);
  });
});
