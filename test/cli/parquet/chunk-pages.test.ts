import { crc32 } from "node:zlib";
import type { ColumnMetaData } from "hyparquet";
import { describe, expect, it } from "vitest";
import { requirePages } from "../../../src/cli/parquet/chunk-pages";
import type { LeafColumn } from "../../../src/cli/parquet/leaf-columns";
import { type Field, i32, inner, struct, text } from "./made-file";

const column = { top: 0, path: ["v"], definition: 0, repetition: 0, element: { name: "v", type: "INT32" } };
const leaf = column as unknown as LeafColumn;
const optional = { ...leaf, definition: 1 };

interface Made {
  readonly type?: number;
  readonly content?: Buffer;
  /** What the head tells, where it is not what is there. */
  readonly unpacked?: number;
  readonly stored?: number;
  readonly sum?: number;
  readonly head?: Field;
}

/** A page with its head, by the numbers of the format. */
function page({ type = 0, content = Buffer.alloc(8), sum, ...told }: Made = {}): Buffer {
  const { unpacked = content.length, stored = content.length } = told;
  const head = told.head ?? inner(5, [i32(1, 2), i32(2, 0), i32(3, 3), i32(4, 3)]);
  const summed = sum === undefined ? [] : [i32(4, sum | 0)];
  return Buffer.concat([struct([i32(1, type), i32(2, unpacked), i32(3, stored), ...summed, head]), content]);
}

/** The head of a page of the second version: values, nulls, rows, encoding, bytes of the levels. */
const second = (values: number, nulls: number, definition: number, ...more: Field[]): Field =>
  inner(8, [i32(1, values), i32(2, nulls), i32(3, values), i32(4, 0), i32(5, definition), i32(6, 0), ...more]);

const dictionary = (count: number, bytes = 4 * count): Buffer =>
  page({ type: 2, content: Buffer.alloc(bytes), head: inner(7, [i32(1, count), i32(2, 0)]) });

interface Chunk {
  readonly values?: number;
  readonly codec?: string;
  readonly of?: LeafColumn;
  readonly unpack?: (bytes: Uint8Array, length: number) => Uint8Array;
}

let beats = 0;
const read = (bytes: Buffer, { values = 2, codec = "UNCOMPRESSED", of = leaf, unpack = (all) => all }: Chunk = {}) =>
  requirePages(
    Uint8Array.from(bytes),
    { told: { num_values: BigInt(values), codec } as ColumnMetaData, leaf: of, unpack },
    { where: 'column "v"', beat: () => void beats++ },
  );
const refused = (received: string) => expect.objectContaining({ code: "syntax", received: `column "v": ${received}` });

// Apache Parquet, file format (parquet.thrift): PageHeader, DataPageHeader, DictionaryPageHeader, DataPageHeaderV2
describe("the pages of a column chunk", () => {
  it("are as many values as the chunk tells, in one page or in several", () => {
    beats = 0;
    expect(read(page())).toBe(false);
    expect(read(Buffer.concat([page(), page()]), { values: 4 })).toBe(false);
    expect(read(Buffer.alloc(0), { values: 0 })).toBe(true);
    expect(beats).toBe(3);
    for (const values of [1, 3]) {
      const words = values === 1 ? "more values than rows" : "fewer values than rows";
      expect(() => read(page(), { values })).toThrow(refused(words));
    }
    expect(() => read(Buffer.concat([page(), page()]), { values: 3 })).toThrow(refused("more values than rows"));
  });

  it("are held against their checksums, each its own", () => {
    const sum = crc32(Buffer.alloc(8));
    expect(read(page({ sum }))).toBe(true);
    expect(() => read(page({ sum: sum + 1 }))).toThrow(refused("a page with another checksum"));
    expect(read(Buffer.concat([page({ sum }), page()]), { values: 4 })).toBe(false);
    expect(read(Buffer.concat([page(), page({ sum })]), { values: 4 })).toBe(false);
    // CRC-32 of "123456789" is cbf43926 (the check value of its catalogue): above 2^31, so below zero as the format has it
    const content = Buffer.concat([Buffer.from([5, 0, 0, 0]), Buffer.from("12345")]);
    const words = { ...leaf, element: { name: "v", type: "BYTE_ARRAY" } } as LeafColumn;
    const head = inner(5, [i32(1, 1), i32(2, 0), i32(3, 3), i32(4, 3)]);
    expect(read(page({ content, head, sum: crc32(content) }), { values: 1, of: words })).toBe(true);
    const high = [0, 1, 2, 3].map((n) => Buffer.from([n, 0, 0, 0, 0, 0, 0, 0])).find((all) => crc32(all) > 2 ** 31);
    expect(read(page({ content: high as Buffer, sum: crc32(high as Buffer) }))).toBe(true);
  });

  it("of gzip have a checksum without one, but for levels that stand before", () => {
    expect(read(page(), { codec: "GZIP" })).toBe(true);
    const levels = page({ type: 3, content: Buffer.alloc(8), head: second(2, 0, 0) });
    expect(read(levels, { codec: "GZIP" })).toBe(false);
    expect(read(Buffer.concat([dictionary(1), page()]), { codec: "GZIP" })).toBe(true);
  });

  it("may begin with a dictionary, of as many values as it tells", () => {
    expect(read(Buffer.concat([dictionary(3), page()]))).toBe(false);
    expect(() => read(Buffer.concat([dictionary(3, 8), page()]))).toThrow(
      refused("a page that is not as long as its values"),
    );
    expect(() => read(Buffer.concat([page(), dictionary(3)]))).toThrow(refused("a dictionary behind its page"));
    const without = page({ type: 2, content: Buffer.alloc(4), head: inner(5, [i32(1, 1)]) });
    expect(() => read(without)).toThrow(refused("the head of a page"));
  });

  it.each<[string, Buffer, string]>([
    ["a kind that is none", page({ type: 1 }), "a page of no known kind"],
    ["a length beyond the end", page({ stored: 9 }), "a page beyond its end"],
    ["an unpacked length beyond all", page({ unpacked: 2 ** 28 + 1 }), "a page beyond its end"],
    ["an unpacked length below zero", page({ unpacked: -1 }), "the head of a page"],
    ["a length below zero", page({ stored: -1 }), "the head of a page"],
    ["a kind below zero", page({ type: -1 }), "the head of a page"],
    ["the head of the other version", page({ type: 3 }), "the head of a page"],
    ["a number where the head stands", page({ head: i32(5, 1) }), "the head of a page"],
    ["a head without values", page({ head: inner(5, [i32(2, 0)]) }), "the head of a page"],
    ["words where the values stand", page({ head: inner(5, [text(1, "2"), i32(2, 0)]) }), "the head of a page"],
    ["a head without an encoding", page({ head: inner(5, [i32(1, 2)]) }), "the head of a page"],
    ["values below zero", page({ head: inner(5, [i32(1, -1), i32(2, 0)]) }), "the head of a page"],
    ["no head at all", Buffer.from([0]), "the head of a page"],
    ["half a head", Buffer.from([0x15]), "breaks off"],
  ])("%s: refused", (_, bytes, received) => expect(() => read(bytes)).toThrow(refused(received)));

  it("may tell of an unpacked length up to a bound", () => {
    const asked: number[] = [];
    const unpack = (_: Uint8Array, length: number): Uint8Array => {
      asked.push(length);
      return new Uint8Array(8);
    };
    expect(read(page({ unpacked: 2 ** 28 }), { codec: "SNAPPY", unpack })).toBe(false);
    expect(asked).toEqual([2 ** 28]);
  });

  it("are unpacked to the length that they tell", () => {
    const asked: [number, number][] = [];
    const unpack = (bytes: Uint8Array, length: number): Uint8Array => {
      asked.push([bytes.length, length]);
      return new Uint8Array(length);
    };
    const small = page({ content: Buffer.alloc(3), unpacked: 8 });
    const words = page({ type: 2, content: Buffer.alloc(1), unpacked: 12, head: inner(7, [i32(1, 3)]) });
    expect(read(Buffer.concat([words, small]), { codec: "SNAPPY", unpack })).toBe(false);
    expect(asked).toEqual([
      [1, 12],
      [3, 8],
    ]);
  });
});

