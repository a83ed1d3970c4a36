import { describe, expect, it } from "vitest";
import type { WrittenAs } from "../../../src/cli/delimited/written-as";
import { readText } from "./read";

type As = Partial<WrittenAs>;

const cellsOf = async (content: string | Buffer, as: As = {}): Promise<unknown> =>
  (await readText(content, as)).rows.map(({ cells }) => cells);

/** What a refusal says, on one line. */
async function refusal(content: string | Buffer, as: As = {}): Promise<string> {
  return readText(content, as).then(
    () => "read",
    (error: Error) => `${error.name}: ${error.message}`,
  );
}

const latin1 = (text: string): Buffer => Buffer.from(text, "latin1");
const utf16 = (text: string): Buffer => Buffer.from(text, "utf16le");

describe("1. encoding", () => {
  it.each<[string, Buffer, As, string]>([
    ["the mark of UTF-8", Buffer.from("\ufeffa,b\nµ,1\n"), {}, "utf-8"],
    ["the mark of UTF-16", utf16("\ufeffa,b\nµ,1\n"), {}, "utf-16le"],
    ["the mark of UTF-16, high byte first", utf16("\ufeffa,b\nµ,1\n").swap16(), {}, "utf-16be"],
    ["a mark, and the same is told", utf16("\ufeffa,b\nµ,1\n"), { encoding: "utf-16" }, "utf-16le"],
    ["UTF-16 that is told", utf16("a,b\nµ,1\n"), { encoding: "utf-16" }, "utf-16le"],
    ["UTF-16 that is told, high byte first", utf16("a,b\nµ,1\n").swap16(), { encoding: "utf-16" }, "utf-16be"],
    ["Latin-1 that is told", latin1("a,b\nµ,1\n"), { encoding: "latin-1" }, "latin-1"],
    ["UTF-8 without a mark", Buffer.from("a,b\nµ,1\n"), {}, "utf-8"],
  ])("%s", async (_, content, as, encoding) => {
    const { header, rows, form } = await readText(content, as);
    expect([header, rows.map(({ cells }) => cells), form.encoding]).toEqual([["a", "b"], [["µ", "1"]], encoding]);
  });

  it("Latin-1 has the characters of windows-1252 at 0x80 to 0x9f (Encoding Standard, index windows-1252)", async () => {
    const content = Buffer.from([0x61, 10, 0x80, 0x93, 0x96, 0x9f, 0x81, 10]);
    expect(await cellsOf(content, { encoding: "latin-1" })).toEqual([["€“–Ÿ\u0081"]]);
  });

  it("bytes that are no UTF-8 are refused with their line, and what to tell", async () => {
    expect(await refusal(latin1("a,b\nx,1\n\xb5,1\n"))).toBe(
      "VeladisError: expected text in UTF-8, or --encoding latin-1 for a file in Latin-1, at line 3 of file.csv, received bytes that are no UTF-8",
    );
    expect(await refusal(Buffer.from([0x61, 10, 0xe2, 0x82]))).toContain("at line 2 of");
    expect(await refusal(utf16("\ufeffa\n\ud800\n"))).toContain("text in UTF-16");
    expect(await refusal(utf16("\ufeffa\n1\n").subarray(0, -1))).toContain("half a character");
  });

  it.each<[string, Buffer, As, string]>([
    ["UTF-16", utf16("\ufeffa,b\nx,1\n"), { encoding: "latin-1" }, "--encoding latin-1, and the mark of utf-16"],
    ["UTF-16 too", utf16("\ufeffa\n").swap16(), { encoding: "utf-8" }, "--encoding utf-8, and the mark of utf-16"],
    ["UTF-8", Buffer.from("\ufeffa,b\nx,1\n"), { encoding: "utf-16" }, "--encoding utf-16, and the mark of utf-8"],
  ])("a mark of %s and another encoding told are refused, both named", async (_, content, as, received) => {
    expect(await refusal(content, as)).toContain(`at line 1 of file.csv, received ${received}`);
  });

  it.each([
    ["low byte first", utf16("\ufeff\0a\0\n\0")],
    ["high byte first", utf16("\0\ufeff\0a\0\n").swap16()],
  ])("the mark of UTF-32 is refused, without --encoding utf-16: %s", async (_, content) => {
    const told = await refusal(content);
    expect(told).toContain("received the byte order mark of UTF-32");
    expect(told).not.toContain("--encoding");
  });

  it("NUL is refused", async () => {
    expect(await refusal("a,b\nx,1\ny\0,2\n")).toContain("expected a text file, at line 3 of file.csv");
    expect(await refusal(utf16("a,b\nx,1\n"))).toContain("--encoding utf-16");
    expect(await refusal(utf16("\ufeffa\n1\0\n"))).toContain("a NUL");
  });
});

