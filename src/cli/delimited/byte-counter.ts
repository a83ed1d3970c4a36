import type { Encoding } from "./encodings";

/** What a count of rows has to be told; it finds out nothing by itself. */
export interface CountedAs {
  readonly encoding: Encoding;
  /** Bytes of the mark before the text. */
  readonly mark: number;
  readonly lineEnd: "\n" | "\r";
  /** Lines above the header, in which a quotation mark means nothing. */
  readonly preamble: number;
  /** The sign that remarks begin with, if there are remarks. */
  readonly sign: string | undefined;
  readonly quotes: boolean;
}

/** Counts the lines of a file from its bytes, portion by portion. */
export interface ByteCounter {
  take(bytes: Uint8Array): void;
  /** Rows below the header and lines beside them: all lines but that of the header. */
  rows(): number;
}

const QUOTE = 34;

/** Where the next of a line end and a quotation mark stands, or the end of the bytes. */
function nextOf(bytes: Uint8Array, from: number, end: number): number {
  const { length } = bytes;
  let at = from;
  while (at < length && bytes[at] !== end && bytes[at] !== QUOTE) at++;
  return at;
}

/**
 * Counts the rows of a file from its bytes: line ends outside quotes. Lines above the header and remarks are plain.
 *
 * It shares no code with the reader, so that neither hides what the other loses.
 */
export function byteCounter({ encoding, mark, lineEnd, preamble, sign = "", quotes }: CountedAs): ByteCounter {
  const end = lineEnd.charCodeAt(0);
  const wide = encoding === "utf-16le" || encoding === "utf-16be";
  const low = encoding === "utf-16be" ? 1 : 0;
  let skip = mark;
  let lines = 0;
  let begun = false;
  let quoted = false;
  let plain = preamble > 0;
  /** How much of the sign the line has begun with; -1 where it has begun otherwise. */
  let matched = 0;
  /** The first byte of a character that the portion before was cut in. */
  let half = -1;

  const character = (code: number): void => {
    begun = true;
    if (code === end && (plain || !quoted)) {
      lines++;
      begun = false;
      plain = lines < preamble;
      matched = 0;
      return;
    }
    if (plain || quoted) matched = -1;
    if (plain) return;
    if (quoted) {
      if (code === QUOTE) quoted = false;
      return;
    }
    if (matched >= 0) {
      matched = sign.length > 0 && code === sign.charCodeAt(matched) ? matched + 1 : -1;
      if (matched === sign.length) {
        plain = true;
        matched = -1;
        return;
      }
    }
    if (code === QUOTE && quotes) quoted = true;
  };

  return {
    take(bytes) {
      let at = Math.min(skip, bytes.length);
      skip -= at;
      if (!wide) {
        const { length } = bytes;
        for (; at < length; at++) {
          // within a line nothing else counts; most bytes go no further
          if (matched < 0) at = nextOf(bytes, at, end);
          if (at < length) character(bytes[at] as number);
        }
        return;
      }
      for (; at < bytes.length; at++) {
        const byte = bytes[at] as number;
        if (half < 0) half = byte;
        else {
          character(low === 0 ? half + 256 * byte : 256 * half + byte);
          half = -1;
        }
      }
    },
    rows: () => lines + (begun ? 1 : 0) - 1,
  };
}
