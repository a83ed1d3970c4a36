import { describe, expect, it } from "vitest";
import type { ByteSource } from "../../../src/cli/parquet/byte-source";
import { readFooter } from "../../../src/cli/parquet/footer";
import { binary, type Field, i32, i64, inner, list, struct, text, zigzag } from "./made-file";

interface Leaf {
  readonly name: string;
  readonly type?: number;
  /** 0 required, 1 optional, 2 repeated. */
  readonly how?: number;
  readonly more?: readonly Field[];
  readonly parts?: readonly Leaf[];
  readonly count?: number;
}

const element = ({ name, type = 5, how = 0, more = [], parts, count = parts?.length }: Leaf): Buffer[] => [
  struct([
    ...(count === undefined ? [i32(1, type)] : []),
    ...[i32(3, how), text(4, name)],
    ...(count === undefined ? [] : [i32(5, count)]),
    ...more,
  ]),
  ...(parts ?? []).flatMap(element),
];

interface Chunk {
  readonly path?: readonly string[];
  readonly type?: number;
  readonly values?: number;
  readonly at?: number;
  readonly size?: number;
  readonly dictionary?: number;
  readonly more?: readonly Field[];
  readonly none?: boolean;
}

const chunk = ({
  path = ["v"],
  type = 5,
  values = 2,
  at = 4,
  size = 20,
  dictionary,
  more = [],
  none,
}: Chunk): Buffer => {
  const meta = inner(3, [
    ...[i32(1, type), list(2, 5, [zigzag(0)]), list(3, 8, path.map(binary)), i32(4, 0), i64(5, values)],
    ...[i64(6, size), i64(7, size), i64(9, at), ...(dictionary === undefined ? [] : [i64(11, dictionary)])],
  ]);
  return struct([i64(2, 0), ...(none ? [] : [meta]), ...more]);
};

interface Group {
  readonly rows?: number;
  readonly columns?: readonly Chunk[];
}

interface Told {
  readonly leaves?: readonly Leaf[];
  readonly groups?: readonly Group[];
  readonly rows?: number;
  /** Columns that the schema tells of. */
  readonly count?: number;
}

/** A description, by the numbers of the format. */
const described = ({ leaves = [{ name: "v" }], groups = [{}], rows = 2, count = leaves.length }: Told): Buffer =>
  struct([
    i32(1, 1),
    list(2, 12, element({ name: "table", parts: leaves, count })),
    i64(3, rows),
    list(
      ...([4, 12] as const),
      groups.map(({ rows = 2, columns = [{}] }) => struct([list(1, 12, columns.map(chunk)), i64(2, 20), i64(3, rows)])),
    ),
  ]);

/** A file of 20 bytes of pages, and that description. */
function whole(description: Buffer, body: Uint8Array = Buffer.alloc(20)): Buffer {
  const length = Buffer.alloc(4);
  length.writeUInt32LE(description.length);
  return Buffer.concat([Buffer.from("PAR1"), body, description, length, Buffer.from("PAR1")]);
}

const source = (bytes: Uint8Array): ByteSource => ({
  size: bytes.length,
  read: async (from, to) => Uint8Array.from(bytes.subarray(from, to)),
});
const read = (told: Told, body?: Uint8Array) => readFooter(source(whole(described(told), body)));
const WHERE = "its description at the end";
const damaged = (received: string) => ({ code: "syntax", expected: "a Parquet file that is whole", received });

