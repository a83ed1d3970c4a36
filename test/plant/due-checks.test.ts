import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daysAfter } from "../../src/plant/calendar";
import { dueChecks } from "../../src/plant/due-checks";
import { dueStates } from "../../src/plant/due-states";
import { parseAmplitude } from "../../src/reading/index";
import { machine, plantOf } from "./small-plant";

const at = parseAmplitude;
const on = "2026-12-01";

/** A check that passed as it was left. */
const good = {
  known: at("8 mm/s rms at 2400 r/min"),
  asFound: at("7.9 mm/s rms"),
  asLeft: at("7.9 mm/s rms"),
  tolerance: "5 %",
};

describe("checks that are due (the interval of the list; common practice, no source)", () => {
  it("the most urgent first, then the longest overdue, then as in the list", () => {
    const plant = plantOf(
      machine("NOT", 2, { check: { date: "2026-11-01", ...good }, interval: 6 }),
      machine("LATE", 3, { check: { date: "2025-10-31", ...good }, interval: 12 }),
      machine("LATER", 4, { check: { date: "2024-02-29", ...good }, interval: 12 }),
      machine("NEVER", 5, { interval: 12 }),
      machine("TODAY", 6, { check: { date: "2026-06-01", ...good }, interval: 6 }),
      machine("OPEN", 7, { check: { date: "2026-06-01", ...good } }),
      machine("SOON", 8, { check: { date: "2026-06-10", ...good }, interval: 6 }),
      machine("BAD", 9, { check: { date: "2026-11-20", ...good, asLeft: at("7.2 mm/s rms") }, interval: 12 }),
      machine("AHEAD", 10, { check: { date: "2026-12-02", ...good }, interval: 12 }),
      machine("NONE", 11, { trip: undefined, alarm: undefined }),
    );
    const found = dueChecks(plant, { on, ahead: 10 });
    expect(found.map(({ tag, state, due, days, isDue }) => [tag, state, due, days, isDue])).toEqual([
      ["BAD", "left out of tolerance", "2026-11-20", 11, true],
      ["NEVER", "never checked", null, null, true],
      ["AHEAD", "date ahead", "2027-12-02", -366, true],
      ["LATER", "overdue", "2025-02-28", 641, true],
      ["LATE", "overdue", "2026-10-31", 31, true],
      ["TODAY", "due", "2026-12-01", 0, true],
      ["SOON", "due soon", "2026-12-10", -9, true],
      ["OPEN", "no interval", null, null, false],
      ["NOT", "not due", "2027-05-01", -151, false],
      ["NONE", "nothing to check", null, null, false],
    ]);
    expect(dueChecks(plant, { on }).find(({ tag }) => tag === "SOON")?.state).toBe("not due");
    expect(found.map(({ why }) => why)).toMatchInlineSnapshot(`
      [
        "last checked 2026-11-20; as left it read 10.0 % low; due at once, whatever the interval",
        "no check date in the list, to be checked every 12 months: taken as due at once",
        "last checked 2026-12-02, every 12 months: due 2027-12-02, in 366 days; as left it read 1.3 % low",
        "last checked 2024-02-29, every 12 months: due 2025-02-28, 641 days ago; as left it read 1.3 % low",
        "last checked 2025-10-31, every 12 months: due 2026-10-31, 31 days ago; as left it read 1.3 % low",
        "last checked 2026-06-01, every 6 months: due 2026-12-01, today; as left it read 1.3 % low",
        "last checked 2026-06-10, every 6 months: due 2026-12-10, in 9 days; as left it read 1.3 % low",
        "last checked 2026-06-01; as left it read 1.3 % low; no interval in the list",
        "last checked 2026-11-01, every 6 months: due 2027-05-01, in 151 days; as left it read 1.3 % low",
        "neither setpoint nor sensor nor loop in the list: no device to check",
      ]
    `);
    for (const one of found)
      expect(one).toMatchObject({ what: dueStates[one.state].what, mend: dueStates[one.state].mend });
  });

  it("what the list does not hold of the last check is told", () => {
    const why = (check: object) =>
      dueChecks(plantOf(machine("A", 2, { check: { date: "2026-11-01", ...check }, interval: 6 })), { on })[0]?.why;
    expect(why({})).toContain("what it showed is not in the list");
    expect(why({ ...good, tolerance: undefined })).toContain("no tolerance is in the list");
    expect(why({ ...good, asLeft: at("80 um pp"), known: at("8 mm/s rms") })).toContain("cannot be judged: expected");
  });

  it("a device that was left as found, out of tolerance, is due at once", () => {
    const check = { date: "2026-11-01", known: good.known, asFound: at("7.1 mm/s rms"), tolerance: "5 %" };
    const [one] = dueChecks(plantOf(machine("A", 2, { check, interval: 12 })), { on });
    expect([one?.state, one?.why]).toEqual([
      "left out of tolerance",
      "last checked 2026-11-01; as found, with nothing as left it read 11.3 % low; due at once, whatever the interval",
    ]);
  });

  it("bad options and intervals are refused", () => {
    const plant = plantOf(machine("A", 2, { check: { date: "2026-11-01" }, interval: 6 }));
    for (const options of [{}, { on: "2026-02-30" }, { on: "1.12.2026" }, { on, ahead: -1 }, { on, before: 1 }, null]) {
      expect(() => dueChecks(plant, options as never), JSON.stringify(options)).toThrow();
    }
    for (const interval of [0, -6, Number.NaN, 1201]) {
      const one = plantOf(machine("A", 2, { check: { date: "2026-11-01" }, interval }));
      expect(() => dueChecks(one, { on })).toThrow("interval: ");
    }
  });

  it("the later the day, the more devices are due", () => {
    const checks = fc.array(
      fc.record({ before: fc.integer({ min: 0, max: 2000 }), interval: fc.integer({ min: 1, max: 60 }) }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(checks, fc.integer({ min: 1, max: 900 }), (list, more) => {
        const plant = plantOf(
          ...list.map(({ before, interval }, i) =>
            machine(`M${i}`, i + 2, { check: { date: daysAfter(on, -before) }, interval }),
          ),
        );
        const dueOn = (day: string) =>
          new Set(dueChecks(plant, { on: day }).flatMap(({ tag, isDue }) => (isDue ? [tag] : [])));
        const later = dueOn(daysAfter(on, more));
        for (const tag of dueOn(on)) expect(later).toContain(tag);
        // what is ahead in the round is what is due at its end
        const ahead = dueChecks(plant, { on, ahead: more }).flatMap(({ tag, isDue }) => (isDue ? [tag] : []));
        expect(new Set(ahead)).toEqual(later);
      }),
    );
  });
});
