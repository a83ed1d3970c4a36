import { shown, VeladisError } from "../../core/index";
import { bytesOf, quotedCell, type RowVisitor } from "./row-source";

async function reader(): Promise<typeof import("hyparquet")> {
  try {
    return await import("hyparquet");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ERR_MODULE_NOT_FOUND") throw error;
    throw new VeladisError("missing-fact", {
      expected: "the package hyparquet beside veladis, to read Parquet: npm install hyparquet",
      received: "nothing",
    });
  }
}

/** A file as Parquet is read: a slice at a time. */
async function slices(path: string) {
  const { open } = await import("node:fs/promises");
  const handle = await open(path).catch(() => {
    throw new VeladisError("missing-fact", { expected: "a file that can be read", received: shown(path) });
  });
  const { size } = await handle.stat();
  return {
    byteLength: size,
    async slice(start: number, end = size): Promise<ArrayBuffer> {
      const bytes = new Uint8Array(Math.max(0, end - start));
      await handle.read(bytes, 0, bytes.length, start);
      return bytes.buffer;
    },
    close: () => handle.close(),
  };
}

/** Codecs that node itself has; snappy is hyparquet's own. */
async function codecs() {
  const { brotliDecompressSync, gunzipSync, ...zlib } = await import("node:zlib");
  const zstd = (zlib as { zstdDecompressSync?: (bytes: Uint8Array) => Uint8Array }).zstdDecompressSync;
  return {
    GZIP: (bytes: Uint8Array) => gunzipSync(bytes),
    BROTLI: (bytes: Uint8Array) => brotliDecompressSync(bytes),
    ...(zstd !== undefined && { ZSTD: (bytes: Uint8Array) => zstd(bytes) }),
  };
}

/** Rows between two pauses, so that what is to be written stays small beside a row group. */
const PORTION = 4096;

/** A value of Parquet as the text of a cell. */
function cellText(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (value instanceof Date) return value.toISOString();
  if (typeof value === "object")
    return JSON.stringify(value, (_, one) => (typeof one === "bigint" ? Number(one) : one)) ?? "";
  return String(value);
}

/**
 * Shows the rows of a Parquet file to a visitor, as CSV; memory for one row group.
 *
 * @throws {@link VeladisError} `missing-fact` when hyparquet is not installed, `syntax` for what is no Parquet
 */
export async function visitParquet(path: string, visitor: RowVisitor): Promise<void> {
  const { parquetMetadataAsync, parquetReadObjects, parquetSchema } = await reader();
  const file = await slices(path);
  const refused = (error: unknown): never => {
    if (error instanceof VeladisError) throw error;
    // what the reader stumbles over in a broken file says nothing to a person
    const message = error instanceof TypeError || error instanceof RangeError ? "broken" : (error as Error).message;
    const expected = message.includes("compression codec")
      ? "a Parquet file without compression, or by snappy, gzip or brotli (zstd from node 22.15 on)"
      : "a Parquet file";
    throw new VeladisError("syntax", { expected, received: `${shown(path)}: ${message}` });
  };
  try {
    const metadata = await parquetMetadataAsync(file).catch(refused);
    const compressors = await codecs();
    const total = Number(metadata.num_rows);
    const names = parquetSchema(metadata).children.map(({ element }) => element.name);
    const form = { separator: ",", lineEnd: "\n", mark: "", counted: "row" } as const;
    const rawOf = (cells: readonly string[]): string => bytesOf(cells.map((cell) => quotedCell(cell, ",")).join(","));
    visitor.header(names, rawOf(names), form);
    let rowStart = 0;
    for (const group of metadata.row_groups) {
      const rowEnd = rowStart + Number(group.num_rows);
      const rows = await parquetReadObjects({ file, metadata, compressors, rowStart, rowEnd }).catch(refused);
      for (const [i, row] of rows.entries()) {
        const cells = names.map((name) => cellText(row[name]));
        visitor.row(cells, rawOf(cells), rowStart + i + 1);
        if (i % PORTION === PORTION - 1) await visitor.pause((rowStart + i) / total);
      }
      rowStart = rowEnd;
      await visitor.pause(rowStart / total);
    }
  } finally {
    await file.close();
  }
}