// Apache Parquet, file format (parquet.thrift): FileMetaData, SchemaElement, RowGroup, ColumnChunk, ColumnMetaData
describe("the description that a Parquet file ends with", () => {
  it("tells of columns and rows; within, columns go by their number", async () => {
    const parts = { name: "parts", how: 1, parts: [{ name: "a" }, { name: "b", how: 1 }] };
    const columns = [
      ...[{}, { path: ["v"], at: 24 }],
      ...[
        { path: ["parts", "a"], at: 44 },
        { path: ["parts", "b"], at: 64 },
      ],
    ];
    const body = Buffer.alloc(80);
    const footer = await read({ leaves: [{ name: "v" }, { name: "v" }, parts], groups: [{ columns }] }, body);
    expect(footer.names).toEqual(["v", "v", "parts"]);
    expect(footer.rows).toBe(2);
    expect(footer.leaves.map(({ top, path }) => [top, path.join(".")])).toEqual([
      ...[
        [0, "v"],
        [1, "v"],
        [2, "parts.a"],
        [2, "parts.b"],
      ],
    ]);
    const paths = footer.metadata.row_groups[0]?.columns.map(({ meta_data }) => meta_data?.path_in_schema.join("."));
    expect(paths).toEqual(["0", "1", "2.a", "2.b"]);
  });

  it("of several row groups: their rows together", async () => {
    const groups = [{}, { rows: 3, columns: [{ values: 3, at: 24, size: 16 }] }];
    expect((await read({ groups, rows: 5 }, Buffer.alloc(36))).rows).toBe(5);
    expect((await read({ groups: [], rows: 0 })).rows).toBe(0);
    // written in another order than they stand
    expect((await read({ groups: [...groups].reverse(), rows: 5 }, Buffer.alloc(36))).rows).toBe(5);
    // a group of no rows may lie anywhere
    const none = { rows: 0, columns: [{ values: 0, size: 0 }] };
    expect((await read({ groups: [{}, none, none] })).rows).toBe(2);
  });

  it.each<[string, Buffer, object]>([
    ["nothing", Buffer.alloc(0), { code: "syntax", expected: "a Parquet file", received: "an empty file" }],
    ["a word", Buffer.from("v"), { expected: "a Parquet file", received: 'a file that begins with "v"' }],
    ["a mark alone", Buffer.from("PAR1"), damaged("its end: cut off: the mark PAR1 is missing there")],
    ["two marks alone", Buffer.from("PAR1PAR1"), damaged("its end: cut off: the mark PAR1 is missing there")],
    ["a mark, no length, and a mark", Buffer.from("PAR1\0\0\0\0PAR1"), damaged(`${WHERE}: breaks off`)],
    ["a length beyond the beginning", Buffer.from("PAR1\x01\0\0\0PAR1"), damaged(`${WHERE}: longer than the file`)],
    [
      "encrypted, by its beginning",
      Buffer.from("PARE12345678PAR1"),
      { expected: "a Parquet file that is not encrypted", received: "one that is encrypted" },
    ],
    [
      "encrypted, by its end",
      Buffer.from("PAR112345678PARE"),
      { expected: "a Parquet file that is not encrypted", received: "one that is encrypted" },
    ],
  ])("%s: refused", async (_, bytes, refusal) => {
    await expect(readFooter(source(bytes))).rejects.toMatchObject(refusal);
  });

  it("a description as long as the file is read", async () => {
    const bytes = whole(described({ groups: [], rows: 0 }), Buffer.alloc(0));
    expect((await readFooter(source(bytes))).names).toEqual(["v"]);
  });

  it("that is none of a table is refused", async () => {
    const other = whole(struct([i32(1, 1)]));
    await expect(readFooter(source(other))).rejects.toMatchObject(damaged(`${WHERE}: no description of a table`));
  });

  const second = { path: ["w"], at: 4, size: 20 };
  const two = [{ name: "v" }, { name: "w" }];

  it.each<[string, Told, string]>([
    ["more columns than are told", { leaves: two, count: 1 }, "columns left over"],
    ["no columns", { leaves: [], count: 0, groups: [], rows: 0 }, "columns left over"],
    ["rows below zero", { rows: -1, groups: [{ rows: -1 }] }, "a number that cannot be"],
    ["rows beyond 2^53", { groups: [{ rows: 2 ** 53, columns: [{ values: 2 ** 53 }] }] }, "a number that cannot be"],
    ["values below zero", { groups: [{ columns: [{ values: -1 }] }] }, "a number that cannot be"],
    ["a size below zero", { groups: [{ columns: [{ size: -1 }] }] }, "a number that cannot be"],
    ["fewer columns in a row group", { leaves: two }, "a row group of other columns"],
    ["more columns in a row group", { groups: [{ columns: [{}, second] }] }, "a row group of other columns"],
    ["no columns in a row group", { groups: [{ columns: [] }] }, "a row group of other columns"],
    ["a column without its place", { groups: [{ columns: [{ none: true }] }] }, "a column without its place"],
    ["a column of another name", { groups: [{ columns: [{ path: ["w"] }] }] }, "a column of another name"],
    [
      "a column of a name in two",
      { leaves: [{ name: "ab" }], groups: [{ columns: [{ path: ["a", "b"] }] }] },
      "a column of another name",
    ],
    ["a column of another type", { groups: [{ columns: [{ type: 2 }] }] }, "a column of another type"],
    ["fewer values than rows", { groups: [{ columns: [{ values: 1 }] }] }, "another number of rows"],
    ["more values than rows", { groups: [{ columns: [{ values: 3 }] }] }, "another number of rows"],
    ["another number of rows", { rows: 3 }, "another number of rows"],
    ["a column before the first byte", { groups: [{ columns: [{ at: 3 }] }] }, "a column beyond its end"],
    ["a column beyond the last byte", { groups: [{ columns: [{ size: 21 }] }] }, "a column beyond its end"],
    [
      "a dictionary behind its pages",
      { groups: [{ columns: [{ at: 4, dictionary: 5, size: 19 }] }] },
      "a column beyond its end",
    ],
    ["two columns in one place", { leaves: two, groups: [{ columns: [{}, second] }] }, "columns in one place"],
    [
      "a column over the next by a byte",
      { leaves: two, groups: [{ columns: [{ size: 11 }, { path: ["w"], at: 14, size: 10 }] }] },
      "columns in one place",
    ],
    [
      "the second over the first by a byte",
      {
        leaves: two,
        groups: [
          {
            columns: [
              { at: 14, size: 10 },
              { path: ["w"], size: 11 },
            ],
          },
        ],
      },
      "columns in one place",
    ],
    ["a row group over another", { rows: 4, groups: [{}, {}] }, "columns in one place"],
  ])("%s: refused", async (_, told, received) => {
    await expect(read(told)).rejects.toMatchObject(damaged(`${WHERE}: ${received}`));
  });

  it.each<[string, Told]>([
    ["a column to the last byte", { groups: [{ columns: [{ at: 4, size: 20 }] }] }],
    ["a dictionary before its pages", { groups: [{ columns: [{ at: 8, dictionary: 4 }] }] }],
    ["columns side by side", { leaves: two, groups: [{ columns: [{ size: 10 }, { path: ["w"], at: 14, size: 10 }] }] }],
    ["lists, with more values than rows", { leaves: [{ name: "v", how: 2 }], groups: [{ columns: [{ values: 3 }] }] }],
    ["lists, each of one", { leaves: [{ name: "v", how: 2 }] }],
    ["an empty name of a file", { groups: [{ columns: [{ more: [text(1, "")] }] }] }],
  ])("%s: read", async (_, told) => expect((await read(told)).rows).toBe(2));

  it("lists of fewer values than rows are refused", async () => {
    const told = { leaves: [{ name: "v", how: 2 }], groups: [{ columns: [{ values: 1 }] }] };
    await expect(read(told)).rejects.toMatchObject(damaged(`${WHERE}: another number of rows`));
  });

  it("a column that is encrypted or in another file is refused by its name", async () => {
    const leaves = [{ name: "parts", parts: [{ name: "a" }] }];
    const path = ["parts", "a"];
    const encrypted = { leaves, groups: [{ columns: [{ path, more: [inner(8, [inner(1, [])])] }] }] };
    await expect(read(encrypted)).rejects.toMatchObject({
      code: "syntax",
      expected: "a Parquet file that is not encrypted",
      received: 'column "parts.a", which is encrypted',
    });
    await expect(read({ groups: [{ columns: [{ more: [text(1, "other.parquet")] }] }] })).rejects.toMatchObject({
      expected: "a Parquet file that holds its columns itself",
      received: 'a column in "other.parquet"',
    });
  });

  it("parts of a column have names of their own, however deep", async () => {
    const parts = (...names: string[]): Leaf => ({ name: "parts", parts: names.map((name) => ({ name })) });
    const columns = (...paths: string[]): Group => ({
      columns: paths.map((path, i) => ({ path: path.split("."), at: 4 + 5 * i, size: 5 })),
    });
    const groups = [columns("parts.a", "parts.b", "parts.a")];
    await expect(read({ leaves: [parts("a", "b", "a")], groups })).rejects.toMatchObject({
      code: "syntax",
      expected: "parts of a column with names of their own",
      received: 'two parts "a" of column "parts"',
    });
    const deep = {
      leaves: [{ name: "top", parts: [parts("a", "a")] }],
      groups: [columns("top.parts.a", "top.parts.a")],
    };
    await expect(read(deep)).rejects.toMatchObject({ received: 'two parts "a" of column "top"' });
    expect((await read({ leaves: [parts("a", "b")], groups: [columns("parts.a", "parts.b")] })).names).toEqual([
      "parts",
    ]);
  });
});

