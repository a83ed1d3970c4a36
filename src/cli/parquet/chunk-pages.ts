import { crc32 } from "node:zlib";
import type { ColumnMetaData } from "hyparquet";
import type { Unpack } from "./codecs";
import { damaged } from "./damage";
import type { LeafColumn } from "./leaf-columns";
import { type DataHead, requireFittingPage, requirePlain } from "./page-values";
import { type ThriftStruct, thriftStruct } from "./thrift";

/** No page is that long; it would be a length that was damaged. */
const LONGEST = 2 ** 28;

const DATA = 0;
const DICTIONARY = 2;
const DATA_2 = 3;

/** The number in a field, which has to be there and may not be negative. */
function numberIn(fields: ThriftStruct, id: number, where: string): number {
  const value = fields.get(id);
  return typeof value === "number" && value >= 0 ? value : damaged(where, "the head of a page");
}

function structIn(fields: ThriftStruct, id: number, where: string): ThriftStruct {
  const value = fields.get(id);
  return value instanceof Map ? value : damaged(where, "the head of a page");
}

function dataHead(type: number, fields: ThriftStruct, where: string): DataHead {
  if (type === DATA) {
    const head = structIn(fields, 5, where);
    return { values: numberIn(head, 1, where), encoding: numberIn(head, 2, where) };
  }
  const head = structIn(fields, 8, where);
  const levels = {
    nulls: numberIn(head, 2, where),
    definition: numberIn(head, 5, where),
    repetition: numberIn(head, 6, where),
  };
  return { values: numberIn(head, 1, where), encoding: numberIn(head, 4, where), levels };
}

/** What is known of a column chunk. */
interface ChunkTold {
  readonly told: ColumnMetaData;
  readonly leaf: LeafColumn;
  /** Unpacks the bytes of a page into as many as are told. */
  readonly unpack: Unpack;
}

/** Where a column stands, for refusals, and what is called whenever something is done. */
export interface Reading {
  readonly where: string;
  readonly beat: () => void;
}

/**
 * Refuses a column chunk whose pages do not fit it, one another or their checksums.
 *
 * Source: Apache Parquet, file format (`parquet.thrift`): PageHeader. The checksum is that of gzip over the bytes of the
 * page as stored; writers may leave it out.
 *
 * @returns whether each page has a checksum, its own or that of gzip
 * @throws {@link VeladisError} `syntax`
 */
export function requirePages(
  bytes: Uint8Array,
  { told: { num_values, codec }, leaf, unpack }: ChunkTold,
  { where, beat }: Reading,
): boolean {
  let at = 0;
  let values = 0;
  let summed = true;
  while (at < bytes.length) {
    beat();
    const [fields, end] = thriftStruct(bytes, at, where);
    const type = numberIn(fields, 1, where);
    const unpacked = numberIn(fields, 2, where);
    const stored = numberIn(fields, 3, where);
    if (stored > bytes.length - end || unpacked > LONGEST) damaged(where, "a page beyond its end");
    const page = bytes.subarray(end, end + stored);
    const sum = fields.get(4);
    if (sum !== undefined && crc32(page) !== Number(sum) >>> 0) damaged(where, "a page with another checksum");
    // the levels of the second version are not packed
    if (sum === undefined && (codec !== "GZIP" || type === DATA_2)) summed = false;
    if (type === DICTIONARY) {
      if (at > 0) damaged(where, "a dictionary behind its page");
      const count = numberIn(structIn(fields, 7, where), 1, where);
      requirePlain(unpack(page, unpacked), { from: 0, count }, leaf, where);
    } else if (type === DATA || type === DATA_2) {
      const head = dataHead(type, fields, where);
      values += head.values;
      // no array is made for more
      if (values > num_values) damaged(where, "more values than rows");
      const { levels } = head;
      const length = levels === undefined ? 0 : levels.definition + levels.repetition;
      if (length > Math.min(stored, unpacked)) damaged(where, "a page shorter than its levels");
      const packed = levels === undefined || structIn(fields, 8, where).get(7) !== false;
      const rest = page.subarray(length);
      const content = packed && unpacked > length ? unpack(rest, unpacked - length) : rest;
      requireFittingPage({ bytes: content, levels: levels && page.subarray(0, length) }, head, leaf, where);
    } else damaged(where, "a page of no known kind");
    at = end + stored;
  }
  if (values !== Number(num_values)) damaged(where, "fewer values than rows");
  return summed;
}
