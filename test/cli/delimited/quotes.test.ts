import { describe, expect, it } from "vitest";
import { hasBareDecimal, hasQuotedDecimal, requireQuotedDecimals } from "../../../src/cli/delimited/quoted-decimals";
import { hasLoneReturn, hasProperQuotes, splitOutsideQuotes } from "../../../src/cli/delimited/quotes";

// RFC 4180, section 2, rules 5 to 7: quotes about a whole field, doubled within
describe("quotation marks of a row", () => {
  it.each(["", "a", "a,b", '""', '"a"', '"a",b', 'a,"b"', ',"b",', '"a,b"', '"a""b"', '"""a"', '"a"""', '"",""', "a,"])(
    "stand as they must: %s",
    (raw) => expect(hasProperQuotes(raw, ",")).toBe(true),
  );

  it.each(['"', 'a"', 'a"b,c', 'a,b"', '"a"b', '"a"b,c', '"a', 'a,"b', '"a""', '"a" ,b', 'a, "b"', '"""', 'a,b,c"d'])(
    "stand elsewhere: %s",
    (raw) => expect(hasProperQuotes(raw, ",")).toBe(false),
  );

  it("the separator is the one of the file", () => {
    expect([hasProperQuotes('"a";b', ";"), hasProperQuotes('"a",b', ";")]).toEqual([true, false]);
  });

  it.each<[string, string[]]>([
    ["", [""]],
    ["a,b", ["a", "b"]],
    ["a,,b,", ["a", "", "b", ""]],
    ['"a,b",c', ["a,b", "c"]],
    ['x,"a,b"', ["x", "a,b"]],
    ['# "x,y",z,"u,v"', ["# x,y", "z", "u,v"]],
    [',"a"', ["", "a"]],
  ])("cells between separators outside of them: %s", (raw, cells) =>
    expect(splitOutsideQuotes(raw, ",")).toEqual(cells),
  );

  it.each<[string, boolean, boolean]>([
    ["a,b", false, false],
    ["a\rb", true, true],
    ['"a\rb",c', false, true],
    ['"a",b\rc', true, true],
    ['a,"b\rc","d"', false, true],
    ['a\rx,"b","c"', true, true],
    ['"b",c,"d"\re', true, true],
  ])("a carriage return outside of them: %j", (raw, quoted, plain) => {
    expect([hasLoneReturn(raw, true), hasLoneReturn(raw, false)]).toEqual([quoted, plain]);
  });
});

// common practice, no source: how spreadsheets write numbers with a comma for decimals between commas
describe("a comma that marks decimals and separates", () => {
  it.each([
    ...['"4,1"', 'a,"4,1",b', '"-4,12"', '"+4,1"', '",5"', '"44,1"', '" 4,1"', '"4,1 "', '"4,1e3"', '"4,1E-12"'],
    ...['"  4,1"', '"4,1  "', '"4,15e+3"', 'a,"4,1"'],
  ])("in quotes: %s", (row) => expect(hasQuotedDecimal(row)).toBe(true));

  it.each([
    ...["4,1", '"4.1"', '"4,"', '"4,1', '"4,1e"', '"x4,1"', '"4,1x"', 'x"4,1"', '"4,1"x', '"1,2,3"', '"4,1 mm"'],
    ...['"*4,1"', '"4 1"', '"4,x"', '"xx,1"'],
  ])("not in quotes: %s", (row) => expect(hasQuotedDecimal(row)).toBe(false));

  it.each([
    ...["4,1", "a,4,1", "4,1,b", "-4,1", "+4,12", " 44,1 ", "  4,1", "4,1  ", "4,1e3", "4,1E-12", "4,1e+1", "x,4,1,y"],
    ...[",5", 'a,"b",4,1', '4,1,"b, c"', '"say ""x""",4,1', '"",4,1', "x, 4,1"],
  ])("two cells that may be one number: %s", (row) => expect(hasBareDecimal(row)).toBe(true));

  it.each([
    ...["4", "a,b", "4,b", "a,4", "4.1,2.2", '"4,1",2,3', '"a","4"', '4,"1"', '"4",1', "4x,1", "4,1x", "x4,1", "4,1e"],
    ...['a,"4, x","1"', '"x",4', '5,"","7"'],
  ])("no such cells: %s", (row) => expect(hasBareDecimal(row)).toBe(false));

  it("is refused where no row shows how the two are told apart", () => {
    const why = (rows: string[], quotes: boolean): unknown => {
      try {
        return requireQuotedDecimals(rows, quotes);
      } catch (error) {
        return [(error as { code: string }).code, (error as Error).message];
      }
    };
    const expected =
      'expected the comma for decimals, or between cells; both only where such numbers stand in quotes, as in ID fan 1,"4,1", ';
    expect(why(["a,1", 'b,"4,1"'], true)).toBeUndefined();
    expect(why(["a,1", "b,4"], true)).toEqual([
      "unknown-option",
      `${expected}received both, and no such number in the first rows`,
    ]);
    expect(why(["a,1", 'b,"4,1"'], false)).toEqual(["unknown-option", `${expected}received both, and --quotes none`]);
  });
});
