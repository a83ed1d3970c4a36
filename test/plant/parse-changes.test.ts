import { describe, expect, it } from "vitest";
import { changeTitles, parseChanges } from "../../src/plant/index";

const heading = changeTitles;
const good = [
  "2026-03-12",
  "LU-01",
  "trip",
  "9 mm/s rms",
  "8.6 mm/s rms",
  "new baseline",
  "shift B",
  "plant engineer",
  "",
  "",
];

/** The row with some of its cells replaced. */
function row(cells: Partial<Record<(typeof changeTitles)[number], string>>): string[] {
  return changeTitles.map((title, i) => cells[title] ?? (good[i] as string));
}

/** What is refused of one row: column and code. */
function refused(cells: Parameters<typeof row>[0], options = {}): (string | undefined)[][] {
  return parseChanges({ heading, rows: [row(cells)] }, options).refused.map(({ column, code }) => [column, code]);
}

describe("a record of changes as it is read", () => {
  it("a row is an entry; what is empty is left out", () => {
    expect(parseChanges({ heading, rows: [good] })).toEqual({
      changes: [
        {
          ...{ line: 2, date: "2026-03-12", tag: "LU-01", setting: "trip", old: "9 mm/s rms", new: "8.6 mm/s rms" },
          ...{ reason: "new baseline", who: "shift B", approvedBy: "plant engineer" },
        },
      ],
      refused: [],
    });
  });

  it("in any order, in other letters, with columns of one's own, decimal commas and days first", () => {
    const shuffled = ["Remark", ...[...heading].reverse().map((title) => title.toUpperCase().replace(" ", "_"))];
    const cells = [
      "seen",
      ...[...row({ date: "12.03.2026", old: "9,0 mm/s rms", new: "8,6 mm/s rms", setting: "TRIP" })].reverse(),
    ];
    const { changes } = parseChanges(
      { heading: shuffled, rows: [cells], lines: [7] },
      { decimal: ",", dates: "day-first" },
    );
    expect(changes).toMatchObject([
      { line: 7, date: "2026-03-12", setting: "trip", old: "9.0 mm/s rms", new: "8.6 mm/s rms" },
    ]);
  });

  it("cells that cannot be read are refused by column", () => {
    expect(refused({ date: "12.03.2026" })).toEqual([["date", "missing-option"]]);
    expect(refused({ date: "2026-02-30" })).toEqual([["date", "out-of-range"]]);
    expect(refused({ tag: " " })).toEqual([["tag", "missing-fact"]]);
    expect(refused({ setting: "tripp" })).toEqual([["setting", "unknown-option"]]);
    expect(refused({ setting: "tag" })).toEqual([["setting", "unknown-option"]]);
    expect(refused({ old: "9", new: "8.6" })).toEqual([
      ["old", "missing-unit"],
      ["new", "missing-unit"],
    ]);
    expect(refused({ setting: "trip delay s", old: "5", new: "8 s" })).toEqual([["new", "not-a-number"]]);
    expect(refused({ reason: "", who: "" })).toEqual([
      ["reason", "missing-fact"],
      ["who", "missing-fact"],
    ]);
    expect(refused({ new: "9.0 mm/s rms" })).toEqual([["new", "out-of-range"]]);
    expect(refused({ until: "2026-03-11" })).toEqual([["until", "out-of-range"]]);
    expect(refused({ "put back": "2026-03-11" })).toEqual([["put back", "out-of-range"]]);
    expect(refused({ setting: "bypass" })).toEqual([["new", "out-of-range"]]);
    expect(refused({ setting: "bypass", old: "", new: "" })).toEqual([["new", "out-of-range"]]);
    expect(refused({ setting: "bypass", old: "trip", new: "", until: "2026-03-13" })).toEqual([
      ["until", "out-of-range"],
    ]);
    expect(refused({ setting: "bypass", old: "", new: "trip", until: "2026-03-13" })).toEqual([]);
  });

  it("a setting that was not there, and one that is taken away", () => {
    expect(refused({ old: "" })).toEqual([]);
    expect(refused({ new: "" })).toEqual([]);
    expect(refused({ old: "", new: "" })).toEqual([["new", "out-of-range"]]);
  });

  it("a bypass of nothing that protects, and a tag with an invisible sign, are refused", () => {
    const bypass = { setting: "bypass", old: "" };
    expect(refused({ ...bypass, new: "banana" })).toEqual([["new", "out-of-range"]]);
    expect(refused({ ...bypass, old: "banana", new: "" })).toEqual([["old", "out-of-range"]]);
    for (const what of ["trip", "DE-H channel 2", "Alarm and trip"])
      expect(refused({ ...bypass, new: what })).toEqual([]);
    expect(refused({ tag: "LU\u200b-01" })).toEqual([["tag", "syntax"]]);
  });

  it("of a row with a refused cell nothing is taken, and the others are", () => {
    const { changes, refused: rows } = parseChanges({ heading, rows: [row({ date: "soon" }), good] });
    expect([changes.map(({ line }) => line), rows.map(({ line, tag }) => [line, tag])]).toEqual([[3], [[2, "LU-01"]]]);
  });

  it("a torn row, a heading twice, without one, nearly one", () => {
    expect(parseChanges({ heading, rows: [good.slice(0, 4)] }).refused).toMatchObject([
      { line: 2, code: "length-mismatch" },
    ]);
    expect(() => parseChanges({ heading: [...heading, "tag"], rows: [] })).toThrow(
      "each column of a record of changes once",
    );
    expect(() => parseChanges({ heading: heading.slice(1), rows: [] })).toThrow("with the column date");
    expect(() => parseChanges({ heading: [...heading, "aproved by"], rows: [] })).toThrow("approved by");
    expect(() => parseChanges({ heading: [], rows: [] })).toThrow("received nothing");
  });

  it("a cell guarded against a spreadsheet is the text behind its apostrophe; hostile text stays text", () => {
    const { changes } = parseChanges({
      heading,
      rows: [row({ tag: "'=1+1", reason: "<script>\u001b[31m", who: "'quoted" })],
    });
    expect(changes).toMatchObject([{ tag: "=1+1", reason: "<script>\u001b[31m", who: "'quoted" }]);
  });
});
