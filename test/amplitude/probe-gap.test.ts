import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { probeGap } from "../../src/entries/sensor";

const probe = { sensitivity: "200 mV/mil", range: "-2 to -18 V" } as const;
const gap = (volts: string, more: object = {}) => probeGap(volts, { ...probe, ...more });

describe("the gap voltage of a proximity probe", () => {
  it("says 5 mil a volt at 200 mV/mil", () => {
    // "Proximity sensors", a text on centrifugal compressors: a change of 5 mil is one volt
    const { movement } = gap("-9 V", { cold: "-10 V" });
    expect(movement?.mil).toBeCloseTo(5, 12);
    expect(movement?.um).toBeCloseTo(127, 10);
    expect(movement?.direction).toBe("towards the probe");
  });

  it("has 200 mV/mil as 7.87 mV/um", () => {
    // API 670, from memory; exactly 200 / 25.4
    expect(gap("-10 V").sensitivity).toBeCloseTo(200 / 25.4, 12);
    expect(probeGap("-10 V", { ...probe, sensitivity: "7.87 V/mm" }).sensitivity).toBeCloseTo(7.87, 12);
  });

  it("places the shaft in the linear range", () => {
    const { percent, room } = gap("-10 V");
    expect(percent).toBeCloseTo(50, 12);
    // 8 V at 0.2 V/mil either way
    expect([room.towards.mil, room.away.mil]).toEqual([expect.closeTo(40, 10), expect.closeTo(40, 10)]);
  });

  it("tells a wider gap from a smaller one, whatever the sign of the supply", () => {
    expect(gap("-11 V", { cold: "-10 V" }).movement?.direction).toBe("away from the probe");
    expect(gap("-10 V", { cold: "-10 V" }).movement?.direction).toBe("not moved");
    const positive = probeGap("11 V", { ...probe, range: "2 to 18 V", cold: "10 V" });
    expect(positive.movement?.direction).toBe("away from the probe");
  });

  it("judges nothing without a limit", () => {
    expect(gap("-9 V", { cold: "-10 V" }).reached).toBeNull();
    expect(gap("-9 V", { cold: "-10 V", limit: "5 mil" }).reached).toBe(true);
    expect(gap("-9 V", { cold: "-10 V", limit: "0.2 mm" }).reached).toBe(false);
  });

  it("tells of a vibration that leaves the linear range", () => {
    // 300 um peak-to-peak at 200 mV/mil is 2.362 V, half of it either way
    const { swing, warnings } = gap("-3 V", { vibration: "300 um pp" });
    expect(swing?.volts.map((one) => one.toFixed(3))).toEqual(["-1.819", "-4.181"]);
    expect([swing?.inRange, warnings.length]).toEqual([false, 1]);
    expect(gap("-10 V", { vibration: "300 um pp" }).swing?.inRange).toBe(true);
    expect(gap("-10 V", { vibration: "100 um rms" }).assumed).toEqual(["sine"]);
  });

  it("tells of a limit that the linear range ends before", () => {
    // 8.4 V and 7.6 V from the cold gap to the ends of the range, at 0.2 V/um: 42 um and 38 um
    const { warnings, reached } = gap("-9.8 V", { sensitivity: "200 mV/um", cold: "-10.4 V", limit: "100 um" });
    expect(reached).toBe(false);
    expect(warnings.join()).toContain(
      "ends 42.00 um (1.654 mil) towards the probe and 38.00 um (1.496 mil) away from it",
    );
    const one = gap("-9.8 V", { cold: "-10.4 V", limit: "40 mil" }).warnings;
    expect(one).toHaveLength(1);
    expect(one[0]).toContain("ends 965.2 um (38.00 mil) away from it");
    expect(gap("-9.8 V", { cold: "-10.4 V", limit: "38 mil" }).warnings).toEqual([]);
  });

  // a factor of five: common practice, no source
  it.each([
    ["200 mV/um", 1],
    ["8 mV/mil", 1],
    ["200 mV/mil", 0],
    ["100 mV/mil", 0],
    ["4 mV/um", 0],
    ["1.5 mV/um", 1],
    ["39 mV/um", 0],
  ])("tells of a sensitivity far from the usual: %s", (sensitivity, told) => {
    const { warnings } = gap("-10 V", { sensitivity });
    expect(warnings.filter((text) => text.includes("far from the usual"))).toHaveLength(told);
  });

  it("reads volts as they are written", () => {
    for (const written of ["-9800 mV", "-9.8V", "\u22129.8 V", "-9.8 VDC", "-9.8 V d.c.", " -9.8 V dc "])
      expect(gap(written).volts).toBeCloseTo(-9.8, 12);
  });

  it("moves by the difference of two gaps, there and back", () => {
    const volts = fc.double({ min: 2.001, max: 17.999, noNaN: true });
    fc.assert(
      fc.property(volts, volts, (one, two) => {
        const [there, back] = [gap(`-${one} V`, { cold: `-${two} V` }), gap(`-${two} V`, { cold: `-${one} V` })];
        expect(there.movement?.mil).toBeCloseTo(Math.abs(one - two) / 0.2, 8);
        expect(back.movement?.um).toBeCloseTo(there.movement?.um as number, 8);
        const { room } = there;
        expect(room.towards.mil + room.away.mil).toBeCloseTo(80, 8);
      }),
    );
  });

  it.each([
    ["outside the linear range", "-19 V", {}, "out-of-range"],
    ["of nothing: a cable", "0 V", {}, "out-of-range"],
    ["of the other sign", "9.8 V", {}, "out-of-range"],
    ["with a detector", "-9.8 V rms", {}, "wrong-type"],
    ["without a unit", "-9.8", {}, "missing-unit"],
    ["in milliamperes", "-9.8 mA", {}, "unknown-unit"],
    ["with a cold gap outside it", "-9.8 V", { cold: "-1 V" }, "out-of-range"],
    ["with a range across zero", "-9.8 V", { range: "-2 to 18 V" }, "out-of-range"],
    ["with a range of one end", "-9.8 V", { range: "-18 V" }, "syntax"],
    ["by an accelerometer", "-9.8 V", { sensitivity: "100 mV/g" }, "wrong-quantity"],
    ["with a limit and no cold gap", "-9.8 V", { limit: "10 mil" }, "missing-fact"],
    ["with a limit of velocity", "-9.8 V", { cold: "-10 V", limit: "10 mm/s" }, "wrong-quantity"],
    ["with a limit with a detector", "-9.8 V", { cold: "-10 V", limit: "10 mil pp" }, "unknown-unit"],
    ["with a vibration of velocity without its frequency", "-9.8 V", { vibration: "4 mm/s rms" }, "missing-frequency"],
    ["without its range", "-9.8 V", { range: undefined }, "missing-option"],
  ])("is refused %s", (_, volts, more, code) => {
    expect(() => gap(volts, more)).toThrow(expect.objectContaining({ code }));
  });
});
