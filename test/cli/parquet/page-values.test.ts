import { describe, expect, it } from "vitest";
import type { LeafColumn } from "../../../src/cli/parquet/leaf-columns";
import { type DataHead, requireFittingPage, requirePlain } from "../../../src/cli/parquet/page-values";

const leaf = (type: string, { definition = 0, repetition = 0, type_length = 0 } = {}): LeafColumn =>
  ({ top: 0, path: ["v"], definition, repetition, element: { name: "v", type, type_length } }) as LeafColumn;

const refused = (received: string) => expect.objectContaining({ code: "syntax", received: `column "v": ${received}` });
const WHERE = 'column "v"';

// Apache Parquet, encodings: PLAIN
describe("values one behind the other", () => {
  const plain = (type: string, bytes: Uint8Array, count: number, from = 0) =>
    requirePlain(bytes, { from, count }, leaf(type, { type_length: 5 }), WHERE);
  const wrong = "a page that is not as long as its values";

  it.each([
    ["INT32", 12],
    ["INT64", 24],
    ["INT96", 36],
    ["FLOAT", 12],
    ["DOUBLE", 24],
    ["FIXED_LEN_BYTE_ARRAY", 15],
  ])("three of %s are %d bytes", (type, bytes) => {
    expect(plain(type, new Uint8Array(bytes), 3)).toBeUndefined();
    expect(plain(type, new Uint8Array(bytes + 2), 3, 2)).toBeUndefined();
    for (const other of [bytes - 1, bytes + 1]) {
      expect(() => plain(type, new Uint8Array(other), 3)).toThrow(refused(wrong));
    }
  });

  it("of BOOLEAN eight are a byte", () => {
    for (const [count, bytes] of [
      ...[
        [0, 0],
        [1, 1],
        [8, 1],
      ],
      [9, 2],
    ] as const) {
      expect(plain("BOOLEAN", new Uint8Array(bytes), count)).toBeUndefined();
      expect(() => plain("BOOLEAN", new Uint8Array(bytes + 1), count)).toThrow(refused(wrong));
    }
  });

  it("of BYTE_ARRAY each has its length before it", () => {
    const bytes = Uint8Array.of(2, 0, 0, 0, 97, 98, 0, 0, 0, 0, 1, 0, 0, 0, 99);
    expect(plain("BYTE_ARRAY", bytes, 3)).toBeUndefined();
    expect(plain("BYTE_ARRAY", Uint8Array.of(9, ...bytes).subarray(1), 3)).toBeUndefined();
    expect(plain("BYTE_ARRAY", Uint8Array.of(0, 0, 0, 0), 1)).toBeUndefined();
    expect(() => plain("BYTE_ARRAY", bytes, 2)).toThrow(refused(wrong));
    expect(() => plain("BYTE_ARRAY", bytes.subarray(0, -1), 3)).toThrow(refused(wrong));
    expect(() => plain("BYTE_ARRAY", bytes, 4)).toThrow(refused("a page shorter than its values"));
    expect(() => plain("BYTE_ARRAY", bytes.subarray(0, 9), 2)).toThrow(refused("a page shorter than its values"));
    expect(() => plain("BYTE_ARRAY", Uint8Array.of(5, 0, 0, 0, 1, 2), 2)).toThrow(
      refused("a page shorter than its values"),
    );
  });
});

/** Levels as they stand in a page of the first version: their length before them. */
const level = (...runs: number[]): number[] => [runs.length, 0, 0, 0, ...runs];

