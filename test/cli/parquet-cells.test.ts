import { describe, expect, it } from "vitest";
import { cellText, parsersFor, Unreadable } from "../../src/cli/parquet/cell-text";
import { snappyUnpacked } from "../../src/cli/parquet/snappy";

type Parse = (value: unknown) => unknown;
const parsers = (isText = true) => parsersFor(isText) as unknown as Record<string, Parse>;
const bytes = (...all: number[]): Uint8Array => Uint8Array.from(all);

// RFC 3339 (profile of ISO 8601): 2026-01-12 is day 20465 since 1970-01-01
describe("values of Parquet as cells", () => {
  it.each<[string, unknown, string]>([
    ["timestampFromMilliseconds", 1_768_176_000_000n, "2026-01-12T00:00:00.000Z"],
    ["timestampFromMicroseconds", 1_768_176_000_000_000n, "2026-01-12T00:00:00.000Z"],
    ["timestampFromMicroseconds", 1_768_176_000_000_120n, "2026-01-12T00:00:00.00012Z"],
    ["timestampFromMicroseconds", -1n, "1969-12-31T23:59:59.999999Z"],
    ["timestampFromNanoseconds", 1_768_176_000_000_000_007n, "2026-01-12T00:00:00.000000007Z"],
    ["dateFromDays", 20_465, "2026-01-12"],
    ["dateFromDays", -1, "1969-12-31"],
    ["stringFromBytes", bytes(0xc2, 0xb5, 0x6d), "µm"],
    ["stringFromBytes", bytes(0xef, 0xbb, 0xbf, 0x61), "\ufeffa"],
    ["uuidFromBytes", Uint8Array.from({ length: 16 }, (_, i) => i), "00010203-0405-0607-0809-0a0b0c0d0e0f"],
  ])("%s of %s", (name, value, text) => expect(parsers()[name]?.(value)).toBe(text));

  it("a time beyond all dates, and text that is not UTF-8, cannot be told", () => {
    // ECMA-262: 100,000,000 days on either side of 1970
    expect(parsers().dateFromDays?.(100_000_000)).toBe("+275760-09-13");
    expect(parsers().dateFromDays?.(100_000_001)).toEqual(new Unreadable("a time beyond all dates"));
    expect(parsers().timestampFromMilliseconds?.(-8_640_000_000_000_001n)).toBeInstanceOf(Unreadable);
    expect(parsers().stringFromBytes?.(bytes(0xff))).toEqual(new Unreadable("text that is not UTF-8"));
    expect(parsers(false).stringFromBytes?.(bytes(0xff, 0x0a))).toBe("0xff0a");
    expect([parsers().stringFromBytes?.(undefined), parsers().uuidFromBytes?.(undefined)]).toEqual([
      undefined,
      undefined,
    ]);
  });

  it.each<[unknown, string]>([
    ["text", "text"],
    [null, ""],
    [undefined, ""],
    [4.5, "4.5"],
    [false, "false"],
    [9_007_199_254_740_993n, "9007199254740993"],
    [bytes(1, 171), "0x01ab"],
    [{ a: 1n, b: 9_007_199_254_740_993n, c: bytes(15) }, '{"a":1,"b":"9007199254740993","c":"0x0f"}'],
    [[1, null], "[1,null]"],
  ])("%s is %j", (value, text) => expect(cellText(value)).toBe(text));

  it("what cannot be told makes its whole cell so", () => {
    const one = new Unreadable("a time beyond all dates");
    expect([cellText(one), cellText([one]), cellText({ a: { b: one } })]).toEqual([one, one, one]);
    const round: unknown[] = [];
    round.push(round);
    expect(() => cellText(round)).toThrow(TypeError);
  });
});

