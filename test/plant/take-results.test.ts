import { describe, expect, it } from "vitest";
import { doubtfulPeriods, resultTitles, takeResults } from "../../src/plant/index";
import { format, parseAmplitude } from "../../src/reading/index";
import { machine, plantOf } from "./small-plant";

const at = parseAmplitude;
const on = "2026-12-05";
const heading = resultTitles;
const good = [
  "LU-01-2026-12-01",
  "LU-01",
  "2026-12-03",
  "8 mm/s rms at 79.4 Hz",
  "7.1 mm/s rms",
  "7.9 mm/s rms",
  "5 %",
  "shift B",
];
const check = {
  date: "2025-11-30",
  known: at("8 mm/s rms"),
  asFound: at("8 mm/s rms"),
  asLeft: at("8 mm/s rms"),
  tolerance: "5 %",
};
const plant = plantOf(
  machine("LU-01", 2, { check, tolerance: "5 %" }),
  machine("UP-03", 3),
  machine("TWO", 4),
  machine("TWO", 5),
);

function row(cells: Partial<Record<(typeof resultTitles)[number], string>>): string[] {
  return resultTitles.map((title, i) => cells[title] ?? (good[i] as string));
}

const take = (...rows: string[][]) => takeResults(plant, { heading, rows }, { on });

/** What is refused of one row. */
function refused(cells: Parameters<typeof row>[0]): (string | undefined)[][] {
  return take(row(cells)).refused.map(({ column, code }) => [column, code]);
}

describe("results of checks that come back from the bench", () => {
  it("three decimals behind a comma that was told are no thousands", () => {
    const cells = row({ known: "3,545 mil pp at 79,4 Hz", "as found": "3,512 mil pp", "as left": "" });
    const read = takeResults(plant, { heading, rows: [cells] }, { on, decimal: "," });
    expect([read.refused, read.results[0]?.cells.known, read.results[0]?.cells["as found"]]).toEqual([
      [],
      "3.545 mil pp at 79.4 Hz",
      "3.512 mil pp",
    ]);
  });

  it("a check before the round of its sheet is refused", () => {
    expect(refused({ date: "2026-11-30" })).toEqual([["date", "out-of-range"]]);
    expect(refused({ date: "2026-12-01" })).toEqual([]);
  });

  it("a result is held against its known level, and says what it changes in the list", () => {
    const [one] = take(good).results;
    // by hand: (7.1 - 8) / 8 = -11.25 %, (7.9 - 8) / 8 = -1.25 %
    expect(one?.asFound).toMatchObject({ verdict: "fail" });
    expect(one?.asFound.errorPercent).toBeCloseTo(-11.25, 9);
    expect(one?.asLeft).toMatchObject({ verdict: "pass" });
    expect(one).toMatchObject({
      number: "LU-01-2026-12-01",
      line: 2,
      machineLine: 2,
      before: "2025-11-30",
      remarks: [],
    });
    expect(one?.cells).toEqual({
      ...{
        "check date": "2026-12-03",
        known: "8 mm/s rms at 79.4 Hz",
        "as found": "7.1 mm/s rms",
        "as left": "7.9 mm/s rms",
      },
      "checked by": "shift B",
    });
  });

  it("wrong numbers, tags, days and readings are refused by column", () => {
    expect(refused({ number: "LU-01" })).toEqual([["number", "syntax"]]);
    expect(refused({ number: "LU-01-2026-02-30" })).toEqual([["number", "syntax"]]);
    expect(refused({ number: "LU-02-2026-12-01" })).toEqual([["tag", "out-of-range"]]);
    expect(refused({ number: "LU-01-2025-11-01" })).toEqual([["number", "out-of-range"]]);
    expect(refused({ number: "LU-9-2026-12-01", tag: "LU-9" })).toEqual([["tag", "out-of-range"]]);
    expect(refused({ number: "TWO-2026-12-01", tag: "TWO" })).toEqual([["tag", "out-of-range"]]);
    expect(refused({ date: "2026-12-06" })).toEqual([["date", "out-of-range"]]);
    expect(refused({ date: "2025-11-30" })).toEqual([["date", "out-of-range"]]);
    expect(refused({ date: "3.12.2026" })).toEqual([["date", "missing-option"]]);
    expect(refused({ known: "8 mm/s" })).toEqual([["known", "missing-detector"]]);
    expect(refused({ known: "0 mm/s rms" })).toEqual([["known", "not-positive"]]);
    expect(refused({ "as found": "7.1" })).toEqual([["as found", "missing-unit"]]);
    expect(refused({ "as left": "7.9 g" })).toEqual([["as left", "missing-detector"]]);
    expect(refused({ "as found": "" })).toEqual([["as found", "missing-fact"]]);
    expect(refused({ by: "" })).toEqual([["by", "missing-fact"]]);
    expect(refused({ tolerance: "5" })).toEqual([["tolerance", "missing-unit"]]);
    // a wider one would pass what the list does not
    expect(refused({ tolerance: "20 %" })).toEqual([["tolerance", "out-of-range"]]);
    expect(refused({ tolerance: "" })).toEqual([]);
    expect(refused({ number: "UP-03-2026-12-01", tag: "UP-03", tolerance: "" })).toEqual([
      ["tolerance", "missing-fact"],
    ]);
    expect(take(good, good).refused).toMatchObject([{ line: 3, column: "date" }]);
    expect(take(good.slice(0, 5)).refused).toMatchObject([{ line: 2, code: "length-mismatch" }]);
  });

  it("a row of a machine whose row was refused names that", () => {
    const broken = { ...plant, refused: [{ line: 9, tag: "X", code: "syntax", message: "" }] };
    const { refused: rows } = takeResults(
      broken,
      { heading, rows: [row({ number: "X-2026-12-01", tag: "X" })] },
      { on },
    );
    expect(rows[0]?.message).toContain("line 9 was refused");
  });

  it("a row that nobody filled in is open", () => {
    const { open, results, refused: rows } = take(row({ date: "", "as found": "", "as left": "", by: "" }));
    expect([open, results, rows]).toEqual([[{ line: 2, number: "LU-01-2026-12-01", tag: "LU-01" }], [], []]);
  });

  it("a known level far from the trip is told", () => {
    const [one] = take(row({ known: "4 mm/s rms", "as found": "4 mm/s rms", "as left": "" })).results;
    expect(one?.remarks).toEqual([
      "the known level is 44 % of the trip: it says little of the reading at the trip (common practice, no source)",
    ]);
    expect([one?.asLeft, one?.cells["as left"]]).toEqual([null, ""]);
  });

  it("the tolerance of the list is filled in where it has none", () => {
    const [one] = take(row({ number: "UP-03-2026-12-01", tag: "UP-03" })).results;
    expect([one?.cells.tolerance, one?.before]).toEqual(["5 %", null]);
  });
});