describe("2. line ends", () => {
  it.each([
    ["line feeds", "a,b\nx,1\ny,2\n", "\n"],
    ["with carriage returns", "a,b\r\nx,1\r\ny,2\r\n", "\r\n"],
    ["carriage returns alone", "a,b\rx,1\ry,2\r", "\r"],
    ["both kinds of line feed", "a,b\r\nx,1\ny,2\r\n", "\r\n"],
    ["both, the other way", 'a,b\nx,1\r\n"y",2\n', "\n"],
  ])("%s", async (_, content, lineEnd) => {
    const { rows, form } = await readText(content);
    expect(rows.map(({ cells, line }) => [...cells, line])).toEqual([
      ["x", "1", 2],
      ["y", "2", 3],
    ]);
    expect(form.lineEnd).toBe(lineEnd);
  });

  it("a carriage return alone in a row of another file: the row is refused", async () => {
    const { rows, refused } = await readText('a,b\nx\ry,1\n"p\rq",2\nz,3\r\r\n');
    expect(refused.map(({ line, why }) => [line, why])).toEqual([
      [2, "syntax"],
      [4, "syntax"],
    ]);
    expect(rows.map(({ cells }) => cells)).toEqual([["p\rq", "2"]]);
    expect(await refusal("a\rb,c\n1,2\n")).toContain("a header without a carriage return");
  });
});

describe("3. preamble", () => {
  it("the lines above --header-line are plain lines, and kept", async () => {
    const { header, rows, form, account } = await readText('Export "of\n\n# x\nkWh;\na;b\n1;2\n', { headerLine: 5 });
    expect([header, rows[0]?.cells, rows[0]?.line]).toEqual([["a", "b"], ["1", "2"], 6]);
    expect(form.preamble).toBe('Export "of\n\n# x\nkWh;\n');
    expect(account.skipped).toEqual({ blank: 0, remarks: 0, preamble: 4 });
  });

  it("a first line sep=; tells the separator", async () => {
    const { header, form, account } = await readText("sep=;\na,x;b\n1;2\n");
    expect([header, form.preamble, account.skipped.preamble]).toEqual([["a,x", "b"], "sep=;\n", 1]);
    expect((await readText("sep=|\nExport\na|b;c\n1|2\n", { headerLine: 3 })).header).toEqual(["a", "b;c"]);
    expect(await refusal("sep=;\na;b\n", { separator: "tab" })).toContain("a line in the file that says semicolon");
    expect((await readText("sep=;\na;b\n", { separator: "semicolon" })).header).toEqual(["a", "b"]);
    expect(await refusal("sep=,\na,b\n", { decimalComma: true })).toContain(
      "both only where such numbers stand in quotes",
    );
  });

  it("no header on that line is refused", async () => {
    expect(await refusal("a\n\nb\n1\n", { headerLine: 2 })).toContain("received a blank line or a remark");
    expect(await refusal("#a\n1\n", { headerLine: 1 })).toContain("--remarks none");
    expect(await refusal("a\n1\n", { headerLine: 4 })).toContain("fewer lines");
    expect(await refusal("a\n1\n", { headerLine: 3 })).toContain("received nothing");
  });
});

