import { delayAdvice } from "veladis/protection";
import { describe, expect, it } from "vitest";

type Machine = Parameters<typeof delayAdvice>[0];

const LAST = "an alarm may wait longer than a trip; where a trip must be quick and sure, voting is better than delay";
const FAST = "1 s above 3600 r/min, where damage spreads within seconds";
const HIGH_ENERGY = "about 1 s, not more than 3 s";

const told = (machine: Machine, hertz?: number) => {
  const { trip, alarm, longest, reasons } = delayAdvice(machine, hertz);
  return { trip, alarm, longest, reasons: reasons.map(({ text }) => text) };
};

// the delays themselves are common practice, no source
describe("the delay of a trip, with its reasons", () => {
  it("is that of the kind of machine", () => {
    expect(told("pump")).toEqual({
      trip: 3,
      alarm: 5,
      longest: 10,
      reasons: ["3 s for a pump: rides out bursts of cavitation and valve movements", LAST],
    });
    expect(told(undefined, 25)).toEqual({
      trip: 3,
      alarm: 5,
      longest: 10,
      reasons: ["3 s for a machine: rides out knocks and passing disturbances", LAST],
    });
  });

  it("names print for what was met in print, and practice for what is shorter", () => {
    const [pump, gear] = [delayAdvice("pump", 25), delayAdvice("gear drive", 25)];
    expect(pump.reasons[0]?.source.title).toMatch(/3 s and 5 s met in practice/);
    expect(gear.reasons[0]?.source.title).toBe("common practice, no source");
    expect(gear).toMatchObject({ trip: 2, alarm: 5, longest: 5 });
  });

  it("is a second above 3600 r/min, not at it, and never longer than three", () => {
    expect(told("fan", 60)).toMatchObject({ trip: 5, longest: 10 });
    expect(told("fan", 60).reasons).not.toContain(FAST);
    expect(told("fan", 60.1)).toMatchObject({ trip: 1, alarm: 10, longest: 3 });
    expect(told("fan", 60.1).reasons[1]).toBe(FAST);
    expect(delayAdvice("fan", 60.1).reasons[1]?.source.title).toMatch(/API 670/);
  });

  it("is a second for what turns with high energy, fast or slow, and that is said once", () => {
    for (const hertz of [undefined, 50, 200]) {
      const { reasons, ...times } = told("steam turbine", hertz);
      expect(times).toEqual({ trip: 1, alarm: 3, longest: 3 });
      expect(reasons.slice(1)).toEqual([HIGH_ENERGY, LAST]);
    }
    expect(delayAdvice("compressor", 50).reasons[1]?.source.title).toMatch(/API 670/);
    expect(told("pump", 50).reasons).not.toContain(HIGH_ENERGY);
  });

  it("lasts ten turns of a slow shaft, and the alarm no less", () => {
    expect(told("pump", 2)).toMatchObject({ trip: 5, alarm: 5, longest: 10 });
    expect(told("fan", 0.5)).toEqual({
      trip: 20,
      alarm: 20,
      longest: 20,
      reasons: [
        "5 s for a fan: rides out draught pulsation and a passing stall",
        "20 s at 30.0 r/min, so that ten turns are measured before the machine is stopped",
        LAST,
      ],
    });
    // just ten turns in the usual time need no more
    expect(told("fan", 2).reasons).toHaveLength(2);
    expect(told("fan", 1.9)).toMatchObject({ trip: 6, alarm: 10, longest: 10 });
  });
});
