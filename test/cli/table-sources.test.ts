import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { DuckDBInstance } from "@duckdb/node-api";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { parquetWriteFile } from "hyparquet-writer";
import { afterAll, describe, expect, it } from "vitest";
import { visitCsv } from "../../src/cli/table/csv-source";
import { rowReader } from "../../src/cli/table/row-reader";
import { quotedCell, type RowVisitor, type TableForm } from "../../src/cli/table/row-source";
import type { TableSettings } from "../../src/cli/table/settings";
import { convert } from "../../src/index";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-sources-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The rows of a text that comes in chunks cut at these places. */
async function visited(content: Buffer, cuts: readonly number[]) {
  const places = [0, ...[...cuts].map((cut) => cut % (content.length + 1)).sort((a, b) => a - b), content.length];
  const chunks = places.slice(1).map((end, i) => content.subarray(places[i], end));
  const rows: { cells: readonly string[]; raw: string; line: number }[] = [];
  let form: TableForm | undefined;
  const shares: (number | undefined)[] = [];
  const visitor: RowVisitor = {
    header(cells, raw, given) {
      form = given;
      rows.push({ cells, raw, line: 1 });
    },
    row: (cells, raw, line) => void rows.push({ cells, raw, line }),
    refused: (error) => {
      throw error;
    },
    pause: (share) => void shares.push(share),
  };
  await visitCsv(Readable.from(chunks), content.length, visitor);
  return { rows, form, shares };
}

const cell = fc.oneof(
  fc.stringMatching(/^[a-z0-9.µ -]{1,6}$/),
  fc.stringMatching(/^[a-z",;\n\r\t ]{1,8}$/),
  fc.constant(""),
);

describe("a stream of CSV", () => {
  it("gives the same rows however it is cut, and each as it was written", async () => {
    const table = fc.array(fc.tuple(fc.constant("x"), cell, cell), { minLength: 1, maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(
        table,
        fc.constantFrom("\n", "\r\n"),
        fc.constantFrom(",", ";", "\t"),
        fc.array(fc.nat(400), { maxLength: 6 }),
        async (body, lineEnd, separator, cuts) => {
          const written = [["one", "two", "three"], ...body].map((row) =>
            row.map((text) => quotedCell(text, separator)).join(separator),
          );
          const content = Buffer.from(written.join(lineEnd) + lineEnd);
          const { rows, form, shares } = await visited(content, cuts);
          expect(form).toMatchObject({ separator, lineEnd, mark: "" });
          expect(rows.map(({ raw }) => Buffer.from(raw, "latin1").toString("utf8"))).toEqual(written);
          expect(rows.map(({ cells }) => cells)).toEqual(
            parse(content, { delimiter: separator, record_delimiter: lineEnd, relax_quotes: true }),
          );
          expect(shares[shares.length - 1]).toBe(1);
        },
      ),
      { numRuns: 400 },
    );
  });

  it("quotes what must be, so that csv-parse reads it back", () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { minLength: 2, maxLength: 5 }), (cells) => {
        const line = `${cells.map((text) => quotedCell(text, ",")).join(",")}\n`;
        expect(parse(line, { record_delimiter: "\n" })).toEqual([cells]);
      }),
    );
  });
});

describe("numbers in cells", () => {
  const settings = {
    ...{ column: "v", from: { fixed: "mm/s rms" }, detector: {}, at: {}, machine: "", machineColumns: [] },
    ...{ decimalComma: false, targets: ["in/s pk"] },
  } as unknown as TableSettings;
  const read = rowReader(["v"], settings);

  it("are read to the last bit", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.stringMatching(/^\d{1,9}(\.\d{0,9})?$/),
          fc.stringMatching(/^\.\d{1,18}$/),
          fc.stringMatching(/^\d{1,3}\.\d{1,20}(e[+-]?\d{1,2})?$/),
          fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }).map(String),
        ),
        (text) => {
          expect(read([text]).value).toBe(Number(text));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it("and nothing that is none becomes one", () => {
    const isNumber = /^\s*[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i;
    fc.assert(
      fc.property(fc.stringMatching(/^[0-9.,eE+ xnaN-]{0,6}$/), (text) => {
        if (isNumber.test(text)) expect(read([text]).value).toBe(Number(text));
        else expect(() => read([text])).toThrow();
      }),
      { numRuns: 5000 },
    );
  });
});

