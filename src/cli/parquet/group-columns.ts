import { type ColumnMetaData, type FileMetaData, parquetRead, type RowGroup, type Statistics } from "hyparquet";
import { shown, VeladisError } from "../../core/index";
import type { ByteSource } from "./byte-source";
import { parsersFor } from "./cell-text";
import { type Reading, requirePages } from "./chunk-pages";
import { type Unpack, unpackOf } from "./codecs";
import { damaged } from "./damage";
import type { Footer } from "./footer";
import type { LeafColumn } from "./leaf-columns";

/** The values of one column in a row group. */
export type ColumnValues = ArrayLike<unknown>;

/** What is stored of a leaf in one row group. */
interface Chunk {
  readonly leaf: LeafColumn;
  readonly told: ColumnMetaData;
  readonly from: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A column of the table in a row group. */
interface GroupColumn extends Reading {
  readonly group: RowGroup;
  /** Its place among the columns of the table. */
  readonly top: number;
}

/** The chunks of a column of the table, read and checked. */
async function checkedChunks(
  file: ByteSource,
  { leaves }: Footer,
  { group, top, where, beat }: GroupColumn,
): Promise<{ chunks: Chunk[]; unpack: Unpack; summed: boolean }> {
  const chunks: Chunk[] = [];
  const unpacked = new Map<ArrayBufferLike, Map<number, Uint8Array>>();
  let codec: string | undefined;
  let summed = true;
  for (const [i, leaf] of leaves.entries()) {
    if (leaf.top !== top) continue;
    const told = group.columns[i]?.meta_data as ColumnMetaData;
    const from = Number(told.dictionary_page_offset || told.data_page_offset);
    const bytes = await file.read(from, from + Number(told.total_compressed_size));
    beat();
    codec ??= told.codec;
    if (told.codec !== codec) damaged(where, "parts of several codecs");
    const unpack = unpackOf(codec, where);
    const pages = new Map<number, Uint8Array>();
    unpacked.set(bytes.buffer, pages);
    const keep: Unpack = (page, length) => {
      const whole = unpack(page, length);
      pages.set(page.byteOffset, whole);
      return whole;
    };
    if (!requirePages(bytes, { told, leaf, unpack: keep }, { where, beat })) summed = false;
    chunks.push({ leaf, told, from, bytes });
  }
  const unpack = unpackOf(codec, where);
  return {
    chunks,
    summed,
    // what was unpacked to be checked is not unpacked again
    unpack(page, length) {
      const pages = unpacked.get(page.buffer);
      const whole = pages?.get(page.byteOffset);
      pages?.delete(page.byteOffset);
      return whole?.length === length ? whole : unpack(page, length);
    },
  };
}

function isText({ element: { converted_type: old, logical_type: kind } }: LeafColumn): boolean {
  return old === "UTF8" || old === "ENUM" || kind?.type === "STRING" || kind?.type === "ENUM";
}

/** What the library makes of chunks that are checked. */
async function decoded(
  { metadata }: Footer,
  { chunks, unpack }: { chunks: readonly Chunk[]; unpack: Unpack },
  { group, top, where, beat }: GroupColumn,
): Promise<ColumnValues> {
  const pieces: ColumnValues[] = [];
  const own: FileMetaData = { ...metadata, row_groups: [group], num_rows: group.num_rows };
  const [first] = chunks as [Chunk];
  // parts of a nested column are asked for at once
  const slice = (start: number, end = start): ArrayBuffer => {
    const whole = chunks.find(({ from, bytes }) => from === start && from + bytes.length === end);
    if (whole !== undefined) return whole.bytes.buffer;
    const asked = new Uint8Array(end - start);
    for (const { from, bytes } of chunks) {
      const overlap = bytes.subarray(Math.max(0, start - from), Math.max(0, end - from));
      if (overlap.length > 0) asked.set(overlap, Math.max(0, from - start));
    }
    return asked.buffer;
  };
  try {
    await parquetRead({
      metadata: own,
      file: { byteLength: Number.MAX_SAFE_INTEGER, slice },
      compressors: first.told.codec === "UNCOMPRESSED" ? {} : { [first.told.codec]: unpack },
      parsers: parsersFor(isText(first.leaf)),
      columns: [`${top}`],
      onPage: beat,
      onChunk: ({ columnData }) => pieces.push(columnData),
    });
  } catch (error) {
    if (error instanceof VeladisError) throw error;
    // what the library stumbles over in a damaged file says nothing to a person
    const { message } = error as Error;
    if (!message.includes("support")) return damaged(where, "values that cannot be read");
    throw new VeladisError("syntax", {
      expected: "columns of kinds that can be read",
      received: `${where}: ${message}`,
    });
  }
  return pieces.length === 1 ? (pieces[0] as ColumnValues) : pieces.flatMap((piece) => Array.from(piece));
}

/** Refuses values that are not there, are not as many, or go beyond the least and greatest that the file tells. */
function requireAsTold(values: ColumnValues, rows: number, told: Statistics | undefined, where: string): void {
  if (values.length !== rows) damaged(where, `${values.length} values in ${rows} rows`);
  const { min_value: least, max_value: most, null_count } = told ?? {};
  const isOrdered = (typeof least === "number" || typeof least === "bigint") && typeof least === typeof most;
  let nulls = 0;
  for (let i = 0; i < rows; i++) {
    const value = values[i];
    if (value === undefined) damaged(where, "a value that is not there");
    if (value === null) nulls++;
    else if (isOrdered && ((value as number) < (least as number) || (value as number) > (most as number))) {
      damaged(where, `a value of ${value}, where it tells of ${least} to ${most}`);
    }
  }
  if (null_count !== undefined && Number(null_count) !== nulls) damaged(where, "another number of nulls");
}

/** A row group: the values of its columns, and whether each page of them has a checksum. */
export interface GroupColumns {
  readonly columns: readonly ColumnValues[];
  readonly summed: boolean;
}

/**
 * The values of all columns in one row group, held against what the file tells of them.
 *
 * @param beat - is called whenever something is done
 * @throws {@link VeladisError} `syntax` for a column that is damaged or cannot be read
 */
export async function groupColumns(
  file: ByteSource,
  footer: Footer,
  index: number,
  beat: () => void,
): Promise<GroupColumns> {
  const group = footer.metadata.row_groups[index] as RowGroup;
  const columns: ColumnValues[] = [];
  let summed = true;
  for (const [top, name] of footer.names.entries()) {
    const column: GroupColumn = { group, top, where: `column ${shown(name)}, row group ${index + 1}`, beat };
    const checked = await checkedChunks(file, footer, column);
    const values = await decoded(footer, checked, column);
    const [first] = checked.chunks as [Chunk];
    const isFlat = first.leaf.path.length === 1 && first.leaf.repetition === 0;
    requireAsTold(values, Number(group.num_rows), isFlat ? first.told.statistics : undefined, column.where);
    columns.push(values);
    if (!checked.summed) summed = false;
  }
  return { columns, summed };
}
