import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import { parquetWriteFile } from "hyparquet-writer";
import { afterAll, describe, expect, it } from "vitest";
import { snappyUnpacked } from "../../src/cli/parquet/snappy";
import { veladis } from "./in-process";
import { madeParquet } from "./parquet/made-file";

const folder = mkdtempSync(join(tmpdir(), "veladis-parquet-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let count = 0;
function file(content: Uint8Array): string {
  const path = join(folder, `${++count}.parquet`);
  writeFileSync(path, content);
  return path;
}

const told = ["--from", "mm/s rms", "--to", "mm/s rms"];
const table = (path: string, ...more: string[]) => veladis(["table", path, "--column", "v", ...told, ...more]);
const v = { name: "v", values: [1, 2, 3] };

describe("a Parquet file that is no whole one is refused in words", () => {
  const whole = madeParquet([v]);
  const mark = (at: number, text: string): Buffer => {
    const bytes = Buffer.from(whole);
    bytes.write(text, at === -1 ? bytes.length - 4 : at);
    return bytes;
  };
  it.each([
    ["nothing", Buffer.alloc(0), "an empty file"],
    ["text", Buffer.from("v\n1\n"), 'begins with \\"v\\\\n1\\\\n\\"'],
    ["a mark alone", Buffer.from("PAR1"), "cut off"],
    ["its first half", whole.subarray(0, whole.length / 2), "cut off"],
    ["encrypted as a whole", mark(-1, "PARE"), "encrypted"],
    [
      "encrypted in a column",
      madeParquet([v, { ...v, name: "w", encrypted: true }]),
      'column \\"w\\", which is encrypted',
    ],
    ["a hole in its description", Buffer.concat([whole.subarray(0, -40), whole.subarray(-8)]), "description"],
    ["two files", Buffer.concat([whole, whole]), "two files, one behind the other"],
  ])("%s", async (_, content, received) => {
    const { out, err, code } = await table(file(content), "--json");
    expect([out, code]).toEqual(["", 2]);
    expect(err).toContain(received);
    expect(err.trim().split("\n")).toHaveLength(1);
  });

  it("a page whose checksum is another, and only then", async () => {
    const checked = madeParquet([{ ...v, checksum: true }]);
    expect((await table(file(checked))).out).toContain("\n2,2,");
    const at = checked.indexOf(Buffer.from(Float64Array.of(2).buffer));
    checked[at + 6] = (checked[at + 6] as number) ^ 1;
    const { err, code } = await table(file(checked));
    expect([code, err]).toEqual([2, expect.stringContaining('column "v", row group 1: a page with another checksum')]);
  });

  it("a value beyond what the file tells of its column", async () => {
    const path = join(folder, "told.parquet");
    parquetWriteFile({
      filename: path,
      columnData: [{ name: "v", data: [1, 2.5, 3], type: "DOUBLE" }],
      codec: "UNCOMPRESSED",
    });
    const bytes = readFileSync(path);
    const at = bytes.indexOf(Buffer.from(Float64Array.of(2.5).buffer));
    bytes.writeDoubleLE(250, at);
    expect((await table(file(bytes))).err).toContain("a value of 250, where it tells of 1 to 3");
  });
});

describe("what Parquet holds is told as text", () => {
  it("columns without a name, and with numbers as names, each by its number", async () => {
    const columns = ["2", "", "3", "3"].map((name, i) => ({ name, values: [i + 1] }));
    const path = file(madeParquet(columns));
    const read = async (column: string): Promise<string> => {
      const { out, err } = await veladis(["table", path, "--column", column, "--from", "mm/s rms", "--to", "mm/s rms"]);
      return out === "" ? err : (out.trim().split("\n").at(-1) as string);
    };
    expect(await Promise.all(["2", "1", "#2", "", "#3", "4"].map(read))).toEqual([
      ...["1,2,3,4,1,", "1,2,3,4,1,", "1,2,3,4,2,", expect.anything(), "1,2,3,4,3,", "1,2,3,4,4,"],
    ]);
    expect(await read("3")).toContain("by its number, #3 or #4");
  });

  it("two columns of one name, each by its number; by the name neither", async () => {
    const path = file(madeParquet([v, { name: "v", values: [7, 8, 9] }]));
    const byNumber = await veladis(["table", path, "--column", "2", ...told]);
    expect(byNumber.out.split("\n").slice(0, 2)).toEqual(["v,v,mm/s rms,assumed", "1,7,7,"]);
    expect(byNumber.code).toBe(0);
  });

  it("an instant beyond all dates is refused with its row, and no other row is", async () => {
    const path = file(madeParquet([v, { name: "at", kind: 9, values: [0n, 8640000000000001n, -1n] }]));
    const { out, err, code } = await table(path);
    expect(out.split("\n")).toEqual([
      "v,at,mm/s rms,assumed",
      "1,1970-01-01T00:00:00.000Z,1,",
      "3,1969-12-31T23:59:59.999Z,3,",
      "",
    ]);
    expect(err).toContain("line 2: syntax");
    expect(err).toContain('a time beyond all dates in column "at"');
    expect(code).toBe(2);
  });

  it("microseconds are kept, before 1970 too", async () => {
    const path = file(madeParquet([v, { name: "at", kind: 10, values: [1n, -1n, 1500n] }]));
    expect((await table(path)).out.match(/\d{4}-[^,]*/g)).toEqual([
      "1970-01-01T00:00:00.000001Z",
      "1969-12-31T23:59:59.999999Z",
      "1970-01-01T00:00:00.0015Z",
    ]);
  });

  it("dates, nested columns, bytes, numbers beyond 2^53", async () => {
    const path = join(folder, "kinds.parquet");
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    await connection.run(
      `COPY (SELECT 1.5 AS v, DATE '2026-02-28' AS day, {'a': [1, 2], 'b': 9007199254740993} AS parts,
        '\\xFF\\x00'::BLOB AS bytes, 9007199254740993 AS big, NULL::INTEGER AS none) TO '${path}' (FORMAT parquet)`,
    );
    const { out } = await table(path);
    expect(out.split("\n")[1]).toBe(
      '1.5,2026-02-28,"{""a"":[1,2],""b"":""9007199254740993""}",0xff00,9007199254740993,,1.5,',
    );
  });

  it("no rows are refused", async () => {
    const { out, err, code } = await table(file(madeParquet([{ name: "v", values: [] }])));
    expect([out, code]).toEqual(["", 2]);
    expect(err).toContain("a Parquet file with rows\n  received: no rows");
  });

  it("--decimal-comma is refused, as --separator is: numbers of binary columns have a point", async () => {
    const { out, err, code } = await table(file(madeParquet([{ name: "v", values: [1.5] }])), "--decimal-comma");
    expect([out, code]).toEqual(["", 2]);
    expect(err).toContain("received: --decimal-comma, and Parquet");
  });
});

describe("what became of the rows of Parquet", () => {
  const beyond = { name: "at", kind: 9, values: [0n, 8640000000000001n, -1n] };

  it("is accounted for, against the number of rows that the file tells", async () => {
    const path = file(madeParquet([{ name: "v", values: [1, -2, 3] }, beyond]));
    const { err } = await table(path);
    expect(err).toContain("rows: 3 in = 2 answered + 1 refused + 0 skipped\n");
    const { err: json } = await table(path, "--json");
    const { summary } = JSON.parse(json.trim().split("\n").at(-1) as string);
    const skipped = { blank: 0, remarks: 0, preamble: 0 };
    expect(summary.account).toEqual({ in: 3, answered: 2, refused: 1, skipped, torn: false });
  });

  it.each([
    ["none", [v, { ...v, name: "w" }], false],
    [
      "in one column alone",
      [
        { ...v, checksum: true },
        { ...v, name: "w" },
      ],
      false,
    ],
    ["in all pages", [{ ...v, checksum: true }], true],
  ])("and whether its pages have checksums: %s", async (_, columns, checksums) => {
    const path = file(madeParquet(columns));
    const told = "checksums not in all pages of the file: damage there may pass as other values\n";
    expect((await table(path)).err.includes(told)).toBe(!checksums);
    const { err } = await table(path, "--json");
    expect(JSON.parse(err).summary.checksums).toBe(checksums);
  });

  it("gzip has checksums of its own", async () => {
    const path = join(folder, "gzip.parquet");
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    for (const codec of ["gzip", "snappy"]) {
      await connection.run(`COPY (SELECT 1.5 AS v) TO '${path}' (FORMAT parquet, COMPRESSION ${codec})`);
      expect((await table(path)).err.includes("checksums not in all pages")).toBe(codec !== "gzip");
    }
  });
});

describe("Snappy", () => {
  // packed by hand, from the description of the format
  const literal = [3, 2 << 2, 97, 98, 99];
  it.each([
    ["a literal", literal, 3, "abc"],
    ["a copy of itself", [8, 1 << 2, 97, 98, (5 << 2) | 2, 2, 0], 8, "abababab"],
    ["a copy by one byte", [6, 1 << 2, 97, 98, 1, 2], 6, "ababab"],
    ["another length", literal, 4, undefined],
    ["a copy from before the beginning", [4, 0, 97, (2 << 2) | 2, 9, 0], 4, undefined],
    ["a literal of thousands of millions", [3, 63 << 2, 255, 255, 255, 127, 97], 3, undefined],
    ["a copy beyond the end", [3, 0, 97, (60 << 2) | 2, 1, 0], 3, undefined],
    ["nothing", [], 3, undefined],
  ])("%s", (_, packed, length, text) => {
    const unpacked = snappyUnpacked(Uint8Array.from(packed), length);
    expect(unpacked && Buffer.from(unpacked).toString()).toBe(text);
  });
});
