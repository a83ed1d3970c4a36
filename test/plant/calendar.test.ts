import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daysAfter, daysBetween, monthsAfter, requireDay } from "../../src/plant/calendar";
import fixture from "../references/dateutil-months.json";

const rows = fixture.rows as [day: string, months: number, later: string, days: number][];

describe("calendar days against dateutil.relativedelta and datetime of Python", () => {
  it(`${rows.length} days, months later and days between`, () => {
    for (const [day, months, later, days] of rows) {
      expect([day, months, monthsAfter(day, months)]).toEqual([day, months, later]);
      expect(daysBetween(day, later)).toBe(days);
      expect(daysAfter(day, days)).toBe(later);
    }
  });

  it("the last day of January is a month later the last of February", () => {
    expect(monthsAfter("2026-01-31", 1)).toBe("2026-02-28");
    expect(monthsAfter("2028-01-31", 1)).toBe("2028-02-29");
    expect(monthsAfter("2024-02-29", 12)).toBe("2025-02-28");
  });

  it("no year has more than four digits", () => {
    expect(monthsAfter("9999-12-31", 12)).toBe("9999-12-31");
    expect(daysAfter("9999-12-30", 400)).toBe("9999-12-31");
  });

  it("a day is one that Date knows too, of the years that it counts alike", () => {
    const day = fc.tuple(fc.integer({ min: 1000, max: 9999 }), fc.integer({ min: 0, max: 13 }), fc.integer({ min: 0, max: 32 }));
    fc.assert(
      fc.property(day, ([year, month, date]) => {
        const text = `${year}-${`${month}`.padStart(2, "0")}-${`${date}`.padStart(2, "0")}`;
        const at = new Date(Date.UTC(year, month - 1, date));
        const isDay = at.getUTCFullYear() === year && at.getUTCMonth() === month - 1 && at.getUTCDate() === date;
        if (isDay) expect(requireDay(text, "a day")).toBe(text);
        else expect(() => requireDay(text, "a day")).toThrow("a day that the calendar has");
      }),
      { numRuns: 1000 },
    );
  });

  it("another form is refused", () => {
    for (const text of ["31.03.2026", "2026-3-1", "2026-03-31T00:00", "", "tomorrow", "2026-02-30\n"]) {
      expect(() => requireDay(text, "a day"), text).toThrow();
    }
  });
});
