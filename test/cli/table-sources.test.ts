import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { parquetWriteFile } from "hyparquet-writer";
import { afterAll, describe, expect, it } from "vitest";
import { quotedCell } from "../../src/cli/delimited/cells";
import { rowReader } from "../../src/cli/table/row-reader";
import type { TableSettings } from "../../src/cli/table/settings";
import { convert } from "../../src/index";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-sources-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a cell", () => {
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
    source: {},
    ...{ column: "v", from: { fixed: "mm/s rms" }, detector: {}, at: {}, machine: "", machineColumns: [] },
    ...{ written: { decimalComma: false }, targets: ["in/s pk"] },
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
    expect(err).toContain("rows: 4 in = 3 answered + 1 refused");
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
