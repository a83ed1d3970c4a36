import type { Readable } from "node:stream";
import { parseNumeral, shown, VeladisError } from "../../core/index";

/** What the head of a WAVE file says. */
interface WaveHead {
  readonly rate: number;
  readonly channels: number;
  /** Bytes of a number. */
  readonly bytes: number;
  readonly isFloat: boolean;
}

/** The samples of one channel of a WAVE file, whose head is read. */
export interface WaveSamples {
  readonly rate: number;
  readonly samples: AsyncGenerator<Float64Array>;
}

const INTEGER = 1;
const FLOAT = 3;
/** The kind of numbers stands farther on. */
const EXTENSIBLE = 0xfffe;
/** Beyond so many bytes before the samples a file is no such one. */
const LONGEST_HEAD = 1 << 20;

function refuse(expected: string, received: string): never {
  throw new VeladisError("syntax", { expected, received });
}

/** The head of `fmt `, the chunk that tells how samples are stored. */
function headOf(chunk: Buffer): WaveHead {
  const format = chunk.readUInt16LE(0);
  const kind = format === EXTENSIBLE && chunk.length >= 26 ? chunk.readUInt16LE(24) : format;
  const [channels, rate, bits] = [chunk.readUInt16LE(2), chunk.readUInt32LE(4), chunk.readUInt16LE(14)];
  const isFloat = kind === FLOAT;
  const known = isFloat ? [32, 64] : kind === INTEGER ? [16, 24, 32] : [];
  if (!known.includes(bits) || channels < 1 || rate < 1) {
    refuse(
      "a WAVE file of whole numbers of 16, 24 or 32 bits, or of floating-point numbers of 32 or 64",
      `numbers of kind ${kind} and ${bits} bits, ${channels} channels, ${rate} samples a second`,
    );
  }
  return { rate, channels, bytes: bits / 8, isFloat };
}

/** Where the samples begin and how many bytes they take, with the head; undefined where more bytes are needed. */
function opened(bytes: Buffer): { head: WaveHead; start: number; size: number } | undefined {
  if (bytes.length < 12) return undefined;
  if (bytes.toString("latin1", 0, 4) !== "RIFF" || bytes.toString("latin1", 8, 12) !== "WAVE") {
    refuse("a WAVE file, which begins with RIFF and WAVE", shown(bytes.toString("latin1", 0, 12)));
  }
  let at = 12;
  let head: WaveHead | undefined;
  while (at + 8 <= bytes.length) {
    const name = bytes.toString("latin1", at, at + 4);
    const size = bytes.readUInt32LE(at + 4);
    if (name === "data") {
      return {
        head: head ?? refuse("a chunk that says how samples are stored before them", "none"),
        start: at + 8,
        size,
      };
    }
    if (name === "fmt ") {
      if (size < 16) refuse("a chunk of 16 bytes or more that says how samples are stored", `${size} bytes`);
      if (at + 8 + size > bytes.length) return undefined;
      head = headOf(bytes.subarray(at + 8, at + 8 + size));
    }
    // chunks begin at even places
    at += 8 + size + (size % 2);
  }
  return undefined;
}

/** The number of a channel from 1. */
function channelOf(column: string | undefined, channels: number): number {
  if (column === undefined && channels === 1) return 0;
  if (column === undefined) {
    throw new VeladisError("missing-option", {
      expected: "which of the channels to read, as in --column 2",
      received: `${channels} channels`,
    });
  }
  const channel = parseNumeral(column, "the number of a channel");
  if (Number.isInteger(channel) && channel >= 1 && channel <= channels) return channel - 1;
  throw new VeladisError("out-of-range", {
    expected: `the number of a channel, 1 to ${channels}`,
    received: shown(column),
  });
}

function numberAt(bytes: Buffer, at: number, { bytes: size, isFloat }: WaveHead): number {
  if (isFloat) return size === 4 ? bytes.readFloatLE(at) : bytes.readDoubleLE(at);
  return bytes.readIntLE(at, size);
}

/**
 * The samples of one channel of a WAVE file (RIFF), a portion at a time; memory for the head and a portion.
 *
 * @param column - number of the channel, from 1
 * @param scale - what a stored number is multiplied with
 * @throws {@link VeladisError} `syntax` for another kind of file, `missing-option` for a channel that is not told,
 *   `length-mismatch` for a file that is cut off, `sensor-fault` for a whole number at the end of its range
 */
export async function waveSamples(stream: Readable, column: string | undefined, scale: number): Promise<WaveSamples> {
  const pieces = stream[Symbol.asyncIterator]() as AsyncIterator<Buffer>;
  let first: Buffer = Buffer.alloc(0);
  let found = opened(first);
  while (found === undefined) {
    const { done, value } = await pieces.next();
    if (done || first.length > LONGEST_HEAD) {
      refuse("a WAVE file with its samples", done ? `${first.length} bytes without` : "none in the first megabyte");
    }
    first = Buffer.concat([first, value]);
    found = opened(first);
  }
  const { head, start, size } = found;
  const channel = channelOf(column, head.channels);
  return { rate: head.rate, samples: portions(pieces, first.subarray(start), { ...head, channel, scale, size }) };
}

interface Stored extends WaveHead {
  readonly channel: number;
  readonly scale: number;
  /** Bytes of all samples, as the head says. */
  readonly size: number;
}

/** What a writer that streams puts for a size that it does not know yet. */
const UNKNOWN = [0, 0xffffffff];

async function* portions(pieces: AsyncIterator<Buffer>, first: Buffer, stored: Stored): AsyncGenerator<Float64Array> {
  const { bytes, channels, channel, isFloat, scale } = stored;
  const frame = bytes * channels;
  const size = UNKNOWN.includes(stored.size) ? Number.POSITIVE_INFINITY : stored.size;
  const rail = 2 ** (8 * bytes - 1);
  let rest = first;
  let read = 0;
  let taken = 0;
  for (;;) {
    const here = rest.subarray(0, Math.min(rest.length, size - read));
    const samples = new Float64Array(Math.floor(here.length / frame));
    for (let i = 0; i < samples.length; i++) {
      const number = numberAt(here, i * frame + channel * bytes, stored);
      if (!isFloat && (number === -rail || number === rail - 1)) {
        throw new VeladisError("sensor-fault", {
          expected: `whole numbers between ${-rail} and ${rail - 1}`,
          received: `${number} at index ${taken + i}: the converter overflowed`,
        });
      }
      samples[i] = number * scale;
    }
    taken += samples.length;
    read += samples.length * frame;
    if (samples.length > 0) yield samples;
    if (read + frame > size) break;
    rest = rest.subarray(samples.length * frame);
    const { done, value } = await pieces.next();
    if (done) {
      if (Number.isFinite(size) || rest.length > 0) {
        throw new VeladisError("length-mismatch", {
          expected: Number.isFinite(size)
            ? `${size} bytes of samples, as the file says`
            : `whole frames of ${frame} bytes`,
          received: `${read + rest.length}: a file cut off`,
        });
      }
      break;
    }
    rest = rest.length === 0 ? value : Buffer.concat([rest, value]);
  }
}
