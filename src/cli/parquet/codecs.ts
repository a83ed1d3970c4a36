import * as zlib from "node:zlib";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { VeladisError } from "../../core/index";
import { damaged } from "./damage";
import { snappyUnpacked } from "./snappy";

/** Unpacks the bytes of a page, which have to give as many as are told. */
export type Unpack = (bytes: Uint8Array, length: number) => Uint8Array;

/** The same for bytes that may be anything: what it gives is to be looked at. */
type Attempt = (bytes: Uint8Array, length: number) => Uint8Array | undefined;

type Limited = (bytes: Uint8Array, limit: { maxOutputLength: number }) => Uint8Array;

const zstd = (zlib as { zstdDecompressSync?: Limited }).zstdDecompressSync;

const bounded =
  (unpack: Limited): Attempt =>
  (bytes, length) =>
    unpack(bytes, { maxOutputLength: Math.max(1, length) });

/** What unpacks each codec. */
const unpacks: Readonly<Record<string, Attempt>> = {
  UNCOMPRESSED: (bytes) => bytes,
  SNAPPY: snappyUnpacked,
  GZIP: bounded(gunzipSync),
  BROTLI: bounded(brotliDecompressSync),
  ...(zstd !== undefined && { ZSTD: bounded(zstd) }),
};

/**
 * What unpacks the pages of a column.
 *
 * @throws {@link VeladisError} `syntax` for a codec that cannot be read; from what it gives, for pages that do not unpack
 */
export function unpackOf(codec: string | undefined, where: string): Unpack {
  const unpack = unpacks[codec ?? ""];
  if (unpack === undefined) {
    throw new VeladisError("syntax", {
      expected: "a Parquet file without compression, or by snappy, gzip or brotli (zstd from node 22.15 on)",
      received: `${where}: unsupported compression codec ${codec ?? "of no known name"}`,
    });
  }
  return (bytes, length) => {
    let unpacked: Uint8Array | undefined;
    try {
      unpacked = unpack(bytes, length);
    } catch {
      // what a codec stumbles over says nothing to a person
    }
    return unpacked?.length === length ? unpacked : damaged(where, "a page that does not unpack");
  };
}
