import { describe, expect, it } from "vitest";
import { bytesOf, quotedCell } from "../../../src/cli/delimited/cells";
import { delimitedWriter } from "../../../src/cli/delimited/delimited-writer";
import { latin1Bytes, latin1Text } from "../../../src/cli/delimited/encodings";
import type { TableForm } from "../../../src/cli/delimited/table-form";
import { toldOf, writtenAs } from "../../../src/cli/delimited/written-as";

const form: TableForm = { separator: ",", lineEnd: "\r\n", mark: "", counted: "line" };

const refusal = (act: () => unknown): unknown => {
  try {
    return act();
  } catch (error) {
    return [(error as { code: string }).code, (error as Error).message];
  }
};

describe("cells as they are written", () => {
  // RFC 4180, section 2, rules 6 and 7
  it.each([
    ["a b", "a b"],
    ["a,b", '"a,b"'],
    ["a\nb", '"a\nb"'],
    ["a\rb", '"a\rb"'],
    ['say "x"', '"say ""x"""'],
    ["a;b", "a;b"],
  ])("%j in quotes where it must be", (text, cell) => expect(quotedCell(text, ",")).toBe(cell));

  // RFC 3629: µ is C2 B5
  it.each([
    ["mm/s ~", "mm/s ~"],
    ["µ", "\u00c2\u00b5"],
    ["aµ", "a\u00c2\u00b5"],
    ["µa", "\u00c2\u00b5a"],
    ["\u007f", "\u007f"],
  ])("%j as bytes of UTF-8", (text, bytes) => expect(bytesOf(text)).toBe(bytes));

  it("separator, line end, mark and preamble stay", () => {
    const writer = delimitedWriter({ ...form, mark: "M", preamble: "above\n" }, false);
    expect([writer.start, writer.row("x,1", ["2", "3"]), writer.row("x", [])]).toEqual([
      "Mabove\n",
      "x,1,2,3\r\n",
      "x\r\n",
    ]);
    expect(delimitedWriter(form, false).start).toBe("");
    expect([writer.cell("µ,1"), writer.number(4.5), writer.kept("a,b")]).toEqual(['"\u00c2\u00b5,1"', "4.5", "a,b"]);
  });

  it("a decimal comma is quoted between commas, and plain elsewhere", () => {
    expect(delimitedWriter(form, true).number(4.5)).toBe('"4,5"');
    expect(delimitedWriter({ ...form, separator: ";" }, true).number("4.5")).toBe("4,5");
  });

  it("without quotes a separator and line ends within a cell are blanks", () => {
    expect(delimitedWriter({ ...form, quotes: "none" }, false).cell('a,b,c\r\nd\re"f')).toBe('a b c d e"f');
  });

  it("the one cell of a row stays one", () => {
    const single = delimitedWriter({ ...form, single: true }, false);
    expect(['a,b "x"', '"a,b"', "ab"].map(single.kept)).toEqual(['"a,b ""x"""', '"a,b"', "ab"]);
    const plain = delimitedWriter({ ...form, single: true, quotes: "none" }, false);
    expect(plain.kept('"ab')).toBe('"ab');
    expect(refusal(() => plain.kept('"\u00c2\u00b5,b'))).toEqual([
      "syntax",
      expect.stringMatching(/^expected a cell without ",", which stands .* --quotes none .*, received "\\"µ,b"$/),
    ]);
  });

  it.each([
    [undefined, [0xc2, 0xb5, 0x61]],
    ["utf-8", [0xc2, 0xb5, 0x61]],
    ["utf-16le", [0xb5, 0, 0x61, 0]],
    ["utf-16be", [0, 0xb5, 0, 0x61]],
    ["latin-1", [0xb5, 0x61]],
  ] as const)("µa in %s", (encoding, bytes) => {
    const writer = delimitedWriter({ ...form, ...(encoding && { encoding }) }, false);
    expect([...writer.encoded(Buffer.from("µa"))]).toEqual(bytes);
  });

  it("what Latin-1 has no byte for is refused, and the character named", () => {
    const writer = delimitedWriter({ ...form, encoding: "latin-1" }, false);
    expect(refusal(() => writer.encoded(Buffer.from("aµ→b")))).toEqual([
      "out-of-range",
      'expected text that Latin-1 can write, in a file of that encoding, received "→"',
    ]);
  });

  // the Encoding Standard, index windows-1252: code points of 0x80 to 0x9f, from memory
  it("all bytes of Latin-1 are read, and written again", () => {
    const all = Buffer.from(Array.from({ length: 256 }, (_, i) => i));
    const high =
      "20ac 81 201a 192 201e 2026 2020 2021 2c6 2030 160 2039 152 8d 17d 8f 90 2018 2019 201c 201d 2022 2013 2014 2dc 2122 161 203a 153 9d 17e 178";
    const points = high.split(" ").map((point) => Number.parseInt(point, 16));
    const expected = [...all].map((byte) => points[byte - 0x80] ?? byte);
    expect([...latin1Text(all)].map((one) => one.codePointAt(0))).toEqual(expected);
    expect(latin1Bytes(latin1Text(all))).toEqual(all);
    expect([latin1Bytes("Ā"), latin1Bytes("\uffff"), latin1Bytes("\u0080")]).toEqual([undefined, undefined, undefined]);
  });
});

describe("how options say that a file is written", () => {
  it("what is not told is not there", () => {
    expect(writtenAs({ "decimal-comma": false })).toStrictEqual({ decimalComma: false });
    expect(toldOf({ decimalComma: false })).toEqual([]);
  });

  it("what is told is there, under the names of its options", () => {
    const as = writtenAs({
      ...{ separator: "pipe", encoding: "latin-1", "header-line": "3", remarks: "//", quotes: "none" },
      ...{ "file-units": "none", "decimal-comma": true },
    });
    expect(as).toStrictEqual({
      ...{ separator: "pipe", encoding: "latin-1", headerLine: 3, remarks: "//", quotes: "none", fileUnits: "none" },
      decimalComma: true,
    });
    expect(toldOf(as)).toEqual([
      ...["--separator", "--encoding", "--header-line", "--remarks", "--quotes", "--file-units", "--decimal-comma"],
    ]);
    expect(toldOf({ headerLine: 2, decimalComma: false })).toEqual(["--header-line"]);
  });

  it.each(["#", "//", "!", "none", "%%", "--", "~{|}", "########", ";", "'", "@["])("the sign %s", (remarks) =>
    expect(writtenAs({ remarks, "decimal-comma": false }).remarks).toBe(remarks),
  );

  it.each(["", "-", "+", ".", '"', "a", "#a", "a#", "#########", " ", "9"])("no sign: %j", (remarks) =>
    expect(refusal(() => writtenAs({ remarks, "decimal-comma": false }))).toEqual([
      "syntax",
      `expected a sign that remarks begin with, such as "#" or "//", or none, received ${JSON.stringify(remarks)}`,
    ]),
  );

  it.each(["0", "-1", "1.5", "1e300"])("no line of a header: %s", (line) =>
    expect(refusal(() => writtenAs({ "header-line": line, "decimal-comma": false }))).toEqual([
      "out-of-range",
      `expected the line of the header, 1 or more, received "${line}"`,
    ]),
  );

  it("the first line is one", () => {
    expect(writtenAs({ "header-line": "1", "decimal-comma": false }).headerLine).toBe(1);
    expect(refusal(() => writtenAs({ "header-line": "x", "decimal-comma": false }))).toEqual([
      "not-a-number",
      expect.stringContaining("the line of the header"),
    ]);
  });
});
