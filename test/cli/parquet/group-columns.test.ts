import type { ColumnMetaData, SchemaElement, Statistics } from "hyparquet";
import { type ColumnSource, type ParquetWriteOptions, parquetWriteBuffer } from "hyparquet-writer";
import { describe, expect, it } from "vitest";
import type { ByteSource } from "../../../src/cli/parquet/byte-source";
import { cellText } from "../../../src/cli/parquet/cell-text";
import { type Footer, readFooter } from "../../../src/cli/parquet/footer";
import { groupColumns } from "../../../src/cli/parquet/group-columns";
import { madeParquet } from "./made-file";

const source = (bytes: Uint8Array): ByteSource => ({
  size: bytes.length,
  read: async (from, to) => Uint8Array.from(bytes.subarray(from, to)),
});

/** A part of the schema, as the writer has it. */
type Part = NonNullable<ParquetWriteOptions["schema"]>[number];

interface Written {
  readonly schema?: Part[];
  readonly codec?: "SNAPPY" | "UNCOMPRESSED";
  readonly pageSize?: number;
  readonly rowGroupSize?: number;
}

const written = (columnData: ColumnSource[], { codec = "UNCOMPRESSED", ...more }: Written = {}): Uint8Array =>
  new Uint8Array(parquetWriteBuffer({ columnData, codec, ...more }));

let beats = 0;

/** The cells of a row group, after what the file tells of it is changed. */
async function cells(bytes: Uint8Array, change: (footer: Footer) => void = () => undefined, index = 0) {
  const file = source(bytes);
  const footer = await readFooter(file);
  change(footer);
  const { columns, summed } = await groupColumns(file, footer, index, () => void beats++);
  return { columns: columns.map((values) => Array.from(values, cellText)), summed };
}

const chunkOf = ({ metadata }: Footer, i = 0): ColumnMetaData =>
  metadata.row_groups[0]?.columns[i]?.meta_data as ColumnMetaData;
const v = { name: "v", data: [2.5, 1, 3], type: "DOUBLE" as const };
/** A column of two parts, as the schema of the format has it. */
const bearings = (...data: { de: number; nde: number }[]): [ColumnSource, Part[]] => [
  { name: "bearings", data },
  [
    { name: "bearings", repetition_type: "OPTIONAL", num_children: 2 },
    { name: "de", repetition_type: "REQUIRED", type: "DOUBLE" },
    { name: "nde", repetition_type: "REQUIRED", type: "DOUBLE" },
  ],
];
const damaged = (received: string) => ({ code: "syntax", expected: "a Parquet file that is whole", received });
const WHERE = 'column "v", row group 1';

