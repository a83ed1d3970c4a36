import type { Readable } from "node:stream";
import { shown, VeladisError } from "../../core/index";

/** A way of storing samples one after the other, without anything else in the file. */
export interface RawFormat {
  /** Bytes of a sample. */
  readonly bytes: number;
  readonly spoken: readonly string[];
  /** Lowest and highest value of a whole number; a sample there has overflowed. */
  readonly rails?: readonly [low: number, high: number];
  readonly read: (view: DataView, at: number, littleEndian: boolean) => number;
}

/** All raw formats, by name. To add one, add its row here and nowhere else. */
// biome-ignore format: a row of a table is a line
export const rawFormats = {
  float32: { bytes: 4, spoken: ["f32", "single"], read: (view, at, little) => view.getFloat32(at, little) },
  float64: { bytes: 8, spoken: ["f64", "double"], read: (view, at, little) => view.getFloat64(at, little) },
  int16: { bytes: 2, spoken: ["i16"], rails: [-(2 ** 15), 2 ** 15 - 1], read: (view, at, little) => view.getInt16(at, little) },
  int32: { bytes: 4, spoken: ["i32"], rails: [-(2 ** 31), 2 ** 31 - 1], read: (view, at, little) => view.getInt32(at, little) },
} as const satisfies Record<string, RawFormat>;

/** The raw format that a name or a file's ending names, if there is one. */
export function findRawFormat(name: string): RawFormat | undefined {
  const plain = name.trim().toLowerCase();
  const entry = (Object.entries(rawFormats) as [string, RawFormat][]).find(
    ([format, { spoken }]) => format === plain || spoken.includes(plain),
  );
  return entry?.[1];
}

/** How the samples of a raw file are to be read. */
export interface RawSettings {
  readonly format: RawFormat;
  readonly littleEndian: boolean;
  /** What a stored number is multiplied with to be in the unit of the samples. */
  readonly scale: number;
}

/**
 * Refuses a size that is no whole number of samples.
 *
 * @throws {@link VeladisError} `length-mismatch`
 */
export function requireSize(size: number, { bytes }: RawFormat): void {
  if (size % bytes === 0) return;
  throw new VeladisError("length-mismatch", {
    expected: `a whole number of samples of ${bytes} bytes`,
    received: `${size} bytes, which leaves ${size % bytes} over: another format, or a file cut off`,
  });
}

/**
 * The samples of a stream of bytes, a chunk at a time.
 *
 * @throws {@link VeladisError} `length-mismatch` when bytes are left over, `sensor-fault` when a whole number stands at
 *   the end of its range
 */
export async function* rawSamples(stream: Readable, settings: RawSettings): AsyncGenerator<Float64Array> {
  const { format, littleEndian, scale } = settings;
  const { bytes, rails, read } = format;
  let rest: Uint8Array = new Uint8Array(0);
  let taken = 0;
  let size = 0;
  for await (const piece of stream) {
    const fresh = piece as Buffer;
    size += fresh.length;
    const all = rest.length === 0 ? fresh : Buffer.concat([rest, fresh]);
    const view = new DataView(all.buffer, all.byteOffset, all.byteLength);
    const samples = new Float64Array(Math.floor(all.length / bytes));
    for (let i = 0; i < samples.length; i++) {
      const stored = read(view, i * bytes, littleEndian);
      if (rails !== undefined && (stored === rails[0] || stored === rails[1])) {
        throw new VeladisError("sensor-fault", {
          expected: `whole numbers between ${rails[0]} and ${rails[1]}`,
          received: `${shown(stored)} at index ${taken + i}: the converter overflowed, or the format is another`,
        });
      }
      samples[i] = stored * scale;
    }
    rest = all.subarray(samples.length * bytes);
    taken += samples.length;
    if (samples.length > 0) yield samples;
  }
  requireSize(size, format);
}
