import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { raised } from "../../src/core/index";
import { limitOfBound } from "../../src/sql/raised-limit";

describe("the limit of a table and the bound that a query makes of it", () => {
  it("a limit in its own type stands as printed", () => {
    for (const limit of [0.71, 1.8, 4.5, 7.1, 11.8, 29, 57]) {
      expect(limitOfBound(limit, raised(limit), false)).toBe(limit);
    }
  });

  it("a limit that was carried to another type gives its bound to the last digit", () => {
    const factors = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1000, noNaN: true }), factors, (printed, factor) => {
        const [limit, bound] = [printed * factor, raised(printed) * factor];
        const kept = limitOfBound(limit, bound, false);
        expect(raised(kept)).toBeLessThanOrEqual(bound);
        expect(raised(kept) / bound).toBeGreaterThanOrEqual(1 - 2 ** -52);
        expect(Math.abs(kept / limit - 1)).toBeLessThan(1e-15);
      }),
    );
  });

  it("so does one in decibels", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1000, noNaN: true }), (size) => {
        const [limit, bound] = [20 * Math.log10(size / 1e-6), 20 * Math.log10(raised(size) / 1e-6)];
        const kept = limitOfBound(limit, bound, true);
        expect(Math.abs(kept - limit)).toBeLessThan(1e-11);
        expect(kept + 20 * Math.log10(1 + 2 ** -23)).toBeLessThanOrEqual(bound);
      }),
    );
  });
});
