import type { ParquetParsers } from "hyparquet";

/** What stands in the place of a value that cannot be told as text. */
export class Unreadable {
  constructor(readonly reason: string) {}
}

/** The furthest that a date reaches from 1970, in milliseconds. */
const FURTHEST = 8.64e15;

/** An instant in ISO 8601 with the digits it has; `rest` is what goes beyond milliseconds, of `digits` digits. */
function instantText(milliseconds: number, rest: bigint, digits: number): string | Unreadable {
  if (!(Math.abs(milliseconds) <= FURTHEST)) return new Unreadable("a time beyond all dates");
  const text = new Date(milliseconds).toISOString();
  return rest === 0n ? text : `${text.slice(0, -1)}${String(rest).padStart(digits, "0").replace(/0+$/, "")}Z`;
}

/** An instant that is counted in a part of a millisecond. */
function instantOf(count: bigint, parts: bigint, digits: number): string | Unreadable {
  const rest = ((count % parts) + parts) % parts;
  return instantText(Number((count - rest) / parts), rest, digits);
}

const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

function hexText(bytes: Uint8Array): string {
  return `0x${Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString("hex")}`;
}

/**
 * How values become texts; those that cannot are {@link Unreadable}.
 *
 * @param isText - whether the column says that its bytes are text; else they may be anything
 */
export function parsersFor(isText: boolean): ParquetParsers {
  const textOf = (bytes: Uint8Array | undefined): string | Unreadable | undefined => {
    if (bytes === undefined) return undefined;
    try {
      return decoder.decode(bytes);
    } catch {
      return isText ? new Unreadable("text that is not UTF-8") : hexText(bytes);
    }
  };
  return {
    timestampFromMilliseconds: (count: bigint) => instantText(Number(count), 0n, 0),
    timestampFromMicroseconds: (count: bigint) => instantOf(count, 1000n, 3),
    timestampFromNanoseconds: (count: bigint) => instantOf(count, 1000000n, 6),
    dateFromDays: (days: number) => {
      const text = instantText(days * 86_400_000, 0n, 0);
      return typeof text === "string" ? text.replace(/T.*/, "") : text;
    },
    stringFromBytes: textOf,
    jsonFromBytes: textOf,
    geometryFromBytes: textOf,
    geographyFromBytes: textOf,
    uuidFromBytes: (bytes: Uint8Array | undefined) =>
      bytes &&
      hexText(bytes)
        .slice(2)
        .replace(/^(.{8})(.{4})(.{4})(.{4})/, "$1-$2-$3-$4-"),
  } as unknown as ParquetParsers;
}

/** A value within another, for JSON: whole numbers beyond what JSON keeps as texts. */
function innerValue(_key: string, value: unknown): unknown {
  if (value instanceof Unreadable) throw value;
  if (value instanceof Uint8Array) return hexText(value);
  if (typeof value !== "bigint") return value;
  return Number.isSafeInteger(Number(value)) ? Number(value) : String(value);
}

/** A value of Parquet as the text of a cell. */
export function cellText(value: unknown): string | Unreadable {
  if (typeof value === "string") return value;
  if (value === null || value === undefined) return "";
  if (typeof value !== "object") return String(value);
  if (value instanceof Unreadable) return value;
  if (value instanceof Uint8Array) return hexText(value);
  try {
    return JSON.stringify(value, innerValue) ?? "";
  } catch (error) {
    if (error instanceof Unreadable) return error;
    throw error;
  }
}
