import { describe, expect, it } from "vitest";
import { thriftStruct } from "../../../src/cli/parquet/thrift";

const read = (bytes: readonly number[], from = 0) => thriftStruct(Uint8Array.from(bytes), from, "a page");
const fieldsOf = (...bytes: number[]): unknown => Object.fromEntries(read([...bytes, 0])[0]);
const STRUCT = 12;

/** A structure in a structure, so many deep, with a true field in the innermost. */
const nested = (deep: number): number[] => [...Array(deep).fill(16 + STRUCT), 0x11, ...Array(deep + 1).fill(0)];

// Apache Thrift, compact protocol specification: written by hand from it
describe("Thrift's compact protocol", () => {
  it.each<[string, number[], unknown]>([
    ["no field", [], {}],
    ["true and false, each in its type", [0x11, 0x22], { 1: true, 3: false }],
    ["a byte", [0x13, 200], { 1: 200 }],
    ["whole numbers of 16, 32 and 64 bits, by zigzag", [0x14, 0, 0x15, 1, 0x16, 2], { 1: 0, 2: -1, 3: 1 }],
    ["a number in two bytes", [0x15, 0xac, 0x02], { 1: 150 }],
    ["a number in two bytes, below zero", [0x15, 0xad, 0x02], { 1: -151 }],
    ["a number in ten bytes", [0x16, ...Array(9).fill(0x80), 0], { 1: 0 }],
    ["a double, which is passed over", [0x17, 1, 2, 3, 4, 5, 6, 7, 8, 0x11], { 1: Number.NaN, 2: true }],
    ["a binary", [0x18, 3, 97, 98, 99], { 1: Uint8Array.of(97, 98, 99) }],
    ["a list without items at the end", [0x19, 0x05], { 1: [] }],
    ["an empty binary", [0x18, 0, 0x11], { 1: new Uint8Array(), 2: true }],
    ["a list", [0x19, 0x35, 2, 4, 1], { 1: [1, 2, -1] }],
    ["a list of fourteen", [0x19, 0xe3, ...Array(14).fill(7)], { 1: Array(14).fill(7) }],
    ["a list with its length behind", [0x19, 0xf3, 15, ...Array(15).fill(7)], { 1: Array(15).fill(7) }],
    [
      "lists of truths, of either type",
      [0x19, 0x31, 1, 2, 1, 0x19, 0x22, 2, 1],
      { 1: [true, false, true], 2: [false, true] },
    ],
    ["a list of lists", [0x19, 0x29, 0x15, 2, 0x15, 4], { 1: [[1], [2]] }],
    ["a structure in a structure", [0x1c, 0x15, 2, 0, 0x11], { 1: new Map([[1, 1]]), 2: true }],
    ["a list of structures", [0x19, 0x2c, 0x11, 0, 0x12, 0], { 1: [new Map([[1, true]]), new Map([[1, false]])] }],
    ["a number of a field in its long form, and the next from there", [0x05, 40, 2, 0x11], { 20: 1, 21: true }],
    ["a field fifteen further", [0xf1], { 15: true }],
  ])("%s", (_, bytes, fields) => expect(fieldsOf(...bytes)).toEqual(fields));

  it("a structure behind other bytes, and the place behind it", () => {
    expect(read([9, 9, 0x13, 7, 0, 8], 2)).toEqual([new Map([[1, 7]]), 5]);
  });

  it.each<[string, number[], string]>([
    ["nothing", [], "breaks off"],
    ["no end", [0x11], "breaks off"],
    ["a byte that is not there", [0x13], "breaks off"],
    ["a number that breaks off", [0x15, 0x80], "breaks off"],
    ["a number of eleven bytes", [0x16, ...Array(10).fill(0x80), 0, 0], "a number without an end"],
    ["a double of seven bytes", [0x17, 1, 2, 3, 4, 5, 6, 7], "a length beyond its end"],
    ["a binary beyond the end", [0x18, 4, 97, 98, 99], "a length beyond its end"],
    ["a list beyond the end", [0x19, 0x35, 2, 4], "a length beyond its end"],
    ["a long list beyond the end", [0x19, 0xf5, 0xff, 0xff, 0x03, 2, 4], "a length beyond its end"],
    ["a set", [0x1a, 0x15, 2, 0], "a field of no known kind"],
    ["a map", [0x1b, 0, 0], "a field of no known kind"],
    ["a field of a kind that is not there", [0x1d, 0, 0], "a field of no known kind"],
    ["a list of what is not there", [0x19, 0x1e, 0, 0], "a field of no known kind"],
  ])("%s is refused", (_, bytes, received) => {
    expect(() => read(bytes)).toThrow(
      expect.objectContaining({
        code: "syntax",
        expected: "a Parquet file that is whole",
        received: `a page: ${received}`,
      }),
    );
  });

  it("a depth that no structure has is refused, in lists too", () => {
    expect(read(nested(24))[1]).toBe(50);
    expect(() => read(nested(25))).toThrow("nested without an end");
    const lists = (deep: number): number[] => [0x19, ...Array(deep).fill(0x19), 0x13, 5, 0];
    expect(read(lists(23))[1]).toBe(27);
    expect(() => read(lists(24))).toThrow("nested without an end");
    // a list and a structure in turn
    const turns = Array.from({ length: 13 }, () => [0x19, 0x1c]).flat();
    expect(() => read([...turns, 0x11, ...Array(20).fill(0)])).toThrow("nested without an end");
  });
});
