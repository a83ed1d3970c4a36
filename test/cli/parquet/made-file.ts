/** Parquet files made by hand, for what no writer at hand makes. */
import { crc32 } from "node:zlib";

/** A field of Thrift's compact protocol: its number, its type there, and its bytes. */
export type Field = readonly [id: number, type: number, bytes: Buffer];

function varint(value: number): Buffer {
  const bytes: number[] = [];
  for (let left = value; ; left = Math.floor(left / 128)) {
    bytes.push((left % 128) + (left >= 128 ? 128 : 0));
    if (left < 128) return Buffer.from(bytes);
  }
}

export const zigzag = (value: number): Buffer => varint(value < 0 ? -2 * value - 1 : 2 * value);
export const i32 = (id: number, value: number): Field => [id, 5, zigzag(value)];
export const i64 = (id: number, value: number): Field => [id, 6, zigzag(value)];
export const binary = (value: string): Buffer => Buffer.concat([varint(value.length), Buffer.from(value)]);
export const text = (id: number, value: string): Field => [id, 8, binary(value)];
export const list = (id: number, type: number, items: readonly Buffer[]): Field => [
  id,
  9,
  Buffer.concat([Buffer.from([(15 << 4) | type]), varint(items.length), ...items]),
];
export const inner = (id: number, fields: readonly Field[]): Field => [id, 12, struct(fields)];

export function struct(fields: readonly Field[]): Buffer {
  return Buffer.concat([
    ...fields.flatMap(([id, type, bytes]) => [Buffer.from([type]), zigzag(id), bytes]),
    Buffer.from([0]),
  ]);
}

/** What a made column is; its values are doubles, or instants in whole numbers. */
export interface MadeColumn {
  readonly name: string;
  readonly values: readonly number[] | readonly bigint[];
  /** Number of the old kind of annotation, such as 9 for milliseconds since 1970. */
  readonly kind?: number;
  readonly checksum?: boolean;
  readonly encrypted?: boolean;
}

/** A Parquet file of required columns, without compression, in one row group. */
export function madeParquet(columns: readonly MadeColumn[]): Buffer {
  const parts: Buffer[] = [Buffer.from("PAR1")];
  let at = 4;
  const rows = columns[0]?.values.length ?? 0;
  const chunks = columns.map(({ name, values, checksum, encrypted }) => {
    const page = Buffer.alloc(8 * values.length);
    for (const [i, value] of values.entries()) {
      if (typeof value === "bigint") page.writeBigInt64LE(value, 8 * i);
      else page.writeDoubleLE(value, 8 * i);
    }
    const head = struct([
      ...[i32(1, 0), i32(2, page.length), i32(3, page.length)],
      ...(checksum ? [i32(4, crc32(page) | 0)] : []),
      inner(5, [i32(1, values.length), i32(2, 0), i32(3, 3), i32(4, 3)]),
    ]);
    const size = head.length + page.length;
    const meta = inner(3, [
      i32(1, typeof values[0] === "bigint" ? 2 : 5),
      ...[list(2, 5, [zigzag(0)]), list(3, 8, [binary(name)]), i32(4, 0), i64(5, values.length)],
      ...[i64(6, size), i64(7, size), i64(9, at)],
    ]);
    parts.push(head, page);
    at += size;
    return struct([i64(2, 0), meta, ...(encrypted ? [inner(8, [inner(1, [])])] : [])]);
  });
  const leaf = ({ name, values, kind }: MadeColumn): Buffer =>
    struct([
      ...[i32(1, typeof values[0] === "bigint" ? 2 : 5), i32(3, 0), text(4, name)],
      ...(kind === undefined ? [] : [i32(6, kind)]),
    ]);
  const footer = struct([
    i32(1, 1),
    list(2, 12, [struct([text(4, "table"), i32(5, columns.length)]), ...columns.map(leaf)]),
    i64(3, rows),
    list(4, 12, [struct([list(1, 12, chunks), i64(2, at), i64(3, rows)])]),
  ]);
  const length = Buffer.alloc(4);
  length.writeUInt32LE(footer.length);
  return Buffer.concat([...parts, footer, length, Buffer.from("PAR1")]);
}
