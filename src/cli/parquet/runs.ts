import { damaged } from "./damage";

/** Bits that hold the numbers up to this one. */
export const bitsFor = (most: number): number => 32 - Math.clz32(most);

/** Numbers that are packed in bytes. */
interface Packed {
  readonly from: number;
  readonly width: number;
  readonly count: number;
}

/** How many of the first `count` numbers packed in `width` bits each are `sought`. */
function packedMatches(bytes: Uint8Array, { from, width, count }: Packed, sought: number): number {
  let matches = 0;
  let bits = 0;
  let bitCount = 0;
  let at = from;
  const mask = 2 ** width - 1;
  for (let i = 0; i < count; i++) {
    while (bitCount < width) {
      bits |= (bytes[at++] as number) << bitCount;
      bitCount += 8;
    }
    if ((bits & mask) === sought) matches++;
    bits >>>= width;
    bitCount -= width;
  }
  return matches;
}

/**
 * Walks through numbers in runs, repeated or packed, without unpacking them; the library that does would follow a run
 * of two thousand million.
 *
 * Source: Apache Parquet, encodings, run length encoding / bit-packing hybrid.
 *
 * @param sought - the number to count; none for `undefined`
 * @returns how often it stands there
 * @throws {@link VeladisError} `syntax` where runs and bytes do not make `count` numbers
 */
export function countedRuns(
  bytes: Uint8Array,
  { from, to, width, count, sought }: { from: number; to: number; width: number; count: number; sought?: number },
  where: string,
): number {
  let at = from;
  let seen = 0;
  let matches = 0;
  while (seen < count) {
    let head = 0;
    for (let shift = 0; ; shift += 7) {
      if (at >= to || shift > 28) damaged(where, "runs that break off");
      const next = bytes[at++] as number;
      head += (next & 0x7f) * 2 ** shift;
      if (next < 0x80) break;
    }
    const length = Math.floor(head / 2);
    if (length === 0) continue;
    if (head % 2 === 1) {
      // the last run is filled up, and its filling may be left out
      const taken = Math.min(length * 8, count - seen);
      if (at + Math.ceil((taken * width) / 8) > to) damaged(where, "runs that break off");
      if (sought !== undefined) matches += packedMatches(bytes, { from: at, width, count: taken }, sought);
      at += length * width;
      seen += taken;
    } else {
      if (length > count - seen) damaged(where, "a run beyond its end");
      let value = 0;
      for (let i = 0; i < Math.ceil(width / 8); i++) value += (bytes[at++] ?? 0) * 2 ** (8 * i);
      if (at > to) damaged(where, "runs that break off");
      if (value === sought) matches += length;
      seen += length;
    }
  }
  return matches;
}