describe("readings in doubt", () => {
  it("a device found low: since the check before, and the trip really came later", () => {
    const [one, ...more] = doubtfulPeriods(plant, take(good).results);
    expect(more).toEqual([]);
    expect(one).toMatchObject({ tag: "LU-01", from: "2025-11-30", to: "2026-12-03", reads: "low", verdict: "fail" });
    // by hand: 9 * 8 / 7.1 = 10.14
    expect(one?.tripsAt && format(one.tripsAt)).toBe("10.1 mm/s rms");
    expect(one?.why).toBe(
      "as found on 2026-12-03 it read 11.3 % low at 8 mm/s rms at 79.4 Hz; a trip set to 9 mm/s rms comes at 10.14 mm/s rms, the error taken as proportional",
    );
  });

  it("found high, dead, left out of tolerance, and one that was never checked before", () => {
    const rows = [
      row({ "as found": "9 mm/s rms", "as left": "8 mm/s rms" }),
      row({ number: "UP-03-2026-12-01", tag: "UP-03", "as found": "0 mm/s rms", "as left": "" }),
    ];
    const found = doubtfulPeriods(plant, take(...rows).results);
    expect(
      found.map(({ tag, from, to, reads, tripsAt }) => [tag, from, to, reads, tripsAt && format(tripsAt)]),
    ).toEqual([
      ["LU-01", "2025-11-30", "2026-12-03", "high", "8.00 mm/s rms"],
      ["UP-03", null, "2026-12-03", "nothing", null],
      ["UP-03", "2026-12-03", null, "nothing", null],
    ]);
  });

  it("of the list alone, since a check that it does not have", () => {
    const list = plantOf(
      machine("A", 2, { check: { ...check, asFound: at("7 mm/s rms") } }),
      machine("B", 3, { check }),
      machine("C", 4),
    );
    expect(doubtfulPeriods(list).map(({ tag, from, to }) => [tag, from, to])).toEqual([["A", null, "2025-11-30"]]);
  });
});
