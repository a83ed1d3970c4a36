import { describe, expect, it } from "vitest";
import { columnIndex, columnsListed } from "../../../src/cli/delimited/column-index";
import { requireNewTitles } from "../../../src/cli/delimited/new-titles";
import { numberCell } from "../../../src/cli/delimited/number-cell";
import { findTimeUnit, secondsIn } from "../../../src/cli/delimited/time-units";
import { pointedWords } from "../../../src/core/index";

const refusal = (act: () => unknown): unknown => {
  try {
    return act();
  } catch (error) {
    return [(error as { code: string }).code, (error as Error).message];
  }
};

describe("the column that is meant", () => {
  const header = ["Place", " Value ", "2", "x", "x", "7", "7", "", "", "", "", ""];

  it.each([
    ["Place", 0],
    [" Value", 1],
    ["Value ", 1],
    ["#2", 1],
    // a name goes before a number
    ["2", 2],
    ["1", 0],
    ["12", 11],
    ["#12", 11],
  ])("%s", (column, index) => expect(columnIndex(header, column)).toBe(index));

  it.each(["0", "#0", "13", "-1", "1.5", "value", "##1", "1#", "a1", "1a", "#"])("none: %s", (column) => {
    const told = refusal(() => columnIndex(header, column)) as string[];
    expect(told[0]).toBe("unknown-option");
    expect(told[1]).toContain("a column of the header, by name or number");
  });

  it("several of one name", () => {
    expect(refusal(() => columnIndex(header, "x"))).toEqual([
      "syntax",
      'expected a column by its number, 4 or 5, where several have one name, received "x"',
    ]);
    expect(refusal(() => columnIndex(header, " 7"))).toEqual([
      "syntax",
      'expected a column by its number, #6 or #7, where several have one name, received "7"',
    ]);
    expect(refusal(() => columnIndex(["a7", "7a", "a7", "7a"], "a7"))).toEqual([
      "syntax",
      expect.stringContaining("number, 1 or 3, where"),
    ]);
    expect(refusal(() => columnIndex(["a7", "7a", "a7", "7a"], "7a"))).toEqual([
      "syntax",
      expect.stringContaining("number, 2 or 4, where"),
    ]);
  });

  it("as much of the header as helps is listed", () => {
    const long = "v".repeat(40);
    expect(columnsListed([long, `${long}w`])).toEqual([long, `${long}…`]);
    expect(columnsListed(Array.from({ length: 101 }, (_, i) => `c${i}`))).toHaveLength(100);
  });

  it("a title that is added stands once", () => {
    expect(requireNewTitles(["a", "b"], ["c", "d"])).toEqual(["c", "d"]);
    const twice =
      'expected a table without the columns that are added, and each added once, received a second column "c"';
    expect(refusal(() => requireNewTitles(["a", " c "], ["b", "c"]))).toEqual(["syntax", twice]);
    expect(refusal(() => requireNewTitles(["a"], ["c", "c"]))).toEqual(["syntax", twice]);
  });
});

describe("numbers in cells", () => {
  it.each<[string, boolean, number]>([
    ["4.5", false, 4.5],
    [" 4.5 ", false, 4.5],
    ["4,5", true, 4.5],
    [" 4,5 ", true, 4.5],
    ["-1e3", true, -1000],
    ["7", true, 7],
  ])("%j with a comma for decimals: %s", (cell, comma, value) =>
    expect(numberCell(cell, "a level", comma)).toBe(value),
  );

  const byComma = "expected a level, with a comma for decimals, received ";
  it.each<[string, boolean, string, string]>([
    [
      "4,5",
      false,
      "not-a-number",
      "a level, with a point for decimals (--decimal-comma where a comma stands for them)",
    ],
    [
      "4.5",
      true,
      "not-a-number",
      "expected a number with a comma for decimals and no point, by --decimal-comma, received",
    ],
    ["4,5,6", true, "not-a-number", `${byComma}"4,5,6"`],
    ["many", true, "not-a-number", `${byComma}"many"`],
    ["many", false, "not-a-number", "a level"],
    ["4.5 ± 0.5", false, "syntax", "expected a level without ±, which a column does not carry"],
    ["4,5 ± 0,5", true, "syntax", 'received "4,5 ± 0,5"'],
  ])("%s with a comma for decimals %s: refused", (cell, comma, code, message) => {
    expect(refusal(() => numberCell(cell, "a level", comma))).toEqual([code, expect.stringContaining(message)]);
  });

  it.each([
    ["45 kW, 1480 r/min", "45 kW, 1480 r/min"],
    ["45,5 kW", "45.5 kW"],
    ["a 45,5 kW", "a 45.5 kW"],
    ["(45,5)", "(45.5)"],
    ["45.5 kW", "45.5 kW"],
    ["4,55 MW, 0,480 m", "4.55 MW, 0.480 m"],
    ["x45,5", "x45,5"],
    ["x,45,5", "x,45.5"],
    ["1,4801", "1.4801"],
    ["1480,125", "1480.125"],
    ["12,34", "12.34"],
  ])("words on a machine: %s", (words, read) => {
    expect([pointedWords(words, true), pointedWords(words, false)]).toEqual([read, words]);
  });

  it.each([
    ["1,480 r/min", "expected a number that is read one way: 1480, or 1,48, received", '"1,480"'],
    ["at 12.500", "expected a number that is read one way: 12500, or 12,5, received", '"12.500"'],
    ["125,000", "expected a number that is read one way: 125000, or 125,0, received", '"125,000"'],
    ["1.250,5", "expected a number with one comma, before the decimals, and no point, by --decimal-comma", '"1.250,5"'],
  ])("words that are read two ways are refused: %s", (words, expected, received) => {
    const told = refusal(() => pointedWords(words, true)) as string[];
    expect(told[0]).toBe("not-a-number");
    expect(told[1]).toContain(expected);
    expect(told[1]).toContain(received);
  });
});

// SI Brochure, 9th edition, tables 1, 7 and 8
describe("units of time", () => {
  it.each([
    ["s", "s", 1],
    ["S", undefined, 0],
    ["SEC", "s", 1],
    ["Minutes", "min", 60],
    ["H", undefined, 0],
    ["hrs", "h", 3600],
    ["days", "d", 86_400],
    ["D", undefined, 0],
    ["MS", "ms", 0.001],
    ["μs", "us", 1e-6],
    ["µs", "us", 1e-6],
    ["ns", "ns", 1e-9],
    ["fortnights", undefined, 0],
  ] as const)("%s", (word, unit, seconds) => {
    expect(findTimeUnit(word)).toBe(unit);
    if (unit !== undefined) expect(secondsIn(unit, 1)).toBe(seconds);
  });

  it("three milliseconds are exactly 0.003 s", () => {
    expect([secondsIn("ms", 3), secondsIn("s", 3), secondsIn("min", 1.5)]).toEqual([0.003, 3, 90]);
  });
});
