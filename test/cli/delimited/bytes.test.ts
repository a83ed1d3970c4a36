import { describe, expect, it } from "vitest";
import { byteCounter, type CountedAs } from "../../../src/cli/delimited/byte-counter";
import { utf8Maker } from "../../../src/cli/delimited/text-decoder";

/** The text of bytes that come in two portions, what was told as wrong, and the encoding. */
function made(bytes: Buffer, cut: number, told?: string) {
  const maker = utf8Maker(told);
  const parts = [bytes.subarray(0, cut), bytes.subarray(cut)].map((part) => maker.take(part));
  parts.push(maker.end());
  const fault = parts.find((part) => part.fault !== undefined)?.fault;
  return {
    text: Buffer.concat(parts.map(({ text }) => text)).toString("utf8"),
    received: fault?.received,
    expected: fault?.expected,
    encoding: maker.encoding,
    mark: maker.mark,
  };
}

const latin1 = (text: string): Buffer => Buffer.from(text, "latin1");
const utf16 = (text: string): Buffer => Buffer.from(text, "utf16le");

// one to four bytes a character: RFC 3629, section 3
const text = "a,µ\nĀ→b\n\u{10348}é\u07ff\u0800\uffff\u{10ffff}";

describe("the bytes of a file, cut anywhere", () => {
  it.each<[string, Buffer, string | undefined, string, number]>([
    ["UTF-8", Buffer.from(text), undefined, "utf-8", 0],
    ["UTF-8 that is told", Buffer.from(text), "utf-8", "utf-8", 0],
    ["UTF-8 with its mark", Buffer.from(`\ufeff${text}`), undefined, "utf-8", 3],
    ["UTF-16, low byte first", utf16(`\ufeff${text}`), undefined, "utf-16le", 2],
    ["UTF-16, high byte first", utf16(`\ufeff${text}`).swap16(), undefined, "utf-16be", 2],
    ["UTF-16 that is told", utf16(text), "utf-16", "utf-16le", 0],
    ["UTF-16 that is told, high byte first", utf16(text).swap16(), "utf-16", "utf-16be", 0],
  ])("%s", (_, bytes, told, encoding, mark) => {
    for (let cut = 0; cut <= bytes.length; cut++) {
      expect(made(bytes, cut, told), `cut at ${cut}`).toEqual({ text, encoding, mark });
    }
  });

  it("Latin-1 that is told", () => {
    for (const cut of [0, 1, 2, 3]) {
      expect(made(latin1("µ,é"), cut, "latin-1")).toEqual({ text: "µ,é", encoding: "latin-1", mark: 0 });
    }
  });

  it.each(["", "a", "ab", "abc", "µ", "é,"])("a file as short as %j", (short) => {
    expect(made(Buffer.from(short), 0)).toEqual({ text: short, encoding: "utf-8", mark: 0 });
  });

  it("all that is before the line of a fault is given, whatever the cut", () => {
    const noUtf8 = "bytes that are no UTF-8";
    // an overlong form, half a surrogate, beyond U+10FFFF, a byte that goes on nothing: RFC 3629, section 4
    for (const wrong of [[0xc0, 0x80], [0xed, 0xa0, 0x80], [0xf4, 0x90, 0x80, 0x80], [0xb5], [0xff], [0xe2, 0x82]]) {
      const bytes = Buffer.concat([Buffer.from("x,µ\ny\nz"), Buffer.from(wrong), Buffer.from("\nw\n")]);
      expect(made(bytes, 0)).toMatchObject({ text: "x,µ\ny\n", received: noUtf8 });
      expect(made(bytes, bytes.length).expected).toBe("text in UTF-8, or --encoding latin-1 for a file in Latin-1");
      expect(made(Buffer.from([0x61, 0x61, 0x61, 0x61, ...wrong]), 4).received).toBe(noUtf8);
    }
    expect(made(Buffer.from([0xb5, 10, 0x61, 0x61]), 4)).toMatchObject({ text: "", received: noUtf8 });
  });

  it("NUL, and every other byte NUL", () => {
    const nul = { expected: "a text file", received: "a NUL in it" };
    expect(made(Buffer.from("a,b\nc\0d\n"), 0)).toMatchObject({ text: "a,b\n", ...nul });
    expect(made(Buffer.from("\0a,b\nc\n"), 0)).toMatchObject({ text: "", ...nul });
    expect(made(Buffer.from("a\nb\n\0"), 0)).toMatchObject({ text: "a\nb\n", ...nul });
    const wide = {
      expected: "text, or --encoding utf-16 for a file in UTF-16",
      received: "every other byte is NUL",
    };
    expect(made(utf16("abcd\nef\n"), 0)).toMatchObject({ text: "", ...wide });
    expect(made(utf16("abcd\nef\n").swap16(), 0)).toMatchObject({ text: "", ...wide });
    expect(made(Buffer.concat([utf16("ab"), Buffer.from("x".repeat(200))]), 0)).toMatchObject(nul);
    // a quarter of the first 64 bytes is not yet every other one
    expect(made(Buffer.from(`${"a\0".repeat(16)}${"b".repeat(32)}`), 0)).toMatchObject(nul);
    expect(made(Buffer.from(`${"a\0".repeat(17)}${"b".repeat(100)}`), 0)).toMatchObject(wide);
    expect(made(latin1("a\nb\0"), 0, "latin-1")).toMatchObject({ text: "a\n", ...nul });
    expect(made(utf16("\ufeffa\nb\0c"), 0)).toMatchObject({ text: "a\n", received: "a NUL in it" });
  });

  it("half a character of UTF-16, and half a pair", () => {
    const half = { expected: "text in UTF-16", received: "bytes that are no UTF-16, or half a character" };
    expect(made(utf16("\ufeffab").subarray(0, -1), 0)).toMatchObject(half);
    expect(made(utf16("\ufeffa\ud800b"), 0)).toMatchObject({ text: "", ...half });
  });

  // The Unicode Standard, section 23.8: byte order marks
  it("the marks of UTF-32", () => {
    const utf32 = { expected: "text in UTF-8 or UTF-16 (save it so)", received: "the byte order mark of UTF-32" };
    for (const mark of [
      [0xff, 0xfe, 0, 0],
      [0, 0, 0xfe, 0xff],
    ]) {
      expect(made(Buffer.from([...mark, 0x61, 0, 0, 0]), 2)).toMatchObject({ text: "", ...utf32 });
    }
    expect(made(Buffer.from([0, 0, 0xfe, 0x61]), 0).received).toBe("a NUL in it");
  });

  it.each<[string, Buffer, string, string]>([
    ["utf-16", utf16("\ufeffab"), "utf-8", "utf-16"],
    ["utf-16", utf16("\ufeffab").swap16(), "latin-1", "utf-16"],
    ["utf-8", Buffer.from("\ufeffab"), "utf-16", "utf-8"],
  ])("the mark of %s against %o told", (_, bytes, told, name) => {
    expect(made(bytes, 0, told)).toMatchObject({
      expected: `the encoding of the byte order mark, ${name} (--encoding is for files without one)`,
      received: `--encoding ${told}, and the mark of ${name}`,
    });
    expect(made(bytes, 0, name).received).toBeUndefined();
  });
});