describe("4. separator", () => {
  it.each<[string, string, As, string]>([
    ["tab, semicolon or pipe win over commas", "a;b, c\n1,5;2,5\n", {}, "semicolon"],
    ["pipes", "a|b\n1,5|2\n", {}, "pipe"],
    ["tabs, and a semicolon in a row alone", "a\tb\n1;\t2\n", {}, "tab"],
    ["commas", "a,b\n1,2\n", {}, "comma"],
    ["none", "a\n1\n", {}, "none"],
    ["commas in quotes separate nothing", '"Vibration, mm/s"\n4.9\n', {}, "none"],
    ["what is told", "a;b,c\n1;2,3\n", { separator: "comma" }, "comma"],
    ["one column that is told", "a;b\n1;2\n", { separator: "none" }, "none"],
    ["a comma for decimals never separates", "Vibration, mm/s\n4,9\n", { decimalComma: true }, "none"],
    ["a header with spaces behind its commas, and points in the rows", "time, level\n1,4.9\n", {}, "comma"],
    ["a last row that is torn off", "a;b\n1;2\n3;4\n5", {}, "semicolon"],
    ["a line end in a quoted header", '"a;\nb";c\n1;2\n', {}, "semicolon"],
  ])("%s", async (_, content, as, separator) => {
    expect((await readText(content, as)).account.separator).toBe(separator);
  });

  it("The header with a comma and decimal commas: refused, or read as told", async () => {
    const content = "Vibration, mm/s\n4,9\n";
    expect(await refusal(content)).toBe(
      'VeladisError: expected --decimal-comma where "4,9" is one number, or --separator comma where it is 2 cells, at line 2 of file.csv, received it below the header "Vibration, mm/s", and neither told',
    );
    expect(await cellsOf(content, { decimalComma: true })).toEqual([["4,9"]]);
    expect(await cellsOf(content, { separator: "comma" })).toEqual([["4", "9"]]);
    for (const row of ["-4,9", "4, 9", "1.250,5", "4,9e1"]) {
      expect(await refusal(`Vibration, mm/s\nOL,x\n${row}\n`), row).toContain("--decimal-comma");
    }
  });

  it("The header with a unit behind its comma and decimal commas, without a blank", async () => {
    for (const header of ["Vibration,mm/s", "Vibration,mm/s rms", "Vibration (RMS,mm/s)"]) {
      expect(await refusal(`${header}\n4,9\n`), header).toContain("--decimal-comma");
      expect(await cellsOf(`${header}\n4,9\n`, { separator: "comma" }), header).toEqual([["4", "9"]]);
      expect(await cellsOf(`${header}\n4,9.5\n`), header).toEqual([["4", "9.5"]]);
    }
    expect(await cellsOf("time,level\n4,9\n")).toEqual([["4", "9"]]);
    expect(await cellsOf("time,g\n0,1\n1,1.5\n")).toEqual([
      ["0", "1"],
      ["1", "1.5"],
    ]);
  });

  it.each([
    ["a no-break space behind the comma", "Vibration,\u00a0mm/s", "4,9"],
    ["a thin space", "Vibration,\u2009mm/s", "4,9"],
    ["a comma within brackets", "Velocity (mm/s,rms)", "4,9"],
    ["the second comma is one of a heading", "Tag,Vibration, mm/s", "P1,4,9"],
    ["the first is", "Vibration, mm/s,Tag", "4,9,P1"],
    ["a unit behind the number", "Velocity, overall", "4,9 mm/s"],
    ["a reading type behind it", "Velocity, overall", "4,9 mm/s rms"],
    ["a word behind it", "Vibration, mm/s", "4,9 ok"],
    ["a unit without a blank", "Vibration, mm/s", "4,9mm/s"],
    ["a unit behind a comma in the middle", "Tag,Vibration,mm/s", "P1,4,9"],
    ["a mark behind it", "Vibration, mm/s", "4,9*"],
    ["a minus sign behind it", "Vibration, mm/s", "2,1-"],
    ["a detector behind the brackets", "Level (mm/s),rms", "4,9"],
    ["a detector", "Velocity,RMS", "4,9"],
    ["the word unit", "Vibration,unit mm/s", "4,9"],
    ["a comma at the end of the header", "Vibration mm/s,", "4,9"],
    ["a detector in German", "Datum,Schwinggeschwindigkeit,effektiv", "01.02.2024,4,9"],
  ])("a number with a comma is never cut: %s", async (_, header, row) => {
    expect(await refusal(`${header}\n${row}\n`)).toMatch(
      /--decimal-comma|a number with a decimal comma stands in quotes/,
    );
    expect(await cellsOf(`${header}\n${row}\n`, { separator: "comma" })).toEqual([row.split(",")]);
  });

  it("a comma within brackets, and a no-break space in Latin-1", async () => {
    const content = latin1("Vibration,\xa0mm/s\n4,9\n");
    expect(await refusal(content, { encoding: "latin-1" })).toContain("--decimal-comma");
  });

  it.each([
    ["points in the rows", "Tag,Vibration, mm/s", "P1,x,4.9"],
    ["a clock behind a number", "Count, time", "5,12:30"],
    ["a heading in quotes", '"Vibration, mm/s",speed', "4,1480"],
    ["brackets that are closed", "Velocity (mm/s),Speed", "4,1480"],
    ["a level of whole numbers with its unit behind a word", "hour,level mm/s", "0,4"],
    ["an empty last column", "Vibration mm/s,", "4.9,"],
    ["a date", "Count, day", "5,2026-01-02"],
  ])("commas separate all the same: %s", async (_, header, row) => {
    expect(await cellsOf(`${header}\n${row}\n`)).toEqual([row.split(",")]);
  });

  it("Velocity;Remarks, if any", async () => {
    expect(await cellsOf("Velocity;Remarks, if any\n4,9;ok\n")).toEqual([["4,9", "ok"]]);
  });

  it("two readings are refused, and both shown", async () => {
    expect(await refusal("a;b|c\n1;2|3\n")).toContain(
      'received the header "a;b|c" is 2 cells by semicolon, 2 cells by pipe',
    );
    expect(await refusal("a;b\n1;2\n3,4\n5;6\n")).toBe(
      'VeladisError: expected a separator that nobody has to guess: --separator semicolon or --separator none, at line 3 of file.csv, received the header "a;b" is 2 cells by semicolon, 1 cell by none; "3,4" is 1 cell by semicolon, 1 cell by none',
    );
    expect(await refusal("tag,value|unit\nx,4\n")).toContain("--separator pipe or --separator comma");
    expect(await refusal("a;b, c\n1;2,3\n4,5\n")).toContain("at line 3");
  });

  it("a row of another width below the first 1,000 is refused as ragged", async () => {
    const { refused, account } = await readText(`a;b\n${"1;2\n".repeat(1000)}3,4\n5;6;7\n`);
    expect(refused.map(({ line, why }) => [line, why])).toEqual([
      [1002, "length-mismatch"],
      [1003, "length-mismatch"],
    ]);
    expect([account.rowsIn, account.rows, account.refused]).toEqual([1002, 1000, 2]);
    expect(await refusal(`a;b\n${"1;2\n".repeat(998)}3,4\n5;6\n`)).toContain("at line 1000 of");
  });
});

