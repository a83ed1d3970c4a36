import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { auditChanges } from "../../src/plant/audit-changes";
import { daysAfter } from "../../src/plant/calendar";
import type { PlantColumn } from "../../src/plant/columns";
import type { ChangedSetting, PlantChange } from "../../src/plant/plant-change";
import { celled, plantOf } from "./small-plant";

const on = "2026-12-01";
const approvedBy = "plant engineer";

/** What may be told of an entry besides; undefined for what is left out. */
type More = { readonly [Key in keyof PlantChange]?: PlantChange[Key] | undefined };

function entry(
  line: number,
  date: string,
  tag: string,
  setting: ChangedSetting,
  states: readonly [old: string, now: string],
  more: More = {},
): PlantChange {
  const [old, now] = states;
  return {
    line,
    date,
    tag,
    setting,
    old,
    new: now,
    reason: "new baseline",
    who: "shift B",
    approvedBy,
    ...more,
  } as PlantChange;
}

const fan = celled("LU-01", 2, { trip: "8.6 mm/s rms", "trip delay s": "8", latching: "yes" });
const pump = celled("UP-03", 3, { trip: "9 mm/s rms" });
const plant = plantOf(fan, pump);

/** Findings in short. */
function found(
  changes: readonly PlantChange[],
  options: object = {},
  list = plant,
): (readonly [severity: string, tag: string, code: string])[] {
  return auditChanges(list, changes, { on, ...options }).map(({ severity, tag, code }) => [severity, tag, code]);
}