describe("Parquet", () => {
  const values = [2.5, 0.25, null, 7];
  const columnData = [
    { name: "tag", data: ["ID fan 1", 'pump "A", DE', "µ", "x"], type: "STRING" as const },
    { name: "v", data: values, type: "DOUBLE" as const },
    { name: "n", data: [1485n, 2980n, 1n, 1500n], type: "INT64" as const },
  ];
  const args = ["--column", "v", "--from", "mm/s rms", "--to", "um pp", "--speed-column", "n", "--speed-unit", "r/min"];

  it("is read row by row, and written as CSV", async () => {
    const path = join(folder, "in.parquet");
    parquetWriteFile({ filename: path, columnData, rowGroupSize: 3 });
    const { out, err, code } = await veladis(["table", path, ...args, "--at", "1x"]);
    const um = (value: number, hertz: number) => convert(value, "mm/s rms", "um pp", { at: { hertz } });
    expect(out.split("\n")).toEqual([
      "tag,v,n,um pp,assumed",
      `ID fan 1,2.5,1485,${um(2.5, 1485 / 60)},one frequency; sine`,
      `"pump ""A"", DE",0.25,2980,${um(0.25, 2980 / 60)},one frequency; sine`,
      `x,7,1500,${um(7, 25)},one frequency; sine`,
      "",
    ]);
    expect(err).toContain("4 rows: 3 written, 1 refused");
    expect(code).toBe(2);
  });

  it.each(["snappy", "gzip", "brotli", "uncompressed"])("as DuckDB writes it, %s", async (codec) => {
    const path = join(folder, `${codec}.parquet`);
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    const rows =
      "SELECT TIMESTAMP '2026-01-05 06:00:00' + INTERVAL (i) MINUTE AS time, i / 100 AS v, [i, 1] AS l FROM range(500) t(i)";
    await connection.run(`COPY (${rows}) TO '${path}' (FORMAT parquet, COMPRESSION ${codec})`);
    const { out, code } = await veladis(["table", path, ...args.slice(0, 4), "--to", "mm/s pk", "--digits", "3"]);
    expect(code).toBe(0);
    expect(out.split("\n").slice(0, 3)).toEqual([
      "time,v,l,mm/s pk,assumed",
      '2026-01-05T06:00:00.000Z,0,"[0,1]",0,sine',
      '2026-01-05T06:01:00.000Z,0.01,"[1,1]",0.0141,sine',
    ]);
    expect(out.split("\n")).toHaveLength(502);
  });

  it("numbers refused rows by row, not by line", async () => {
    const path = join(folder, "rows.parquet");
    const out = join(folder, "rows.csv");
    parquetWriteFile({ filename: path, columnData });
    await veladis(["table", path, ...args, "--at", "1x", "--out", out]);
    const refused = readFileSync(join(folder, "rows.refused.csv"), "utf8");
    expect(refused.split("\n")[0]).toBe("row,refused,reason,tag,v,n");
    expect(refused).toContain("\n3,not-a-number,");
  });

  it("that is broken is refused", async () => {
    const path = join(folder, "broken.parquet");
    writeFileSync(path, Buffer.concat([Buffer.from("PAR1"), Buffer.alloc(100), Buffer.from("PAR1")]));
    const { err, code } = await veladis(["table", path, ...args, "--at", "1x"]);
    expect([err, code]).toEqual([expect.stringContaining("a Parquet file"), 2]);
  });
});