describe("the columns of a row group", () => {
  it("are read whole, and something is told to be done", async () => {
    beats = 0;
    expect(await cells(written([v]))).toEqual({ columns: [["2.5", "1", "3"]], summed: false });
    expect(beats).toBeGreaterThan(2);
  });

  it.each(["SNAPPY", "UNCOMPRESSED"] as const)("in many pages, %s", async (codec) => {
    const data = Array.from({ length: 3000 }, (_, i) => i / 8);
    const { columns } = await cells(written([{ ...v, data }], { codec, pageSize: 500, rowGroupSize: 3000 }));
    expect(columns).toEqual([data.map(String)]);
  });

  it.each(["SNAPPY", "UNCOMPRESSED"] as const)("nested, behind another one, %s", async (codec) => {
    const data = [1, 3, 5].map((de) => ({ de, nde: de + 1 }));
    const [column, parts] = bearings(...data);
    const flat = (name: string): Part => ({ name, repetition_type: "REQUIRED", type: "DOUBLE" });
    const schema = [{ name: "root", num_children: 3 }, flat("v"), ...parts, flat("w")];
    const { columns } = await cells(
      written([{ name: "v", data: v.data }, column, { name: "w", data: v.data }], { codec, schema }),
    );
    expect(columns).toEqual([["2.5", "1", "3"], data.map((one) => JSON.stringify(one)), ["2.5", "1", "3"]]);
  });

  it("of each row group are its own", async () => {
    const bytes = written([v], { rowGroupSize: 2 });
    expect((await cells(bytes)).columns).toEqual([["2.5", "1"]]);
    expect((await cells(bytes, undefined, 1)).columns).toEqual([["3"]]);
    const [, second] = (await readFooter(source(bytes))).metadata.row_groups;
    const at = Number(second?.columns[0]?.meta_data?.data_page_offset);
    bytes[at] = 0xff;
    await expect(cells(bytes, undefined, 1)).rejects.toMatchObject({
      received: expect.stringContaining('column "v", row group 2: '),
    });
  });

  it("have checksums if all have", async () => {
    const made = (...checksums: boolean[]) =>
      cells(madeParquet(checksums.map((checksum, i) => ({ name: `${i}`, values: [1], checksum }))));
    expect((await made(true, true)).summed).toBe(true);
    expect((await made(true, false)).summed).toBe(false);
    expect((await made(false, true)).summed).toBe(false);
  });

  it("with parts of several codecs are refused", async () => {
    const [column, parts] = bearings({ de: 1, nde: 2 });
    const bytes = written([column], { schema: [{ name: "root", num_children: 1 }, ...parts] });
    const change = (footer: Footer): void => {
      chunkOf(footer, 1).codec = "GZIP";
    };
    await expect(cells(bytes, change)).rejects.toMatchObject(
      damaged('column "bearings", row group 1: parts of several codecs'),
    );
  });

  it("of a codec that cannot be read are refused by its name", async () => {
    const change = (footer: Footer): void => {
      chunkOf(footer).codec = "LZO";
    };
    await expect(cells(written([v]), change)).rejects.toMatchObject({
      received: `${WHERE}: unsupported compression codec LZO`,
    });
  });

  it("of a kind that the library does not know are refused in its words", async () => {
    const change = ({ metadata }: Footer): void => {
      const [, element] = metadata.schema as [SchemaElement, SchemaElement];
      element.converted_type = "INTERVAL";
    };
    await expect(cells(written([v]), change)).rejects.toMatchObject({
      code: "syntax",
      expected: "columns of kinds that can be read",
      received: `${WHERE}: parquet interval not supported`,
    });
  });

  it("that the library stumbles over are refused as damaged", async () => {
    const change = ({ metadata }: Footer): void => {
      (metadata.schema[1] as SchemaElement).converted_type = "JSON";
    };
    const text = written([{ name: "v", data: ["no json {"], type: "STRING" }]);
    const { columns } = await cells(text, change).catch(({ received }) => ({ columns: received }));
    expect(columns).toEqual([["no json {"]]);
    // numbers of a dictionary that has fewer values
    const twice = written([{ name: "v", data: Array(40).fill("fan"), type: "STRING" }], { codec: "UNCOMPRESSED" });
    const at = Buffer.from(twice).indexOf(Buffer.from([3, 0, 0, 0, 102, 97, 110])) + 7;
    expect(at).toBeGreaterThan(7);
    // every byte behind the dictionary in turn: rows as they are, or a refusal
    for (let i = at; i < at + 30; i++) {
      const copy = Uint8Array.from(twice);
      copy[i] = (copy[i] as number) ^ 0x41;
      const outcome = await cells(copy).then(
        ({ columns: [read] }) => read?.length,
        ({ name }) => name,
      );
      expect([40, "VeladisError"]).toContain(outcome);
    }
  });
});

