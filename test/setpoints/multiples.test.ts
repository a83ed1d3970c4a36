import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { proposeSetpoints } from "../../src/entries/protection";
import { format } from "../../src/index";

const limits = { "B/C": "4 mm/s rms", "C/D": "8 mm/s rms", source: "maker of the drive" };
const codes = (request: Partial<Parameters<typeof proposeSetpoints>[0]>) =>
  proposeSetpoints({ baseline: "2 mm/s rms", limits, ...request });
const named = (found: ReturnType<typeof codes>) => found.warnings.map(({ code }) => code);

// multiples of a baseline: common practice, no source; the caps of 1.25 times B/C and C/D: ISO 20816-1, from memory
describe("setpoints as multiples of the baseline", () => {
  it("stand at so many times it, and say whose choice that is", () => {
    const { alarm, trip } = codes({ multiples: "alarm 1.5 times, trip 3.5 times" });
    expect([alarm?.stored.value, trip?.stored.value]).toEqual([3, 7]);
    expect(alarm?.reasons[0]).toMatchObject({
      text: "1.5 times the baseline",
      source: { note: "as stated by the user" },
    });
    expect(alarm && format(alarm.stored)).toBe("3.00 mm/s rms");
  });

  it("are lowered to what the rules allow at most, and that is told", () => {
    const found = codes({ multiples: { alarm: 3, trip: 6 } });
    // 1.25 x 4 and 1.25 x 8
    expect([found.alarm?.stored.value, found.trip?.stored.value]).toEqual([5, 10]);
    expect(named(found).filter((code) => code === "multiple limited")).toHaveLength(2);
  });

  it("are held against C/D: a trip above it acts later than the rule, and that is told", () => {
    const found = codes({ multiples: { trip: 4.5 } });
    expect(found.trip?.stored.value).toBe(9);
    expect(named(found)).toEqual(expect.arrayContaining(["multiple above the rule", "trip by multiple"]));
  });

  it("tell of a trip within zone A or B", () => {
    expect(named(codes({ multiples: { trip: 1.9 } }))).toContain("multiple below zone C");
  });

  it("leave the other setpoint to the rules", () => {
    const found = codes({ multiples: "alarm 1.4" });
    expect([found.alarm?.stored.value, found.trip?.stored.value]).toEqual([2.8, 8]);
    expect(named(found)).not.toContain("trip by multiple");
  });

  it("give an alarm without limits, and no trip", () => {
    const { alarm, trip } = proposeSetpoints({ baseline: "2 mm/s rms", scheme: "none", multiples: { alarm: 2 } });
    expect([alarm?.stored.value, trip]).toEqual([4, null]);
  });

  it("of any size never come above 1.25 times the limits", () => {
    const number = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(number, number, number, (baseline, one, more) => {
        const multiples = { alarm: 1 + one, trip: 1 + one + more };
        const { alarm, trip } = codes({ baseline: `${baseline} mm/s rms`, multiples });
        expect(alarm?.stored.value).toBeLessThanOrEqual(5 * (1 + 1e-12));
        expect(trip?.stored.value).toBeLessThanOrEqual(10 * (1 + 1e-12));
        const wanted = Math.min(5, baseline * multiples.alarm);
        expect(alarm?.stored.value).toBeCloseTo(wanted, 9);
      }),
    );
  });

  it.each([
    ["of a trip without limits", { scheme: "none", limits: undefined, multiples: { trip: 3 } }, "missing-fact"],
    ["without a baseline", { baseline: "none", multiples: { alarm: 2 } }, "missing-fact"],
    ["of a baseline of zero", { baseline: "0 mm/s rms", multiples: { alarm: 2 } }, "missing-fact"],
    ["of 1", { multiples: { alarm: 1 } }, "out-of-range"],
    ["whose trip is below the alarm", { multiples: { alarm: 3, trip: 2 } }, "out-of-range"],
    ["that are none", { multiples: {} }, "missing-option"],
    ["of another word", { multiples: "alert 2" }, "syntax"],
    ["said twice", { multiples: "alarm 2, alarm 3" }, "syntax"],
  ])("are refused %s", (_, request, code) => {
    const { limits: _limits, ...rest } = request as { limits?: undefined };
    const given =
      "limits" in request ? { baseline: "2 mm/s rms", ...rest } : { baseline: "2 mm/s rms", limits, ...rest };
    expect(() => proposeSetpoints(given as never)).toThrow(expect.objectContaining({ code }));
  });
});