/** The kinds of a column by the older number and by the newer structure, as the format lists them. */
describe("a column that tells its kind in both ways", () => {
  const unit = (which: number): Field => inner(2, [inner(which, [])]);
  const isUtc: Field = [1, 1, Buffer.alloc(0)];
  const kind = (...fields: Field[]): Field => inner(10, fields);
  const timestamp = (which: number): Field => kind(inner(8, [isUtc, unit(which)]));
  const time = (which: number): Field => kind(inner(7, [isUtc, unit(which)]));
  const decimal = (scale: number): Field => kind(inner(5, [i32(1, scale), i32(2, 9)]));
  const DECIMAL = 5;
  const DATE = 6;
  const [TIME_MS, TIME_US, STAMP_MS, STAMP_US] = [7, 8, 9, 10] as const;

  const column = (old: number | undefined, ...more: Field[]) =>
    read({
      leaves: [{ name: "v", type: 2, more: [...(old === undefined ? [] : [i32(6, old)]), ...more] }],
      groups: [{ columns: [{ type: 2 }] }],
    });

  it.each<[string, number | undefined, Field[]]>([
    ["milliseconds since 1970", STAMP_MS, [timestamp(1)]],
    ["microseconds since 1970", STAMP_US, [timestamp(2)]],
    ["milliseconds of a day", TIME_MS, [time(1)]],
    ["microseconds of a day", TIME_US, [time(2)]],
    ["a day", DATE, [kind(inner(6, []))]],
    ["a decimal number", DECIMAL, [i32(7, 2), decimal(2)]],
    ["the older way alone", STAMP_MS, []],
    ["the newer way alone", undefined, [timestamp(3)]],
    ["a whole number", 17, [kind(inner(10, [[1, 3, Buffer.from([32])]]))]],
  ])("%s", async (_, old, more) => expect((await column(old, ...more)).rows).toBe(2));

  it.each<[string, number, Field[]]>([
    ["milliseconds and microseconds since 1970", STAMP_MS, [timestamp(2)]],
    ["microseconds and nanoseconds since 1970", STAMP_US, [timestamp(3)]],
    ["milliseconds and microseconds of a day", TIME_MS, [time(2)]],
    ["of a day and since 1970", TIME_US, [timestamp(2)]],
    ["a day and a time", DATE, [timestamp(1)]],
    ["a time and a day", STAMP_MS, [kind(inner(6, []))]],
    ["decimal numbers of two scales", DECIMAL, [i32(7, 2), decimal(3)]],
    ["a decimal number and a time", STAMP_MS, [i32(7, 2), decimal(2)]],
    ["a day and a decimal number", DATE, [i32(7, 2), decimal(2)]],
  ])("%s: refused", async (_, old, more) => {
    await expect(column(old, ...more)).rejects.toMatchObject(damaged(`${WHERE}: a column of two kinds`));
  });
});