describe("bytes as text", () => {
  const bytes = written([{ name: "v", data: [Uint8Array.of(0xff, 0x0a)], type: "BYTE_ARRAY" }]);
  const told = (told: Partial<SchemaElement>) =>
    cells(bytes, ({ leaves: [leaf] }) => {
      Object.assign(leaf?.element as SchemaElement, told);
    });

  it.each<[string, Partial<SchemaElement>]>([
    ["UTF-8", { converted_type: "UTF8" }],
    ["one of a list", { converted_type: "ENUM" }],
    ["text, the newer way", { logical_type: { type: "STRING" } }],
    ["one of a list, the newer way", { logical_type: { type: "ENUM" } }],
  ])("told as %s, are none where they are not UTF-8", async (_, element) => {
    const { columns } = await told(element);
    expect(columns).toEqual([[{ reason: "text that is not UTF-8" }]]);
  });

  it("that are told as nothing are shown as they are", async () => {
    expect((await told({})).columns).toEqual([["0xff0a"]]);
    await expect(told({ converted_type: "BSON" })).rejects.toMatchObject({
      expected: "columns of kinds that can be read",
      received: `${WHERE}: parquet bson not supported`,
    });
  });
});

describe("values are held against what the file tells of them", () => {
  const withStatistics = (statistics: Statistics, column: ColumnSource = v) =>
    cells(written([column]), (footer) => {
      chunkOf(footer).statistics = statistics;
    });

  it.each<[string, Statistics]>([
    ["its least and greatest", { min_value: 1, max_value: 3, null_count: 0n }],
    ["wider bounds", { min_value: 0, max_value: 4 }],
    ["no bounds", {}],
    ["a least alone", { min_value: 1 }],
    ["bounds of two kinds", { min_value: 2, max_value: 9n }],
    ["bounds that are texts", { min_value: "2", max_value: "2" }],
  ])("%s: read", async (_, statistics) => {
    expect((await withStatistics(statistics)).columns).toEqual([["2.5", "1", "3"]]);
  });

  it("whole numbers of 64 bits too", async () => {
    const whole = { name: "v", data: [2n, 1n, 3n], type: "INT64" as const };
    expect((await withStatistics({ min_value: 1n, max_value: 3n }, whole)).columns).toEqual([["2", "1", "3"]]);
    await expect(withStatistics({ min_value: 1n, max_value: 2n }, whole)).rejects.toMatchObject(
      damaged(`${WHERE}: a value of 3, where it tells of 1 to 2`),
    );
  });

  it.each<[string, Statistics, string]>([
    ["below the least", { min_value: 1.5, max_value: 3 }, "a value of 1, where it tells of 1.5 to 3"],
    ["above the greatest", { min_value: 1, max_value: 2.75 }, "a value of 3, where it tells of 1 to 2.75"],
    ["nulls that are none", { null_count: 1n }, "another number of nulls"],
  ])("%s: refused", async (_, statistics, received) => {
    await expect(withStatistics(statistics)).rejects.toMatchObject(damaged(`${WHERE}: ${received}`));
  });

  it("nulls are counted, and are no values", async () => {
    const some = { name: "v", data: [2, null, 3, null], type: "DOUBLE" as const };
    const told = { min_value: 2, max_value: 3 };
    expect((await withStatistics({ ...told, null_count: 2n }, some)).columns).toEqual([["2", "", "3", ""]]);
    await expect(withStatistics({ ...told, null_count: 1n }, some)).rejects.toMatchObject(
      damaged(`${WHERE}: another number of nulls`),
    );
  });

  it("parts of a nested column are not: what is told is of one part", async () => {
    const told = (footer: Footer): void => {
      chunkOf(footer).statistics = { null_count: 1n };
    };
    const [column, parts] = bearings({ de: 1, nde: 2 });
    const nested = written([column], { schema: [{ name: "root", num_children: 1 }, ...parts] });
    expect((await cells(nested, told)).columns).toEqual([['{"de":1,"nde":2}']]);
  });

  it("and have to be as many as the rows", async () => {
    for (const rows of [2n, 4n]) {
      const change = (footer: Footer): void => {
        const [group] = footer.metadata.row_groups;
        if (group) group.num_rows = rows;
      };
      await expect(cells(written([v]), change)).rejects.toMatchObject({
        code: "syntax",
        received: expect.stringContaining(WHERE),
      });
    }
  });
});
