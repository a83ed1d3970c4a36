/**
 * Unpacks Snappy, and writes no further than the length that is told, whatever the packed bytes ask for.
 *
 * Source: Snappy, description of the compressed format.
 *
 * @returns the bytes, or `undefined` where they are no Snappy of that length
 */
export function snappyUnpacked(packed: Uint8Array, length: number): Uint8Array | undefined {
  const out = new Uint8Array(length);
  let at = 0;
  let told = 0;
  for (let i = 0; ; i++) {
    const next = packed[at++];
    if (next === undefined || i > 4) return undefined;
    told += (next & 0x7f) * 2 ** (7 * i);
    if (next < 0x80) break;
  }
  if (told !== length) return undefined;

  const little = (bytes: number): number => {
    let value = 0;
    for (let i = 0; i < bytes; i++) value += (packed[at++] ?? Number.NaN) * 2 ** (8 * i);
    return value;
  };

  let end = 0;
  while (at < packed.length) {
    const tag = packed[at++] as number;
    const kind = tag & 3;
    if (kind === 0) {
      const written = tag >> 2;
      const size = 1 + (written < 60 ? written : little(written - 59));
      if (!(size <= packed.length - at && size <= length - end)) return undefined;
      out.set(packed.subarray(at, at + size), end);
      at += size;
      end += size;
    } else {
      const size = kind === 1 ? 4 + ((tag >> 2) & 7) : 1 + (tag >> 2);
      const back = kind === 1 ? (tag >> 5) * 256 + little(1) : little(kind === 2 ? 2 : 4);
      if (!(back > 0 && back <= end && size <= length - end)) return undefined;
      // byte by byte, since a copy may go on into itself; it is 64 bytes at the most
      for (let i = 0; i < size; i++) out[end + i] = out[end + i - back] as number;
      end += size;
    }
  }
  return end === length ? out : undefined;
}
