import { brotliCompressSync, gzipSync } from "node:zlib";
import type { SchemaTree } from "hyparquet";
import { describe, expect, it } from "vitest";
import type { PlainFile } from "../../../src/cli/input/plain-file";
import { byteSource } from "../../../src/cli/parquet/byte-source";
import { unpackOf } from "../../../src/cli/parquet/codecs";
import { leafColumns } from "../../../src/cli/parquet/leaf-columns";

describe("the bytes of a file", () => {
  /** A file that gives at most so many bytes at once. */
  const file = (bytes: Uint8Array, most: number): PlainFile =>
    ({
      size: bytes.length,
      read: async (into: Uint8Array, offset: number, length: number, place: number) => {
        const part = bytes.subarray(place, place + Math.min(most, length));
        into.set(part, offset);
        return part.length;
      },
    }) as unknown as PlainFile;
  const ten = Uint8Array.from({ length: 10 }, (_, i) => i);

  it("are given whole, however many come at once", async () => {
    for (const most of [1, 3, 10]) {
      const source = byteSource("levels.parquet", file(ten, most));
      expect(source.size).toBe(10);
      expect(await source.read(2, 9)).toEqual(ten.subarray(2, 9));
      expect(await source.read(4, 4)).toEqual(new Uint8Array());
    }
  });

  it("that are no longer there are refused, with the place", async () => {
    await expect(byteSource("levels.parquet", file(ten, 3)).read(5, 12)).rejects.toMatchObject({
      code: "unreadable",
      expected: "a file that stays as it is while it is read: copy it first",
      received: '"levels.parquet", which ends before byte 12',
    });
  });

  it("that cannot be read are refused", async () => {
    const read = () => Promise.reject(Object.assign(new Error("EIO: i/o error, read"), { code: "EIO" }));
    const source = byteSource("levels.parquet", { size: 10, read } as unknown as PlainFile);
    await expect(source.read(0, 4)).rejects.toMatchObject({ name: "VeladisError", code: "unreadable" });
  });
});

describe("codecs", () => {
  const bytes = Buffer.from("seal air fan ".repeat(20));
  it.each<[string, Buffer]>([
    ["UNCOMPRESSED", bytes],
    ["GZIP", gzipSync(bytes)],
    ["BROTLI", brotliCompressSync(bytes)],
  ])("%s gives the bytes back, and refuses another length", (codec, packed) => {
    const unpack = unpackOf(codec, 'column "v"');
    expect(Buffer.from(unpack(packed, bytes.length))).toEqual(bytes);
    for (const other of [bytes.length - 1, bytes.length + 1, 0]) {
      expect(() => unpack(packed, other)).toThrow(
        expect.objectContaining({ code: "syntax", received: 'column "v": a page that does not unpack' }),
      );
    }
  });

  it("what does not unpack is refused, and nothing unpacks to nothing", () => {
    expect(() => unpackOf("GZIP", "a")(Buffer.from("no gzip"), 7)).toThrow("a page that does not unpack");
    expect(unpackOf("GZIP", "a")(gzipSync(""), 0)).toHaveLength(0);
  });

  it.each([
    ["LZO", "LZO"],
    [undefined, "of no known name"],
  ])("%s is refused by its name", (codec, name) => {
    expect(() => unpackOf(codec, 'column "v"')).toThrow(
      expect.objectContaining({
        code: "syntax",
        expected: "a Parquet file without compression, or by snappy, gzip or brotli (zstd from node 22.15 on)",
        received: `column "v": unsupported compression codec ${name}`,
      }),
    );
  });
});

// S. Melnik and others, Dremel (2010), sections 4.1 and 4.2: a level for each field above that is optional or repeated
describe("the leaves of a schema", () => {
  const node = (name: string, repetition_type: string, children: SchemaTree[] = [], above: string[] = []): SchemaTree =>
    ({ children, path: [...above, name], element: { name, repetition_type } }) as unknown as SchemaTree;

  it("have the levels of what is above them", () => {
    const part = node("element", "OPTIONAL", [], ["parts", "list"]);
    const list = node("list", "REPEATED", [part], ["parts"]);
    const schema = node("table", "REQUIRED", [
      node("v", "REQUIRED"),
      node("w", "OPTIONAL"),
      node("parts", "OPTIONAL", [list]),
      node("each", "REPEATED"),
    ]);
    const leaves = leafColumns(schema).map(({ top, path, definition, repetition }) => [
      ...[top, path.join("."), definition, repetition],
    ]);
    expect(leaves).toEqual([
      [0, "v", 0, 0],
      [1, "w", 1, 0],
      [2, "parts.list.element", 3, 1],
      [3, "each", 1, 1],
    ]);
  });
});