// Apache Parquet, file format: data pages; encodings by their numbers there: 0 PLAIN, 2 and 8 by dictionary, 3 RLE
describe("a data page of the first version", () => {
  const fits = (bytes: readonly number[], head: DataHead, column = leaf("INT32")) =>
    requireFittingPage({ bytes: Uint8Array.from(bytes), levels: undefined }, head, column, WHERE);
  const optional = leaf("INT32", { definition: 1 });
  const listed = leaf("INT32", { definition: 2, repetition: 1 });
  const four = (count: number): number[] => Array(4 * count).fill(0);

  it.each<[string, number[], DataHead, LeafColumn]>([
    ["of required values", four(2), { values: 2, encoding: 0 }, leaf("INT32")],
    ["of values all there", [...level(4, 1), ...four(2)], { values: 2, encoding: 0 }, optional],
    ["of one value and a null", [...level(3, 0b01), ...four(1)], { values: 2, encoding: 0 }, optional],
    ["of nulls alone", level(4, 0), { values: 2, encoding: 0 }, optional],
    [
      "of a list of two, and an empty one",
      [...level(3, 0b010), ...level(4, 2, 2, 1), ...four(2)],
      { values: 3, encoding: 0 },
      listed,
    ],
    ["by a dictionary", [2, 4, 1], { values: 2, encoding: 8 }, leaf("INT32")],
    ["by a dictionary, by its older number", [2, 4, 1], { values: 2, encoding: 2 }, leaf("INT32")],
    ["by a dictionary of one value", [0], { values: 2, encoding: 8 }, leaf("INT32")],
    ["by a dictionary, of nulls alone", level(4, 0), { values: 2, encoding: 8 }, optional],
    ["by a dictionary, behind levels", [...level(3, 0b01), 9, 2, 1, 1], { values: 2, encoding: 8 }, optional],
    ["by a dictionary of 32 bits", [32, 4, 1, 0, 0, 0], { values: 2, encoding: 8 }, leaf("INT32")],
    ["of truths in runs", [2, 0, 0, 0, 4, 1], { values: 2, encoding: 3 }, leaf("BOOLEAN")],
    ["of truths in runs, of nulls alone", level(4, 0), { values: 2, encoding: 3 }, leaf("BOOLEAN", { definition: 1 })],
    ["of a list of nothing at all", [...level(2, 0), ...level(2, 0)], { values: 1, encoding: 0 }, listed],
    ["without values, in an encoding that the library unpacks", [], { values: 0, encoding: 5 }, leaf("INT32")],
    ["in an encoding that the library unpacks", [1, 2, 3], { values: 2, encoding: 5 }, leaf("INT32")],
  ])("%s fits", (_, bytes, head, column) => expect(fits(bytes, head, column)).toBeUndefined());

  it.each<[string, number[], DataHead, LeafColumn, string]>([
    ["a value too few", four(1), { values: 2, encoding: 0 }, leaf("INT32"), "a page that is not as long as its values"],
    ["no length of levels", [1, 0, 0], { values: 2, encoding: 0 }, optional, "a page shorter than its levels"],
    [
      "levels beyond the end",
      [3, 0, 0, 0, 4, 1],
      { values: 2, encoding: 0 },
      optional,
      "a page shorter than its levels",
    ],
    [
      "levels that are fewer",
      [...level(2, 1), ...four(2)],
      { values: 2, encoding: 0 },
      optional,
      "runs that break off",
    ],
    [
      "levels that are more",
      [...level(6, 1), ...four(2)],
      { values: 2, encoding: 0 },
      optional,
      "a run beyond its end",
    ],
    [
      "repetitions that are more",
      [...level(6, 0), ...level(4, 2), ...four(2)],
      { values: 2, encoding: 0 },
      listed,
      "a run beyond its end",
    ],
    [
      "a null that has a value",
      [...level(3, 0b01), ...four(2)],
      { values: 2, encoding: 0 },
      optional,
      "a page that is not as long as its values",
    ],
    ["no width of the numbers", [], { values: 2, encoding: 8 }, leaf("INT32"), "a page without values"],
    [
      "a width beyond all",
      [33, 4, 1, 0, 0, 0, 0],
      { values: 2, encoding: 8 },
      leaf("INT32"),
      "numbers of too many bits",
    ],
    ["numbers that are fewer", [2, 2, 1], { values: 2, encoding: 8 }, leaf("INT32"), "runs that break off"],
    [
      "numbers of the older dictionary that are fewer",
      [2, 2, 1],
      { values: 2, encoding: 2 },
      leaf("INT32"),
      "runs that break off",
    ],
    ["numbers that are more", [2, 6, 1], { values: 2, encoding: 8 }, leaf("INT32"), "a run beyond its end"],
    ["truths that are fewer", [2, 0, 0, 0, 2, 1], { values: 2, encoding: 3 }, leaf("BOOLEAN"), "runs that break off"],
    [
      "truths of another number",
      [2, 0, 0, 0, 6, 1],
      { values: 2, encoding: 3 },
      leaf("BOOLEAN"),
      "a run beyond its end",
    ],
  ])("%s: refused", (_, bytes, head, column, received) => {
    expect(() => fits(bytes, head, column)).toThrow(refused(received));
  });
});

describe("a data page of the second version, whose levels stand before it", () => {
  const fits = (bytes: readonly number[], levels: readonly number[], head: DataHead, column: LeafColumn) =>
    requireFittingPage({ bytes: Uint8Array.from(bytes), levels: Uint8Array.from(levels) }, head, column, WHERE);
  const optional = leaf("INT32", { definition: 1 });
  const listed = leaf("INT32", { definition: 2, repetition: 1 });
  const told = (repetition: number, definition: number, nulls: number) => ({ repetition, definition, nulls });

  it("fits with as many nulls as it tells", () => {
    const levels = told(0, 2, 1);
    expect(fits([0, 0, 0, 0], [3, 0b10], { values: 2, encoding: 0, levels }, optional)).toBeUndefined();
    for (const nulls of [0, 2]) {
      expect(() =>
        fits([0, 0, 0, 0], [3, 0b10], { values: 2, encoding: 0, levels: { ...levels, nulls } }, optional),
      ).toThrow(refused("another number of nulls"));
    }
    expect(() => fits([0, 0, 0, 0], [], { values: 1, encoding: 0, levels: told(0, 0, 1) }, leaf("INT32"))).toThrow(
      refused("another number of nulls"),
    );
  });

  it("takes the definitions from behind the repetitions", () => {
    const head = { values: 3, encoding: 0, levels: told(2, 3, 1) };
    // the levels by hand: lists [a, b] and none; of three entries two are there
    expect(fits(Array(8).fill(0), [3, 0b010, 3, 0b00011010, 0], head, listed)).toBeUndefined();
    expect(() => fits(Array(8).fill(0), [2, 0, 4, 2, 2, 1], { ...head, levels: told(2, 4, 1) }, listed)).toThrow(
      refused("runs that break off"),
    );
    expect(() => fits(Array(8).fill(0), [3, 0b010, 4, 2, 2], { ...head, levels: told(2, 4, 1) }, listed)).toThrow(
      refused("a page shorter than its levels"),
    );
  });

  it("has truths in runs with or without a length before them", () => {
    const truths = leaf("BOOLEAN");
    const head = { values: 2, encoding: 3, levels: told(0, 0, 0) };
    expect(fits([2, 0, 0, 0, 4, 1], [], head, truths)).toBeUndefined();
    expect(fits([4, 1, 0, 0], [], head, truths)).toBeUndefined();
    // truths, of which the first four bytes are no length
    expect(fits([3, 0b11, 0, 0, 0, 0], [], head, truths)).toBeUndefined();
    expect(() => fits([6, 1, 0, 0], [], head, truths)).toThrow(refused("a run beyond its end"));
  });
});