// Snappy, description of the compressed format, written by hand from it
describe("Snappy", () => {
  const literal = (text: string): number[] => [(text.length - 1) << 2, ...Buffer.from(text)];
  const unpacked = (length: number, ...packed: number[]): string | undefined => {
    const out = snappyUnpacked(bytes(...packed), length);
    return out && Buffer.from(out).toString("latin1");
  };
  const long = "0123456789abcdefghij";

  it.each<[string, string, number[]]>([
    ["a literal", "abc", [3, ...literal("abc")]],
    ["a literal of twenty", long, [20, ...literal(long)]],
    ["a literal with its length in a byte behind", long, [20, 60 << 2, 19, ...Buffer.from(long)]],
    ["a literal with its length in two bytes behind", long, [20, 61 << 2, 19, 0, ...Buffer.from(long)]],
    ["a copy with one byte behind", "abcdabcd", [8, ...literal("abcd"), 1, 4]],
    ["a copy over itself", "ababababab", [10, ...literal("ab"), ((8 - 4) << 2) | 1, 2]],
    ["a copy with two bytes behind", `${long}${long}`, [40, ...literal(long), (19 << 2) | 2, 20, 0]],
    ["a copy with four bytes behind", `${long}${long}`, [40, ...literal(long), (19 << 2) | 3, 20, 0, 0, 0]],
    [
      "a length in two bytes",
      "x".repeat(200),
      [
        200,
        1,
        60 << 2,
        0,
        120,
        ...Array(3)
          .fill((63 << 2) | 2)
          .flatMap((tag, i) => (i < 3 ? [tag, 1, 0] : [])),
        (6 << 2) | 2,
        1,
        0,
      ],
    ],
    ["nothing", "", [0]],
    [
      "a copy with one byte behind, from far back",
      `${"a".repeat(299)}b${"a".repeat(4)}`,
      [...[0xb0, 2, 61 << 2, 43, 1, ...Buffer.from(`${"a".repeat(299)}b`), 1 | (1 << 5), 44]],
    ],
    ["a literal of sixteen", long.slice(0, 16), [16, ...literal(long.slice(0, 16))]],
    ["a copy of sixteen over itself", `${long}${long.slice(4)}`, [36, ...literal(long), (15 << 2) | 2, 16, 0]],
    [
      "a copy of twenty out of more",
      `${long}${long}${long}`.slice(0, 45),
      [...[45, ...literal(long), (19 << 2) | 2, 20, 0, (4 << 2) | 2, 40, 0]],
    ],
    ["a copy from the middle, of many", `abc${long}${long}`, [43, ...literal(`abc${long}`), (19 << 2) | 2, 20, 0]],
    ["a length in five bytes", "abc", [0x83, 0x80, 0x80, 0x80, 0, ...literal("abc")]],
    ["a length of 128", "x".repeat(128), [0x80, 1, 60 << 2, 127, ...Buffer.from("x".repeat(128))]],
  ])("%s", (_, text, packed) => expect(unpacked(text.length, ...packed)).toBe(text));

  it.each<[string, number, number[]]>([
    ["another length than is told", 4, [3, ...literal("abc")]],
    ["a length without end", 3, [0x83, 0x80, 0x80, 0x80, 0x80, 0, ...literal("abc")]],
    ["no bytes", 0, []],
    ["a literal that breaks off", 3, [3, 2 << 2, 97, 98]],
    ["a literal beyond the length", 3, [3, ...literal("abcd")]],
    ["a copy of what is not there yet", 8, [8, ...literal("abcd"), 1, 5]],
    ["a copy from nowhere", 8, [8, ...literal("abcd"), 1, 0]],
    ["a copy beyond the length", 7, [7, ...literal("abcd"), 1, 4]],
    ["a copy that breaks off", 8, [8, ...literal("abcd"), 1]],
    ["too few bytes", 4, [4, ...literal("abc")]],
    ["another length, of the right bytes", 3, [4, ...literal("abc")]],
    ["a literal that breaks off, of many", 100, [100, 60 << 2, 99, ...Buffer.from("x".repeat(99))]],
    ["a literal beyond the length, behind another", 5, [5, ...literal("abc"), ...literal("abc")]],
    ["a copy beyond the length, behind another", 11, [11, ...literal("abcd"), 1, 4, 1, 4]],
    ["a copy from behind its own place", 12, [12, ...literal("abcdefgh"), 1, 9]],
  ])("%s is none", (_, length, packed) => expect(unpacked(length, ...packed)).toBeUndefined());
});
