import { type FileMetaData, parquetMetadata, parquetSchema, type SchemaTree } from "hyparquet";
import { shown, VeladisError } from "../../core/index";
import { PARQUET } from "../delimited/parquet-refused";
import type { ByteSource } from "./byte-source";
import { parsersFor } from "./cell-text";
import { damaged } from "./damage";
import { type LeafColumn, leafColumns } from "./leaf-columns";
import { thriftStruct } from "./thrift";

/** What the end of a Parquet file says of it. */
export interface Footer {
  /** Titles of the columns, as they are told. */
  readonly names: readonly string[];
  /** The same with columns named by their index, since the library reads the first of two of one name twice. */
  readonly metadata: FileMetaData;
  readonly leaves: readonly LeafColumn[];
  readonly rows: number;
}

const WHERE = "its description at the end";
/** A mark, the length of the description, and a mark. */
const SHORTEST = 12;

function refuse(received: string, expected = "a Parquet file"): never {
  throw new VeladisError("syntax", { expected, received });
}

/** The bytes of the description. */
async function description(file: ByteSource): Promise<Uint8Array> {
  if (file.size === 0) refuse("an empty file");
  const text = async (from: number): Promise<string> =>
    Buffer.from(await file.read(from, Math.min(from + 4, file.size))).toString("latin1");
  const begun = await text(0);
  const ended = file.size < SHORTEST ? "" : await text(file.size - 4);
  if (begun === "PARE" || ended === "PARE") refuse("one that is encrypted", "a Parquet file that is not encrypted");
  if (begun !== PARQUET) refuse(`a file that begins with ${shown(begun)}`);
  if (ended !== PARQUET) damaged("its end", "cut off: the mark PAR1 is missing there");
  const tail = await file.read(file.size - 8, file.size - 4);
  const length = new DataView(tail.buffer).getUint32(0, true);
  if (length > file.size - SHORTEST) damaged(WHERE, "longer than the file");
  // the library wants the length and the mark behind it
  return file.read(file.size - 8 - length, file.size);
}

/** The number of rows or bytes that a field of the description tells. */
function whole(value: unknown): number {
  const count = Number(value ?? Number.NaN);
  return Number.isSafeInteger(count) && count >= 0 ? count : damaged(WHERE, "a number that cannot be");
}

/** Refuses parts of a column that have one name: as JSON one would stand for both. */
function requireNamesWithin({ children, path }: SchemaTree, isTable: boolean): void {
  const names = children.map(({ element }) => element.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined && !isTable) {
    refuse(`two parts ${shown(twice)} of column ${shown(path[0])}`, "parts of a column with names of their own");
  }
  for (const child of children) requireNamesWithin(child, false);
}

/** Refuses a column whose two ways of telling its kind are not one. */
function requireOneKind({ element }: LeafColumn): void {
  const { converted_type: old, logical_type: kind, scale } = element;
  if (old === undefined || kind === undefined) return;
  const told = "unit" in kind ? `${kind.type}_${kind.unit}` : kind.type;
  const times = /^TIME(STAMP)?_M/.test(old) && /^TIME/.test(told) && old !== told;
  const decimals = kind.type === "DECIMAL" && (old !== "DECIMAL" || kind.scale !== scale);
  if (times || decimals || (old === "DATE") !== (kind.type === "DATE")) damaged(WHERE, "a column of two kinds");
}

/** Bytes that are searched at once. */
const PIECE = 1 << 20;

/** Refuses two files, one behind the other: the description of the second would be taken for rows of the first. */
async function requireOneFile(file: ByteSource, from: number, to: number): Promise<void> {
  for (let at = from; at < to; at += PIECE) {
    const bytes = await file.read(at, Math.min(to, at + PIECE + 2 * PARQUET.length));
    if (Buffer.from(bytes.buffer).includes(PARQUET + PARQUET)) damaged("the file", "two files, one behind the other");
  }
}

/** Refuses row groups whose columns are not those of the schema, or lie where they cannot; the place behind them all. */
function requireGroups({ row_groups }: FileMetaData, leaves: readonly LeafColumn[], end: number): number {
  const taken: [from: number, to: number][] = [];
  for (const { columns, num_rows } of row_groups) {
    const rows = whole(num_rows);
    if (columns.length !== leaves.length || columns.length === 0) damaged(WHERE, "a row group of other columns");
    for (const [i, { meta_data: chunk, crypto_metadata, file_path }] of columns.entries()) {
      const leaf = leaves[i] as LeafColumn;
      if (crypto_metadata !== undefined) {
        refuse(`column ${shown(leaf.path.join("."))}, which is encrypted`, "a Parquet file that is not encrypted");
      }
      if (file_path) refuse(`a column in ${shown(file_path)}`, "a Parquet file that holds its columns itself");
      if (chunk === undefined) damaged(WHERE, "a column without its place");
      if (chunk.path_in_schema.join("\0") !== leaf.path.join("\0")) damaged(WHERE, "a column of another name");
      if (chunk.type !== leaf.element.type) damaged(WHERE, "a column of another type");
      const values = whole(chunk.num_values);
      if (leaf.repetition === 0 ? values !== rows : values < rows) damaged(WHERE, "another number of rows");
      const from = whole(chunk.dictionary_page_offset || chunk.data_page_offset);
      const to = from + whole(chunk.total_compressed_size);
      if (from < PARQUET.length || to > end || whole(chunk.data_page_offset) < from)
        damaged(WHERE, "a column beyond its end");
      if (rows > 0) taken.push([from, to]);
    }
  }
  taken.sort(([a], [b]) => a - b);
  const beyond = taken.reduce((most, [, to]) => Math.max(most, to), PARQUET.length);
  if (taken.some(([from], i) => i > 0 && from < (taken[i - 1] as [number, number])[1])) {
    damaged(WHERE, "columns in one place");
  }
  return beyond;
}

/**
 * Reads the description that a Parquet file ends with, and holds it against itself.
 *
 * @throws {@link VeladisError} `syntax` for what is no Parquet, is encrypted, or contradicts itself
 */
export async function readFooter(file: ByteSource): Promise<Footer> {
  const bytes = await description(file);
  thriftStruct(bytes.subarray(0, -8), 0, WHERE);
  let metadata: FileMetaData;
  let schema: SchemaTree;
  try {
    metadata = parquetMetadata(bytes, { parsers: parsersFor(false), geoparquet: false });
    schema = parquetSchema(metadata);
  } catch {
    return damaged(WHERE, "no description of a table");
  }
  if (schema.count !== metadata.schema.length || schema.children.length === 0) damaged(WHERE, "columns left over");
  requireNamesWithin(schema, true);
  const leaves = leafColumns(schema);
  for (const leaf of leaves) requireOneKind(leaf);
  const end = file.size - bytes.length;
  await requireOneFile(file, requireGroups(metadata, leaves, end), end);
  const rows = metadata.row_groups.reduce((sum, group) => sum + whole(group.num_rows), 0);
  if (rows !== whole(metadata.num_rows)) damaged(WHERE, "another number of rows");
  const names = schema.children.map(({ element }) => element.name);
  for (const [i, { element }] of schema.children.entries()) element.name = `${i}`;
  for (const { columns } of metadata.row_groups) {
    for (const [i, { meta_data }] of columns.entries()) {
      const [, ...inner] = (leaves[i] as LeafColumn).path;
      if (meta_data) meta_data.path_in_schema = [`${(leaves[i] as LeafColumn).top}`, ...inner];
    }
  }
  return { names, metadata, leaves, rows };
}