describe("4. more of the separator", () => {
  it("a last row without its line end may be torn off, and decides nothing", async () => {
    const { refused, form } = await readText("a;b\n1;2\n3");
    expect([form.separator, refused.length]).toEqual([";", 1]);
    expect(await refusal("a;b\n1;2\n3\n")).toContain("at line 3 of");
    expect(await refusal("a;b\n3")).toContain("at line 2 of");
    expect(await refusal("Vibration, mm/s\nx,y\n4,9")).toBe("read");
  });

  it("a blank behind each of several commas is how a file separates", async () => {
    expect(await cellsOf("Tag, Value, Count\nP1, 4, 9\n")).toEqual([["P1", " 4", " 9"]]);
    expect(await refusal("Tag, Value,Count\n4,9, 1\n")).toContain("--decimal-comma");
    expect(await refusal("Vibration, mm/s\n4 , 9\n")).toContain("--decimal-comma");
    expect(await cellsOf("Tag, Value, mm/s\n4,9,x\n")).toEqual([["4", "9", "x"]]);
    expect(await refusal("Tag,Value, mm/s\nx, 4 , 9 \n")).toBe("read");
    expect(await refusal("Tag,Value, mm/s\nx,4 , 9 \n")).toContain("a number with a decimal comma stands in quotes");
  });

  it("all pieces of a row must be digits for it to be one number", async () => {
    expect(await cellsOf("Place, level, note\n4,9,x\n")).toEqual([["4", "9", "x"]]);
    expect(await refusal("Place, level, note\n4,9,1\n")).toContain("--decimal-comma");
  });

  it.each(["sep=;", "SEP=;", "sep=;\r"])("a line %j above the header tells it", async (line) => {
    expect((await readText(`${line}\na;b,c\n1;2,3\n`)).rows.map(({ cells }) => cells)).toEqual([["1", "2,3"]]);
  });

  it.each(["xsep=;", "sep=:", "sep=;x", "sep="])("a line %j does not", async (line) => {
    expect(await readText(`${line}\n1\n`, { separator: "none" })).toMatchObject({ header: [line] });
  });

  it("two that are told must be one", async () => {
    expect(await refusal("sep=;\na;b\n", { separator: "semicolon" })).toBe("read");
    expect(await refusal("sep=;\na;b\n", { separator: "tab" })).toBe(
      "VeladisError: expected one separator, received --separator tab, and a line in the file that says semicolon",
    );
  });
});

