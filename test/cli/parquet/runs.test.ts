import { describe, expect, it } from "vitest";
import { bitsFor, countedRuns } from "../../../src/cli/parquet/runs";

interface Told {
  readonly width: number;
  readonly count: number;
  readonly sought?: number;
  readonly from?: number;
  readonly to?: number;
}

const counted = (bytes: readonly number[], { from = 0, to = bytes.length, ...told }: Told): number =>
  countedRuns(Uint8Array.from(bytes), { from, to, ...told }, "a page");

it.each([
  [0, 0],
  [1, 1],
  [2, 2],
  [3, 2],
  [4, 3],
  [255, 8],
])("numbers up to %d take %d bits", (most, bits) => expect(bitsFor(most)).toBe(bits));

// Apache Parquet, encodings: run length encoding / bit-packing hybrid; the head is the length twice, plus one if packed
describe("numbers in runs", () => {
  // the example of the specification: 0 to 7 in three bits each
  const eight = [3, 0b10001000, 0b11000110, 0b11111010];

  it.each([0, 1, 2, 3, 4, 5, 6, 7])("of 0 to 7, packed, one is %d", (sought) => {
    expect(counted(eight, { width: 3, count: 8, sought })).toBe(1);
    expect(counted(eight, { width: 3, count: sought, sought })).toBe(0);
    expect(counted(eight, { width: 3, count: sought + 1, sought })).toBe(1);
  });

  it.each<[string, number[], Told, number]>([
    ["none of none", [], { width: 1, count: 0, sought: 1 }, 0],
    ["repeated", [10, 1], { width: 1, count: 5, sought: 1 }, 5],
    ["repeated, another one", [10, 1], { width: 1, count: 5, sought: 0 }, 0],
    ["repeated, in two bytes, the lower first", [10, 0x34, 0x12], { width: 13, count: 5, sought: 0x1234 }, 5],
    ["repeated, in no bits", [10], { width: 0, count: 5, sought: 0 }, 5],
    ["repeated 200 times: a head in two bytes", [0x90, 0x03, 1], { width: 1, count: 200, sought: 1 }, 200],
    ["a head in five bytes", [0x8a, 0x80, 0x80, 0x80, 0, 1], { width: 1, count: 5, sought: 1 }, 5],
    ["packed in one bit", [3, 0b01100111], { width: 1, count: 8, sought: 1 }, 5],
    ["packed, of which the first five count", [3, 0b11100101], { width: 1, count: 5, sought: 1 }, 2],
    ["two groups of eight", [5, 0xff, 0x01], { width: 1, count: 16, sought: 1 }, 9],
    ["packed in two bits", [3, 0b11100100, 0b00011011], { width: 2, count: 8, sought: 2 }, 2],
    ["the last run without its filling", [5, 0xff, 0x03], { width: 1, count: 10, sought: 1 }, 10],
    ["without the filling, of three bits", [3, 0b00100100], { width: 3, count: 2, sought: 4 }, 2],
    ["one run behind the other", [4, 1, 3, 0b00001111, 6, 1], { width: 1, count: 13, sought: 1 }, 9],
    ["an empty run between them", [4, 1, 0, 1, 6, 1], { width: 1, count: 5, sought: 1 }, 5],
    [
      "packed in three bits, and one behind the other",
      [3, 0, 0, 0, 5, 0xff, 0xff, 0xff, 0, 0, 0, 2, 7],
      { width: 3, count: 25, sought: 7 },
      9,
    ],
    ["packed eight by eight bits, all filled", [3, 1, 2, 3, 4, 5, 6, 7, 8, 2, 8], { width: 8, count: 9, sought: 8 }, 2],
    ["packed, of which fewer are left than stand there", [4, 1, 5, 0xff, 0xff], { width: 1, count: 5, sought: 1 }, 5],
    ["between other bytes", [9, 9, 10, 1, 9], { width: 1, count: 5, sought: 1, from: 2, to: 4 }, 5],
    ["counted for nothing in particular", [10, 1], { width: 1, count: 5 }, 0],
    ["packed, counted for nothing in particular", [3, 0], { width: 1, count: 8 }, 0],
  ])("%s", (_, bytes, told, matches) => expect(counted(bytes, told)).toBe(matches));

  it.each<[string, number[], Told, string]>([
    ["no bytes", [], { width: 1, count: 1 }, "runs that break off"],
    ["a head that breaks off", [0x80], { width: 1, count: 1 }, "runs that break off"],
    ["a head beyond the end", [0x80, 1, 1], { width: 1, count: 64, to: 1 }, "runs that break off"],
    ["a head of six bytes", [0x8a, 0x80, 0x80, 0x80, 0x80, 0, 1], { width: 1, count: 5 }, "runs that break off"],
    ["a number that is not there", [10], { width: 1, count: 5 }, "runs that break off"],
    ["half a number", [10, 1], { width: 9, count: 5 }, "runs that break off"],
    ["a number beyond the end", [10, 1, 1], { width: 9, count: 5, to: 2 }, "runs that break off"],
    ["packed numbers that are not there", [3], { width: 1, count: 8 }, "runs that break off"],
    ["packed numbers beyond the end", [3, 0, 0], { width: 2, count: 5, to: 2 }, "runs that break off"],
    ["too few packed numbers for those that count", [5, 0xff], { width: 1, count: 9 }, "runs that break off"],
    ["fewer than there have to be", [8, 1], { width: 1, count: 5 }, "runs that break off"],
    ["more than there have to be", [12, 1], { width: 1, count: 5 }, "a run beyond its end"],
    ["more than are left", [8, 1, 4, 1], { width: 1, count: 5 }, "a run beyond its end"],
  ])("%s: refused", (_, bytes, told, received) => {
    expect(() => counted(bytes, told)).toThrow(
      expect.objectContaining({ code: "syntax", received: `a page: ${received}` }),
    );
  });
});
