import fc from "fast-check";
import { judge } from "veladis/severity";
import { parseUncertain, zonesWithin } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";

const machine = "pump 90 kW 2980 r/min category II";
const within = (text: string) => zonesWithin(judge(parseUncertain(text), machine), { draws: 2000 });

describe("the upper end of an interval", () => {
  // 6 dB are a factor of 10^(6/20): ISO 1683, from memory
  it.each([
    ["4.27 mm/s rms ± 6 dB (k=2)", 4.27 * 10 ** (6 / 20), "D"],
    ["3.62 mm/s rms ± 3 dB (k=2)", 3.62 * 10 ** (3 / 20), "C"],
  ])("of %s is no less than what was stated", (text, end, zone) => {
    const { interval, zone: own } = within(text);
    expect(interval.high).toBeGreaterThanOrEqual(end * (1 - 1e-9));
    expect(own).toBe(zone);
  });

  it("is never below the stated one carried alone, whatever else is known of the reading", () => {
    const size = fc.integer({ min: 20, max: 900 }).map((one) => one / 100);
    const decibels = fc.integer({ min: 1, max: 120 }).map((one) => one / 10);
    const shares = fc.integer({ min: 1, max: 100 });
    const stated = fc.oneof(
      decibels.map((one) => [`± ${one} dB`, 10 ** (one / 20)] as const),
      shares.map((one) => [`± ${one} %`, 1 + one / 100] as const),
    );
    const behind = fc.constantFrom("", " (k=2)", " (k=1)");
    fc.assert(
      fc.property(size, stated, behind, fc.constantFrom("", " at 40 ± 0.5 Hz"), (value, [text, factor], k, at) => {
        const { interval } = within(`${value} mm/s rms ${text}${k}${at}`);
        expect(interval.high).toBeGreaterThanOrEqual(value * factor * (1 - 1e-6));
      }),
      { numRuns: 60 },
    );
  });

  it("of a level in dB is that of the level", () => {
    const { interval } = within("132.6 ± 6 dB re 1 nm/s (k=2)");
    expect(interval.high).toBeGreaterThanOrEqual(138.6 - 1e-6);
  });
});