describe("5. remarks", () => {
  it("begin with #, and are counted; quotation marks mean nothing in them", async () => {
    const { rows, account } = await readText('# a,b\n#a "b\na,b\n# see "x\n1,2\n#end');
    expect(rows.map(({ cells, line }) => [...cells, line])).toEqual([["1", "2", 5]]);
    expect(account).toMatchObject({ rowsIn: 5, rows: 1, skipped: { remarks: 4 } });
  });

  it("with as many cells as the header may be a row: refused, or as told", async () => {
    const content = "tag,value\n#3 fan,4.2\n# x,y\n1,2\n";
    const { refused, rows } = await readText(content);
    expect(refused.map(({ cells, line }) => [...cells, line])).toEqual([
      ["#3 fan", "4.2", 2],
      ["# x", "y", 3],
    ]);
    expect(rows).toHaveLength(1);
    expect((await readText(content, { remarks: "#" })).account).toMatchObject({ rows: 1, skipped: { remarks: 2 } });
    expect(await cellsOf(content, { remarks: "none" })).toHaveLength(3);
  });

  it("of a file of one column are never rows; a # in quotes or within a line is none", async () => {
    expect(await cellsOf("v\n#4\n5\n")).toEqual([["5"]]);
    expect(await cellsOf('a,b\n"x\n#y",1\nz,#2\n')).toEqual([
      ["x\n#y", "1"],
      ["z", "#2"],
    ]);
  });

  it("another sign", async () => {
    expect(await cellsOf("// x\na,b\n//1,2\n#3,4\n", { remarks: "//" })).toEqual([["#3", "4"]]);
  });
});

describe("6. quotes", () => {
  it("stand about a whole cell, doubled within", async () => {
    expect(await cellsOf('a,b\n"x ""y"", \nz",""\n')).toEqual([['x "y", \nz', ""]]);
  });

  it.each([
    ["in a cell", 'a,b\n1,2\n3" line,4\n', 3],
    ["text behind one", 'a,b\n\n"x"y,4\n', 3],
    ["a space behind one", 'a,b\n"x" ,4\n', 2],
    ["the sign of remarks behind one", 'a,b\n#\n"x"#y,4\n', 3],
    ["one that nothing closes", 'a,b\n1,2\n"3,4\n5,6\n', 3],
    ["in the header", 'a"b,c\n1,2\n', 1],
  ])("%s: the run stops, with the line", async (_, content, line) => {
    expect(await refusal(content)).toMatch(
      new RegExp(`^VeladisError: expected quotation marks .*--quotes none.*, at line ${line} of file.csv`),
    );
  });

  it("--quotes none: they are plain characters", async () => {
    expect(await cellsOf('a,b\n3" line,4\n"x,"\n', { quotes: "none" })).toEqual([
      ['3" line', "4"],
      ['"x', '"'],
    ]);
  });
});

describe("7. rows and blank lines", () => {
  it("a row of another width is refused; a row of empty cells is one", async () => {
    const { rows, refused, account } = await readText("\na;b;c\n;;\n\n1;2\n \t\n1;2;3;4\n", { separator: "semicolon" });
    expect(rows.map(({ cells }) => cells)).toEqual([["", "", ""]]);
    expect(refused.map(({ cells, line }) => [cells.length, line])).toEqual([
      [2, 5],
      [4, 7],
    ]);
    expect(account).toMatchObject({ rowsIn: 6, rows: 1, refused: 2, skipped: { blank: 3 } });
  });

  it("in a file of one column an empty line is blank", async () => {
    expect((await readText('v\n\n1\n""\n')).rows.map(({ cells, line }) => [...cells, line])).toEqual([
      ["1", 3],
      ["", 4],
    ]);
  });
});

