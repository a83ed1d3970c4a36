import { damaged } from "./damage";
import type { LeafColumn } from "./leaf-columns";
import { bitsFor, countedRuns } from "./runs";

/** What the head of a data page says. */
export interface DataHead {
  readonly values: number;
  /** Number of the encoding in the format's list. */
  readonly encoding: number;
  /** Of a page of the second version: bytes of the two kinds of levels, which stand first and are not compressed. */
  readonly levels?: { readonly repetition: number; readonly definition: number; readonly nulls: number };
}

const PLAIN = 0;
const RUNS = 3;
const DICTIONARIES = [2, 8];

/** Bytes of a value that always has as many. */
function widthOf({ element }: LeafColumn): number | undefined {
  const { type, type_length } = element;
  const widths: Record<string, number | undefined> = { INT32: 4, INT64: 8, INT96: 12, FLOAT: 4, DOUBLE: 8 };
  return type === "FIXED_LEN_BYTE_ARRAY" ? type_length : widths[String(type)];
}

const length32 = (bytes: Uint8Array, at: number): number =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(at, true);

/** Values one behind the other: where they begin in a page, and how many there have to be. */
interface PlainValues {
  readonly from: number;
  readonly count: number;
}

/** Refuses values, one behind the other, that are not as many as there have to be. */
export function requirePlain(bytes: Uint8Array, { from, count }: PlainValues, leaf: LeafColumn, where: string): void {
  const width = widthOf(leaf);
  let end = from;
  if (leaf.element.type === "BYTE_ARRAY") {
    for (let i = 0; i < count; i++) {
      if (end + 4 > bytes.length) damaged(where, "a page shorter than its values");
      end += 4 + length32(bytes, end);
    }
  } else end += width === undefined ? Math.ceil(count / 8) : width * count;
  if (end !== bytes.length) damaged(where, "a page that is not as long as its values");
}

/** A page, unpacked; of the second version, what stands behind the levels, and the levels. */
interface Page {
  readonly bytes: Uint8Array;
  readonly levels: Uint8Array | undefined;
}

/**
 * Refuses a page whose levels, values and length do not fit one another.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireFittingPage({ bytes, levels }: Page, head: DataHead, leaf: LeafColumn, where: string): void {
  const { values: count, encoding } = head;
  let at = 0;
  let present = count;
  const level = (most: number, told: number | undefined, begun: number): number => {
    const own = levels === undefined;
    if (own && at + 4 > bytes.length) damaged(where, "a page shorter than its levels");
    const from = own ? at + 4 : begun;
    const to = from + (own ? length32(bytes, at) : (told as number));
    const text = levels ?? bytes;
    if (to > text.length) damaged(where, "a page shorter than its levels");
    if (own) at = to;
    return countedRuns(text, { from, to, width: bitsFor(most), count, sought: most }, where);
  };
  if (leaf.repetition > 0) level(leaf.repetition, head.levels?.repetition, 0);
  if (leaf.definition > 0) {
    present = level(leaf.definition, head.levels?.definition, head.levels?.repetition ?? 0);
  }
  if (head.levels !== undefined && head.levels.nulls !== count - present) damaged(where, "another number of nulls");
  if (encoding === PLAIN) requirePlain(bytes, { from: at, count: present }, leaf, where);
  else if (DICTIONARIES.includes(encoding) && present > 0) {
    const width = bytes[at] ?? damaged(where, "a page without values");
    if (width > 32) damaged(where, "numbers of too many bits");
    if (width > 0) countedRuns(bytes, { from: at + 1, to: bytes.length, width, count: present }, where);
  } else if (encoding === RUNS && present > 0) {
    // the length that stands before the runs is left out in pages of the second version by some
    const from = levels === undefined || length32(bytes, at) === bytes.length - at - 4 ? at + 4 : at;
    countedRuns(bytes, { from, to: bytes.length, width: 1, count: present }, where);
  }
}