describe("two files, one behind the other", () => {
  const mega = 2 ** 20;
  const seam = Buffer.from("PAR1PAR1");
  const found = (body: Uint8Array, told: Told = {}) =>
    expect(read(told, body)).rejects.toMatchObject(damaged("the file: two files, one behind the other"));

  it("are found wherever the seam stands behind the columns", async () => {
    const body = Buffer.alloc(mega + 80);
    for (const at of [20, 21, mega + 10, mega + 13, mega + 17, mega + 20, mega + 24, mega + 72]) {
      const copy = Buffer.from(body);
      seam.copy(copy, at);
      await found(copy);
    }
  });

  it("and are not sought within a column, whose bytes may be anything", async () => {
    const body = Buffer.alloc(40);
    seam.copy(body, 12);
    expect((await read({}, body)).rows).toBe(2);
    const groups = [{ columns: [{ at: 24 }] }];
    expect((await read({ groups }, body)).rows).toBe(2);
    // half a seam is none
    const half = Buffer.alloc(60);
    Buffer.from("PAR1PAR2").copy(half, 30);
    expect((await read({}, half)).rows).toBe(2);
  });

  it("are found where no column stands at all", async () => {
    for (const at of [0, 12]) {
      const body = Buffer.alloc(20);
      seam.copy(body, at);
      await found(body, { groups: [], rows: 0 });
    }
  });
});