describe("7. lines that are skipped", () => {
  it("the first row behind one, and the first later one, are noted", async () => {
    const noted = async (content: string, as: As = {}) => (await readText(content, as)).account.behindSkipped;
    expect(await noted("a,b\n1,2\n3,4\n")).toEqual({ first: 0, later: 0 });
    expect(await noted("\n# x\na,b\n1,2\n3,4\n")).toEqual({ first: 0, later: 0 });
    expect(await noted("a,b\n\n1,2\n3,4\n")).toEqual({ first: 3, later: 0 });
    expect(await noted("a,b\n1,2\n\n3,4\n#\n5,6\n")).toEqual({ first: 0, later: 4 });
    expect(await noted("a,b\n\n1,2\n\n\n3,4\n\n5,6\n")).toEqual({ first: 3, later: 6 });
    expect(await noted("a;b\n1\n\n3;4\n", { separator: "semicolon" })).toEqual({ first: 0, later: 4 });
  });

  it("a row of another width is told with the width of the header", async () => {
    const told: string[] = [];
    for (const content of ["v;w\n1\n", "v\n1;2\n"]) {
      const { told: line, refused } = await readText(content, { separator: "semicolon" });
      told.push(`${refused[0]?.why}: ${refused[0]?.expected}, ${refused[0]?.received}; ${line.split(";")[0]}`);
    }
    expect(told).toEqual([
      "length-mismatch: 2 cells, as the header has, 1; rows: 1 in = 0 answered + 1 refused + 0 skipped",
      "length-mismatch: 1 cell, as the header has, 2; rows: 1 in = 0 answered + 1 refused + 0 skipped",
    ]);
  });

  it("the form tells how rows are written, and no more", async () => {
    expect((await readText("a,b\n1,2\n")).form).toStrictEqual({
      ...{ separator: ",", lineEnd: "\n", mark: "", counted: "line", encoding: "utf-8", preamble: "" },
    });
    expect((await readText("\ufeffx\nv\n1\n", { headerLine: 2, quotes: "none" })).form).toStrictEqual({
      ...{ separator: ",", lineEnd: "\n", mark: "\u00ef\u00bb\u00bf", counted: "line", encoding: "utf-8" },
      ...{ preamble: "x\n", quotes: "none", single: true },
    });
    expect((await readText("v\n1\n", { decimalComma: true })).form.separator).toBe(";");
  });

  it("a row of units is counted beside the rows", async () => {
    const { account, told } = await readText("t,v\ns,mm/s\n1,2\n3,4\n");
    expect(account).toStrictEqual({
      ...{ rowsIn: 3, rows: 2, refused: 0, behindSkipped: { first: 0, later: 0 }, separator: "comma", torn: false },
      skipped: { blank: 0, remarks: 0, preamble: 0, units: 1 },
      units: { line: 2, cells: ["s", "mm/s"] },
    });
    expect(told).toContain('1 skipped (1 row of units: "s", "mm/s"); separator: comma');
    expect((await readText("t,v\n1,2\n")).account).toStrictEqual({
      ...{ rowsIn: 1, rows: 1, refused: 0, behindSkipped: { first: 0, later: 0 }, separator: "comma", torn: false },
      skipped: { blank: 0, remarks: 0, preamble: 0 },
    });
  });
});

describe("10. and 11. the account", () => {
  it("tells what became of all lines, the separator, and a last row without line end", async () => {
    expect((await readText("x\na;b\n\n1;2\n#\n1;2;3\n1;2", { headerLine: 2, separator: "semicolon" })).told).toBe(
      "rows: 6 in = 2 answered + 1 refused + 3 skipped (1 blank, 1 remark, 1 above the header); separator: semicolon; the last row has no line end: it may be torn off\n",
    );
    expect((await readText("v\n1\n")).told).toBe(
      "rows: 1 in = 1 answered + 0 refused + 0 skipped; separator: none, one column\n",
    );
  });

  it("an empty file is refused", async () => {
    for (const content of ["", "\n\n", "# x\n", "\ufeff"]) expect(await refusal(content)).toContain("received nothing");
  });
});
