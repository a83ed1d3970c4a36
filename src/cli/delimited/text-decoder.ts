import { isUtf8 } from "node:buffer";
import { type Encoding, latin1Text } from "./encodings";
import { PARQUET, parquetFault } from "./parquet-refused";

/** What is wrong with the bytes of a file, for its refusal. */
interface Fault {
  readonly expected: string;
  readonly received: string;
}

/** Bytes in UTF-8, up to the line of the first fault if there is one. */
export interface Decoded {
  readonly text: Buffer;
  readonly fault?: Fault;
}

/** Makes UTF-8 of the bytes of a file, portion by portion. */
export interface Utf8Maker {
  take(bytes: Buffer): Decoded;
  end(): Decoded;
  /** Known once the first bytes are. */
  readonly encoding: Encoding;
  /** Length of the mark that the file begins with; 0 without one. */
  readonly mark: number;
}

const NOTHING = Buffer.alloc(0);

const marks: readonly (readonly [Encoding, readonly number[]])[] = [
  ["utf-8", [0xef, 0xbb, 0xbf]],
  ["utf-16le", [0xff, 0xfe]],
  ["utf-16be", [0xfe, 0xff]],
];

const marks32: readonly (readonly number[])[] = [
  [0xff, 0xfe, 0, 0],
  [0, 0, 0xfe, 0xff],
];
const utf32: Fault = {
  expected: "text in UTF-8 or UTF-16 (save it so)",
  received: "the byte order mark of UTF-32",
};

const noUtf8: Fault = {
  expected: "text in UTF-8, or --encoding latin-1 for a file in Latin-1",
  received: "bytes that are no UTF-8",
};
const noUtf16: Fault = { expected: "text in UTF-16", received: "bytes that are no UTF-16, or half a character" };

/** Whether every other byte is NUL, as in UTF-16 of western text. */
function looksWide(bytes: Buffer): boolean {
  const start = bytes.subarray(0, 64);
  const at = (odd: number): number => start.filter((byte, i) => byte === 0 && i % 2 === odd).length;
  return Math.max(at(0), at(1)) > start.length / 4;
}

function nulFault(bytes: Buffer): Fault {
  return looksWide(bytes)
    ? { expected: "text, or --encoding utf-16 for a file in UTF-16", received: "every other byte is NUL" }
    : { expected: "a text file", received: "a NUL in it" };
}

/** The start of the line that a place is on. */
function lineStart(bytes: Buffer, place: number): number {
  return place === 0 ? 0 : bytes.lastIndexOf(10, place - 1) + 1;
}

/** The start of the first line that is no UTF-8. */
function brokenLine(bytes: Buffer): number {
  let start = 0;
  for (let end = bytes.indexOf(10); end >= 0 && isUtf8(bytes.subarray(start, end)); end = bytes.indexOf(10, start)) {
    start = end + 1;
  }
  return start;
}

/** Up to where bytes end in a whole character of UTF-8. */
function wholeEnd(bytes: Buffer): number {
  for (let back = 1; back <= Math.min(3, bytes.length); back++) {
    const byte = bytes[bytes.length - back] as number;
    if (byte < 0x80) break;
    if (byte < 0xc0) continue;
    const needed = byte < 0xe0 ? 2 : byte < 0xf0 ? 3 : 4;
    return needed > back ? bytes.length - back : bytes.length;
  }
  return bytes.length;
}

function withoutNul(text: Buffer): Decoded {
  const nul = text.indexOf(0);
  return nul < 0 ? { text } : { text: text.subarray(0, lineStart(text, nul)), fault: nulFault(text) };
}

/** Makes UTF-8 of portions in an encoding; at the end of the file of nothing. */
function makerOf(encoding: Encoding): (bytes: Buffer, ended: boolean) => Decoded {
  if (encoding === "latin-1") return (bytes) => withoutNul(Buffer.from(latin1Text(bytes)));
  if (encoding !== "utf-8") {
    const decoder = new TextDecoder(encoding, { fatal: true, ignoreBOM: true });
    return (bytes, ended) => {
      try {
        return withoutNul(Buffer.from(decoder.decode(bytes, { stream: !ended })));
      } catch {
        return { text: NOTHING, fault: noUtf16 };
      }
    };
  }
  let rest: Buffer = NOTHING;
  return (bytes, ended) => {
    const all = rest.length === 0 ? bytes : Buffer.concat([rest, bytes]);
    const whole = ended ? all.length : wholeEnd(all);
    const text = all.subarray(0, whole);
    rest = all.subarray(whole);
    const checked = withoutNul(text);
    return isUtf8(checked.text) ? checked : { text: text.subarray(0, brokenLine(text)), fault: noUtf8 };
  };
}

/** What is told against the mark that a file begins with, if it contradicts it. */
function contradiction(marked: Encoding, told: string | undefined): Fault | undefined {
  if (told === undefined || marked.startsWith(told)) return undefined;
  const name = marked.replace(/[lb]e$/, "");
  return {
    expected: `the encoding of the byte order mark, ${name} (--encoding is for files without one)`,
    received: `--encoding ${told}, and the mark of ${name}`,
  };
}

/**
 * Makes UTF-8 of a file: a byte order mark says its encoding, else what was told, else it is UTF-8. What was told
 * against a mark is a fault of the file's first bytes.
 */
export function utf8Maker(told: string | undefined): Utf8Maker {
  let first: Buffer = NOTHING;
  let make: ReturnType<typeof makerOf> | undefined;
  let encoding: Encoding = "utf-8";
  let mark = 0;
  let isParquet = false;
  const begins = (bytes: readonly number[]): boolean => bytes.every((byte, i) => first[i] === byte);
  const open = (): Fault | undefined => {
    if (marks32.some(begins)) return utf32;
    isParquet = first.toString("latin1", 0, PARQUET.length) === PARQUET;
    const marked = marks.find(([, bytes]) => begins(bytes));
    mark = marked?.[1].length ?? 0;
    const wide = first[0] === 0 ? "utf-16be" : "utf-16le";
    encoding = marked?.[0] ?? (told === "utf-16" ? wide : told === "latin-1" ? "latin-1" : "utf-8");
    make = makerOf(encoding);
    return marked && contradiction(marked[0], told);
  };
  const take = (bytes: Buffer, ended: boolean): Decoded => {
    if (make !== undefined) {
      const decoded = make(bytes, ended);
      // none of it is a row
      return isParquet && decoded.fault !== undefined ? { text: NOTHING, fault: parquetFault } : decoded;
    }
    first = first.length === 0 ? bytes : Buffer.concat([first, bytes]);
    if (first.length < 4 && !ended) return { text: NOTHING };
    const fault = open();
    if (fault !== undefined) return { text: NOTHING, fault };
    return take(first.subarray(mark), ended);
  };
  return {
    take: (bytes) => take(bytes, false),
    end: () => take(NOTHING, true),
    get encoding() {
      return encoding;
    },
    get mark() {
      return mark;
    },
  };
}