describe("a record of changes held against the list (common practice, no source)", () => {
  it("a bypass of a day ahead is not bypassed now; one of more than 30 days is warned of", () => {
    const bypass = (date: string, until: string) => found([entry(2, date, "LU-01", "bypass", ["", "trip"], { until })]);
    expect(bypass("2026-12-20", "2026-12-22")).toEqual([["error", "LU-01", "in the future"]]);
    expect(bypass("2026-11-30", "2026-12-30")).toEqual([["note", "LU-01", "bypassed now"]]);
    expect(bypass("2026-11-30", "2036-11-30")).toEqual([
      ["warning", "LU-01", "long bypass"],
      ["note", "LU-01", "bypassed now"],
    ]);
  });

  it("a list whose values the record says gives no finding, however they are written", () => {
    const changes = [
      entry(2, "2026-03-12", "LU-01", "trip", ["9 mm/s rms", "0.86 cm/s rms"]),
      entry(3, "2026-03-12", "LU-01", "trip delay s", ["5", "8.0"]),
      entry(4, "2026-04-02", "LU-01", "latching", ["no", "YES"]),
    ];
    expect(found(changes)).toEqual([]);
  });

  it("a list that says something else was changed without a record", () => {
    const changes = [entry(2, "2026-03-12", "UP-03", "trip", ["9 mm/s rms", "8.4 mm/s rms"])];
    const [one] = auditChanges(plant, changes, { on });
    expect(one).toEqual({
      ...{ tag: "UP-03", line: 3, severity: "error", code: "changed without a record" },
      what: "trip is 9 mm/s rms in the list, and 8.4 mm/s rms by line 2 of the record (2026-03-12, shift B)",
      source: { title: "common practice, no source", provenance: "practice" },
      why: "nobody can tell who changed it, why, and whether it was approved",
      mend: "find out who changed it and why; put it back, or record it with its approval",
    });
  });

  it("another detector or frequency is another value", () => {
    for (const other of ["8.6 mm/s pk", "8.6 mm/s rms at 25 Hz", "8.6 mm/s"]) {
      expect(found([entry(2, "2026-03-12", "LU-01", "trip", ["9 mm/s rms", other])]), other).toHaveLength(1);
    }
  });

  it("entries that do not fit together", () => {
    const changes = [
      entry(2, "2026-03-12", "LU-01", "trip", ["9 mm/s rms", "9.4 mm/s rms"]),
      entry(3, "2026-05-12", "LU-01", "trip", ["9 mm/s rms", "8.6 mm/s rms"]),
    ];
    const [one] = auditChanges(plant, changes, { on });
    expect(one?.what).toBe(
      "trip was 9 mm/s rms on 2026-05-12 by line 3 of the record (2026-05-12, shift B), and 9.4 mm/s rms by what was recorded before",
    );
  });

  it("bypasses: expired, without an expiry, not approved, lifted, late", () => {
    const bypass = (line: number, tag: string, more: More) =>
      entry(line, "2026-11-01", tag, "bypass", ["", "trip"], more);
    expect(found([bypass(2, "LU-01", { until: "2026-11-08" })])).toEqual([["error", "LU-01", "bypass expired"]]);
    expect(found([bypass(2, "LU-01", {})])).toEqual([["error", "LU-01", "bypass without expiry"]]);
    expect(found([bypass(2, "LU-01", { until: on })])).toEqual([["note", "LU-01", "bypassed now"]]);
    expect(found([bypass(2, "LU-01", { until: "2026-11-08", approvedBy: undefined, putBack: "2026-11-03" })])).toEqual([
      ["error", "LU-01", "bypass not approved"],
    ]);
    expect(found([bypass(2, "LU-01", { until: "2026-11-08", putBack: "2026-11-08" })])).toEqual([]);
    expect(found([bypass(2, "LU-01", { until: "2026-11-08", putBack: "2026-11-09" })])).toEqual([
      ["warning", "LU-01", "ended late"],
    ]);
    // lifted by a row of its own, which needs no approval
    const lifted = entry(3, "2026-11-05", "LU-01", "bypass", ["trip", ""], { approvedBy: undefined });
    expect(found([bypass(2, "LU-01", { until: "2026-11-08" }), lifted])).toEqual([]);
    expect(found([lifted])).toEqual([["error", "LU-01", "broken chain"]]);
    // that of the alarm does not lift that of the trip
    const alarm = entry(3, "2026-11-05", "LU-01", "bypass", ["alarm", ""]);
    expect(
      found([
        bypass(2, "LU-01", { until: on }),
        entry(3, "2026-11-02", "LU-01", "bypass", ["", "alarm"], { until: on }),
        alarm,
      ]),
    ).toEqual([["note", "LU-01", "bypassed now"]]);
  });

  it("what was changed for a time and never put back", () => {
    const raised = entry(2, "2026-10-01", "LU-01", "trip", ["7.4 mm/s rms", "8.6 mm/s rms"], { until: "2026-10-31" });
    const [one] = auditChanges(plant, [raised], { on });
    expect([one?.severity, one?.code, one?.what]).toEqual([
      "error",
      "never put back",
      "trip 7.4 mm/s rms to 8.6 mm/s rms, until 2026-10-31, 31 days ago, not put back: line 2 of the record (2026-10-01, shift B)",
    ]);
    expect(found([raised], { on: "2026-10-31" })).toEqual([["note", "LU-01", "stands for a time"]]);
    // put back in its own row, the list must say the old value
    const list = plantOf(celled("LU-01", 2, { trip: "7.4 mm/s rms" }));
    expect(found([{ ...raised, putBack: "2026-10-20" }], {}, list)).toEqual([]);
    expect(found([{ ...raised, putBack: "2026-10-20" }])).toEqual([["error", "LU-01", "changed without a record"]]);
    // by a row of its own
    const back = entry(3, "2026-10-20", "LU-01", "trip", ["8.6 mm/s rms", "7.4 mm/s rms"]);
    expect(found([raised, back], {}, list)).toEqual([]);
    // replaced by a third value
    const third = entry(3, "2026-10-20", "LU-01", "trip", ["8.6 mm/s rms", "8 mm/s rms"]);
    expect(found([raised, third], {}, plantOf(celled("LU-01", 2, { trip: "8 mm/s rms" })))).toEqual([
      ["note", "LU-01", "replaced, not put back"],
    ]);
    // what is put back tomorrow stands today
    expect(found([{ ...raised, putBack: "2026-12-02" }]).map(([, , code]) => code)).toContain("never put back");
  });

  it("not approved, by oneself, in the future, on another machine, on a refused row", () => {
    const change = entry(2, "2026-03-12", "LU-01", "trip", ["9 mm/s rms", "8.6 mm/s rms"]);
    expect(
      found([entry(2, "2026-03-12", "LU-01", "trip", ["9 mm/s rms", "8.6 mm/s rms"], { approvedBy: undefined })]),
    ).toEqual([["warning", "LU-01", "not approved"]]);
    expect(found([{ ...change, approvedBy: " Shift b" }])).toEqual([["warning", "LU-01", "approved by oneself"]]);
    expect(found([{ ...change, date: "2026-12-02" }])).toEqual([["error", "LU-01", "in the future"]]);
    expect(found([{ ...change, tag: "LU-1" }])).toEqual([["error", "LU-1", "unknown tag"]]);
    const refused = { ...plant, refused: [{ line: 9, tag: "LU-09", code: "syntax", message: "" }] };
    expect(found([{ ...change, tag: "LU-09" }], {}, refused)).toEqual([["error", "LU-09", "refused row"]]);
    expect(found([change], {}, plantOf({ ...fan, cells: undefined } as never))).toEqual([
      ["error", "LU-01", "no cells"],
    ]);
  });

  it("with the list as it was before, also what has no entry at all", () => {
    const before = plantOf(
      celled("LU-01", 2, { trip: "9 mm/s rms", "trip delay s": "8", latching: "yes" }),
      celled("UP-03", 3, { trip: "9 mm/s rms" }),
      celled("OLD", 4, {}),
    );
    const change = entry(2, "2026-03-12", "LU-01", "trip", ["9 mm/s rms", "8.6 mm/s rms"]);
    expect(found([change], { before })).toEqual([["warning", "OLD", "machine gone"]]);
    expect(found([], { before }).map(([, tag, code]) => [tag, code])).toEqual([
      ["LU-01", "changed without a record"],
      ["OLD", "machine gone"],
    ]);
  });
});

