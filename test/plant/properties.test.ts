import fc from "fast-check";
import { auditPlant } from "veladis/plant";
import { describe, expect, it } from "vitest";
import { type Cells, plantOf } from "./lists";

const on = "2026-11-28";

/** Cells that grow worse from the first to the last, with the rule that says so. */
const worsening = {
  "trip above ceiling": ["trip", ["7 mm/s rms", "8.8 mm/s rms", "9 mm/s rms", "12 mm/s rms"]],
  "trip above the maker's ceiling": ["ceiling", ["9 mm/s rms", "7 mm/s rms", "6.8 mm/s rms", "5 mm/s rms"]],
  "alarm at the baseline": ["baseline", ["2 mm/s rms", "5.5 mm/s rms", "5.6 mm/s rms", "9 mm/s rms"]],
  "loop does not carry the trip": [
    "loop",
    ["0 to 20 mm/s rms", "0 to 7 mm/s rms", "0 to 6.5 mm/s rms", "0 to 5 mm/s rms"],
  ],
  "baseline of few readings": ["baseline count", ["20", "10", "9", "1"]],
  "trip delay above coast-down": ["coast-down s", ["90", "9", "8", "1"]],
  "start-up not ridden out": ["start-up s", ["2", "8", "9", "60"]],
  "hysteresis within the spread": [
    "baseline deviation",
    ["0.1 mm/s rms", "0.2 mm/s rms", "0.3 mm/s rms", "0.6 mm/s rms"],
  ],
  "check overdue": ["check date", ["2026-11-01", "2025-11-28", "2025-11-27", "2020-01-01"]],
} as const;
const codes = Object.keys(worsening) as (keyof typeof worsening)[];

const grades = fc.array(fc.nat(3), { minLength: codes.length, maxLength: codes.length });
const cellsOf = (by: readonly number[]): Cells =>
  Object.fromEntries(codes.map((code, i) => [worsening[code][0], worsening[code][1][by[i] as number] as string]));
const foundIn = (cells: Cells) =>
  new Set(
    auditPlant(plantOf(cells), { on })
      .findings.map(({ code }) => code as string)
      .filter((code) => code in worsening),
  );

describe("the audit of any list", () => {
  it("a row made worse never loses a finding", () => {
    fc.assert(
      fc.property(grades, grades, (one, more) => {
        const worse = one.map((grade, i) => Math.max(grade, more[i] as number));
        const before = foundIn(cellsOf(one));
        const after = foundIn(cellsOf(worse));
        // what the trip is held against grows with it: a higher trip is further from baseline and alarm, and no rule here says less of it
        for (const code of before) expect(after).toContain(code);
      }),
      { numRuns: 60 },
    );
  });

  it("the order of rows changes no finding", () => {
    fc.assert(
      fc.property(fc.array(grades, { minLength: 2, maxLength: 6 }), fc.nat(), (list, turn) => {
        const rows = list.map((by, i) => ({ ...cellsOf(by), tag: `T-${i}` }));
        const by = turn % rows.length;
        const turned = [...rows.slice(by), ...rows.slice(0, by)].reverse();
        const plain = (all: readonly Cells[]) =>
          auditPlant(plantOf(...all), { on })
            .findings.map(({ line: _, ...one }) => JSON.stringify(one))
            .sort();
        expect(plain(turned)).toEqual(plain(rows));
      }),
      { numRuns: 30 },
    );
  });
});
