import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { accountText } from "../../../src/cli/delimited/account-text";
import { byteCounter } from "../../../src/cli/delimited/byte-counter";
import { writtenAs } from "../../../src/cli/delimited/written-as";
import { VeladisError } from "../../../src/core/index";
import { readText } from "./read";

const told = fc.record(
  {
    separator: fc.constantFrom("comma", "semicolon", "tab", "pipe", "none"),
    headerLine: fc.integer({ min: 1, max: 4 }),
    remarks: fc.constantFrom("#", "none", ";", "##"),
    quotes: fc.constant("none" as const),
    decimalComma: fc.boolean(),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<object>;

describe("the account", () => {
  it("adds up for whatever stands in a file, however it is cut, or the file is refused", async () => {
    let read = 0;
    let tried = 0;
    const pieces = fc.constantFrom(...',;|\t"\n\r# ', "\n", "\n", "\r\n", '""', "a", "4,9", "#x", "\n#", '\n"', '"\n');
    await fc.assert(
      fc.asyncProperty(
        fc.array(pieces, { maxLength: 40 }),
        fc.constantFrom("", "a;b\n", "a,b\r\n", "a\n"),
        told,
        fc.array(fc.nat(80), { maxLength: 5 }),
        async (parts, header, as, cuts) => {
          const content = header + parts.join("");
          tried++;
          try {
            const { rows, refused } = await readText(content, as, cuts);
            read++;
            const again = await readText(content, as);
            expect([rows, refused]).toEqual([again.rows, again.refused]);
          } catch (error) {
            if (!(error instanceof VeladisError)) throw error;
          }
        },
      ),
      { numRuns: 2000 },
    );
    expect(read).toBeGreaterThan(tried / 5);
  });

  it("that does not add up is a fault of the program", () => {
    const skipped = { blank: 1, remarks: 2, preamble: 3 };
    const behindSkipped = { first: 0, later: 0 };
    const account = {
      rowsIn: 10,
      rows: 3,
      refused: 1,
      skipped,
      behindSkipped,
      separator: "comma",
      torn: false,
    } as const;
    expect(accountText(account, { answered: 2, refused: 2 }, false)).toBe(
      "rows: 10 in = 2 answered + 2 refused + 6 skipped (1 blank, 2 remarks, 3 above the header); separator: comma\n",
    );
    expect(JSON.parse(accountText(account, { answered: 2, refused: 2 }, true))).toEqual({
      rows: { in: 10, answered: 2, refused: 2, skipped, separator: "comma", torn: false },
    });
    const fault = /^veladis has lost count, which is a fault of veladis: 1[01] rows in, 4 read/;
    for (const [one, counts] of [
      [
        { ...account, rowsIn: 11 },
        { answered: 2, refused: 2 },
      ],
      [account, { answered: 2, refused: 1 }],
    ] as const) {
      expect(() => accountText(one, counts, false)).toThrow(fault);
      expect(() => accountText(one, counts, false)).not.toThrow(VeladisError);
    }
  });
});

describe("the counter of bytes", () => {
  const as = { encoding: "utf-8", mark: 0, lineEnd: "\n", preamble: 0, sign: "#", quotes: true } as const;
  const count = (text: string | Buffer, more: object = {}): number => {
    const counter = byteCounter({ ...as, ...more });
    for (const byte of Buffer.from(text)) counter.take(Uint8Array.of(byte));
    return counter.rows();
  };

  it.each<[string, number, object]>([
    ["a\n1\n2\n", 2, {}],
    ["a\n1\n2", 2, {}],
    ['a\n"1\n2"\n3\n', 2, {}],
    ['a\n"1\n2"\n3\n', 3, { quotes: false }],
    ['a\n# "\n2\n', 2, {}],
    ['a\n# "\n2\n', 1, { sign: undefined }],
    ['a\n## "\n# "\n2"\n', 2, { sign: "##" }],
    ['"\na\n1\n', 2, { preamble: 1 }],
    ["a\r1\n2\r", 1, { lineEnd: "\r" }],
    ["\ufeff#\na\n", 1, { mark: 3 }],
    ["a\n\n\r\n", 2, {}],
  ])("%j", (text, rows, more) => {
    expect(count(text, more)).toBe(rows);
    const wide = Buffer.from(text.replace("\ufeff", ""), "utf16le");
    expect(count(wide, { ...more, mark: 0, encoding: "utf-16le" })).toBe(rows);
    expect(count(Buffer.from(wide).swap16(), { ...more, mark: 0, encoding: "utf-16be" })).toBe(rows);
  });

  it("is no line feed in another character of UTF-16", () => {
    expect(count(Buffer.from("\u0a0a\u220a\u0a22\n1\n", "utf16le"), { encoding: "utf-16le" })).toBe(1);
  });
});

describe("options that say how a file is written", () => {
  it("are checked", () => {
    const none = { "decimal-comma": false };
    expect(writtenAs(none)).toEqual({ decimalComma: false });
    expect(writtenAs({ ...none, separator: "tab", encoding: "latin-1", "header-line": "4", quotes: "none" })).toEqual({
      ...{ separator: "tab", encoding: "latin-1", headerLine: 4, quotes: "none", decimalComma: false },
    });
    for (const line of ["0", "1.5", "-1", "x"]) {
      expect(() => writtenAs({ ...none, "header-line": line }), line).toThrow("the line of the header");
    }
    for (const sign of ["", "x", "1", '"', "-", "+", ".", "# ", "µ", "#########"]) {
      expect(() => writtenAs({ ...none, remarks: sign }), sign).toThrow("a sign that remarks begin with");
    }
    for (const sign of ["#", "//", "--", ";", "%", "none"]) {
      expect(writtenAs({ ...none, remarks: sign }).remarks).toBe(sign);
    }
  });
});