describe("rows counted from the bytes", () => {
  const utf8: CountedAs = { encoding: "utf-8", mark: 0, lineEnd: "\n", preamble: 0, sign: "#", quotes: true };

  function counted(content: string | Buffer, as: Partial<CountedAs> = {}): number[] {
    const bytes = Buffer.from(content);
    return Array.from({ length: bytes.length + 1 }, (_, cut) => {
      const counter = byteCounter({ ...utf8, ...as });
      counter.take(bytes.subarray(0, cut));
      counter.take(bytes.subarray(cut));
      return counter.rows();
    });
  }

  it.each<[string, string | Buffer, Partial<CountedAs>, number]>([
    ["a header alone", "a,b\n", {}, 0],
    ["without its line end", "a,b", {}, 0],
    ["rows", "a,b\n1,2\n3,4\n", {}, 2],
    ["a last row without line end", "a,b\n1,2\n3,4", {}, 2],
    ["a line end in quotes", 'a,b\n"1\n2",3\n4,5\n', {}, 2],
    ["doubled quotes", 'a,b\n"1""\n""2",3\n4,5\n', {}, 2],
    ["quotes that are plain", 'a,b\n"1\n2",3\n4,5\n', { quotes: false }, 3],
    ["blank lines", "a,b\n\n\n1,2\n", {}, 3],
    ["a quotation mark in a remark", 'a,b\n# "\n1,2\n', {}, 2],
    ["a sign within a row", 'a,b\n1#"\n"\n2,3\n', {}, 2],
    ["a sign behind a quote", 'a,b\n"1"#"\n"\n2,3\n', {}, 2],
    ["a sign in quotes", 'a,b\n"\n#",1\n2,3\n', {}, 2],
    ["a sign in quotes, with a quote in it", 'a,b\n"x\n#""\n",1\n2,3\n', {}, 2],
    ["half a sign", 'a,b\n/"\n"\n2,3\n', { sign: "//" }, 2],
    ["a longer sign", 'a,b\n// "\n2,3\n', { sign: "//" }, 2],
    ["half a sign, and the other later", 'a,b\n/x/"\n"\n2,3\n', { sign: "//" }, 2],
    ["no sign", 'a,b\n#"\n"\n2,3\n', { sign: undefined }, 2],
    ["lines above", '"\nx"\na,b\n1,2\n', { preamble: 2 }, 3],
    ["a quote behind the lines above", 'x\n"a\nb",c\n1,2\n', { preamble: 1 }, 2],
    ["carriage returns", "a,b\r1,2\r3,4\r", { lineEnd: "\r" }, 2],
    ["both", "a,b\r\n1,2\r\n", {}, 1],
    ["a mark", '\ufeff# "\na,b\n1,2\n', { mark: 3 }, 2],
    ["UTF-16", utf16('\ufeffa,b\n"ਊ\n",Ċ\n1,\u0a22\n'), { encoding: "utf-16le", mark: 2 }, 2],
    ["UTF-16, high byte first", utf16('\ufeffa,b\n"ਊ\n",Ċ\n1,\u0a22\n').swap16(), { encoding: "utf-16be", mark: 2 }, 2],
  ])("%s", (_, content, as, rows) => expect(new Set(counted(content, as))).toEqual(new Set([rows])));
});