describe("pages of the second version", () => {
  const content = Buffer.from([3, 0b10, 0, 0, 0, 0]);
  const packed = (more: Field[] = [], told: Made = {}): Buffer =>
    page({ type: 3, content, head: second(2, 1, 2, ...more), ...told });
  /** A field that is false. */
  const isPlain: Field = [7, 2, Buffer.alloc(0)];
  const isPacked: Field = [7, 1, Buffer.alloc(0)];

  it("have levels that are not packed, and values that may be", () => {
    const asked: [number[], number][] = [];
    const unpack = (bytes: Uint8Array, length: number): Uint8Array => {
      asked.push([[...bytes], length]);
      return new Uint8Array(length);
    };
    expect(read(packed(), { of: optional, unpack })).toBe(false);
    expect(read(packed([isPacked]), { of: optional, unpack })).toBe(false);
    expect(asked).toEqual(Array(2).fill([[0, 0, 0, 0], 4]));
    expect(read(packed([isPlain]), { of: optional, unpack })).toBe(false);
    expect(asked).toHaveLength(2);
  });

  it("of nulls alone unpack nothing", () => {
    const nulls = page({ type: 3, content: Buffer.from([4, 0]), head: second(2, 2, 2) });
    const unpack = (): Uint8Array => {
      throw new Error("nothing there to be unpacked");
    };
    expect(read(nulls, { of: optional, unpack })).toBe(false);
  });

  it.each<[string, Buffer, string]>([
    ["levels longer than the page", packed([], { head: second(2, 1, 7) }), "a page shorter than its levels"],
    ["levels longer than it is unpacked", packed([], { unpacked: 1 }), "a page shorter than its levels"],
    [
      "two kinds of levels, the second longer",
      packed([], { head: inner(8, [i32(1, 2), i32(2, 1), i32(4, 0), i32(5, 1), i32(6, 6)]) }),
      "a page shorter than its levels",
    ],
    [
      "two kinds of levels that are longer together",
      packed([], { head: inner(8, [i32(1, 2), i32(2, 1), i32(4, 0), i32(5, 4), i32(6, 3)]) }),
      "a page shorter than its levels",
    ],
    ["another number of nulls", packed([], { head: second(2, 0, 2) }), "another number of nulls"],
    ["no number of nulls", packed([], { head: inner(8, [i32(1, 2), i32(4, 0)]) }), "the head of a page"],
    [
      "no length of the levels",
      packed([], { head: inner(8, [i32(1, 2), i32(2, 1), i32(4, 0)]) }),
      "the head of a page",
    ],
    ["more values", packed([], { head: second(3, 1, 2) }), "more values than rows"],
  ])("%s: refused", (_, bytes, received) => {
    expect(() => read(bytes, { of: optional })).toThrow(refused(received));
  });
});
