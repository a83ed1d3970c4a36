import { builtInSchemes, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { flatGrades, flatTable } from "../../src/severity/schemes/flat-table";
import { memory } from "../../src/severity/schemes/sources";

const RULE = memory("Site rule 12, invented", "its table");
const columns = [{ as: "mm/s rms", limits: ["A/B", "B/C"], source: RULE, ceilings: RULE }] as const;
const made = (row: readonly unknown[]) =>
  flatTable<"zones">({
    machine: ["category", "power"],
    columns,
    rows: [["I", { to: 200 }, 2, 4, 5, 8], row as ["II"]],
  })[1];

describe("a table as it stands in print", () => {
  it("has cells for all its headings, in every row of every shipped table", () => {
    const faults = (builtInSchemes as readonly Scheme[]).flatMap(({ id, classes }) =>
      classes.filter(({ criteria }) => criteria.length === 0).map(({ note }) => `${id}: ${note}`),
    );
    expect(faults).toEqual([]);
  });

  const heads = "6 are asked for: 2 at the left, then A/B mm/s rms, B/C mm/s rms, alarm mm/s rms, trip mm/s rms";
  it.each([
    ["a cell too few", ["II", null, 2, 4, 5], `row 2 (II, null) has 5 cells; ${heads}`],
    [
      "a cell too few before what is said beside",
      ["II", null, 2, 4, 5, { note: "x" }],
      'row 2 (II, null) has no limit under trip mm/s rms: {"note":"x"}',
    ],
    ["a cell too many", ["II", { to: 9 }, 2, 4, 5, 8, 9], `row 2 (II, {"to":9}) has 7 cells; ${heads}`],
    [
      "a cell too many before what is said beside",
      ["II", null, 2, 4, 5, 8, 9, { note: "x" }],
      `row 2 (II, null) has 8 cells; ${heads}`,
    ],
    ["a word where a limit belongs", ["II", null, "2", 4, 5, 8], "row 2 (II, null) has no limit under A/B mm/s rms: 2"],
  ])("%s: the row says so in words and holds no limit", (_, row, words) => {
    expect(made(row)).toEqual({ note: words, criteria: [] });
  });

  it("takes laws of speed, empty cells and what is said beside", () => {
    const whole = made(["II", null, null, { rootOf: 100 }, 5, 8, { note: "x", bands: { "mm/s rms": [2, 1000] } }]);
    expect(whole).toEqual({
      when: { category: "II" },
      note: "x",
      criteria: [
        {
          as: "mm/s rms",
          limits: { "A/B": null, "B/C": { rootOf: 100 } },
          source: RULE,
          band: [2, 1000],
          ceilings: { alarm: 5, trip: 8, source: RULE },
        },
      ],
    });
  });
});

describe("a table of steps as it stands in print", () => {
  const steps = [
    { as: "mm/s rms", source: RULE },
    { as: "um rms", source: RULE },
  ] as const;

  it("is one class with the upper ends by step and unit", () => {
    expect(
      flatGrades({
        columns: steps,
        rows: [
          ["good", 2, 20],
          ["fair", 4, 40],
        ],
      }),
    ).toEqual([
      {
        criteria: [
          { as: "mm/s rms", limits: { good: 2, fair: 4 }, source: RULE },
          { as: "um rms", limits: { good: 20, fair: 40 }, source: RULE },
        ],
      },
    ]);
  });

  it.each([
    ["few", [2], "row 1 (good) has 2 cells; 3 are asked for: 1 at the left, then mm/s rms, um rms"],
    ["many", [2, 20, 200], "row 1 (good) has 4 cells; 3 are asked for: 1 at the left, then mm/s rms, um rms"],
  ])("with too %s cells says so in words", (_, ends, note) => {
    expect(flatGrades({ columns: steps, rows: [["good", ...ends]] })).toEqual([{ note, criteria: [] }]);
  });
});