/** A list, what happened to it with a record of all, and the list after that. */
const history = fc
  .array(
    fc.record({
      tag: fc.constantFrom("A", "B"),
      setting: fc.constantFrom("trip", "alarm", "trip delay s", "sensor", "bypass") as fc.Arbitrary<
        PlantColumn | "bypass"
      >,
      value: fc.integer({ min: 1, max: 4 }),
      days: fc.integer({ min: 0, max: 3 }),
      forATime: fc.boolean(),
    }),
    { minLength: 1, maxLength: 14 },
  )
  .map((acts) => {
    const cells: Record<string, Partial<Record<PlantColumn, string>>> = {
      A: { trip: "9 mm/s rms" },
      B: { "trip delay s": "4" },
    };
    const written = { trip: "mm/s rms", alarm: "mm/s rms", "trip delay s": "", sensor: "mV/g" } as Record<
      string,
      string
    >;
    const before = plantOf(celled("A", 2, { ...cells.A }), celled("B", 3, { ...cells.B }));
    const changes: PlantChange[] = [];
    let day = "2026-01-05";
    const add = (tag: string, setting: ChangedSetting, old: string, now: string, until?: string) =>
      changes.push(entry(changes.length + 2, day, tag, setting, [old, now], until === undefined ? {} : { until }));
    for (const { tag, setting, value, days, forATime } of acts) {
      day = daysAfter(day, days);
      const row = cells[tag] as Partial<Record<PlantColumn, string>>;
      if (setting === "bypass") {
        add(tag, "bypass", "", "trip", daysAfter(day, 5));
        day = daysAfter(day, days);
        add(tag, "bypass", "trip", "");
        continue;
      }
      const old = row[setting] ?? "";
      const now = `${value} ${written[setting]}`.trim();
      if (now === old) continue;
      add(tag, setting as ChangedSetting, old, now, forATime ? daysAfter(day, 5) : undefined);
      row[setting] = now;
      if (!forATime) continue;
      day = daysAfter(day, days);
      add(tag, setting as ChangedSetting, now, old);
      if (old === "") delete row[setting];
      else row[setting] = old;
    }
    return { before, changes, plant: plantOf(celled("A", 2, { ...cells.A }), celled("B", 3, { ...cells.B })) };
  });

describe("a random chain of recorded changes", () => {
  it("gives no finding, in whichever order of days its rows stand", () => {
    fc.assert(
      fc.property(history, fc.boolean(), ({ before, changes, plant: list }, isTold) => {
        expect(found(changes, isTold ? { before } : {}, list)).toEqual([]);
      }),
    );
  });

  it("gives one where any of its entries is dropped", () => {
    fc.assert(
      fc.property(history, fc.nat(), ({ before, changes, plant: list }, which) => {
        fc.pre(changes.length > 0);
        const left = changes.filter((_, i) => i !== which % changes.length);
        expect(found(left, { before }, list).length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
});
