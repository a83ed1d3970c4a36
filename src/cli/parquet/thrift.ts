import { damaged } from "./damage";

/** What stands in a field of a structure of Thrift's compact protocol. */
type ThriftValue = boolean | number | Uint8Array | ThriftStruct | readonly ThriftValue[];

/** The fields of a structure by their numbers. */
export type ThriftStruct = ReadonlyMap<number, ThriftValue>;

/** Deeper than any structure of Parquet. */
const DEEPEST = 24;

/**
 * Reads a structure of Thrift's compact protocol, and believes no length that the bytes left cannot hold.
 *
 * Source: Apache Thrift, compact protocol specification.
 *
 * @returns the structure and the place behind it
 * @throws {@link VeladisError} `syntax`
 */
export function thriftStruct(bytes: Uint8Array, from: number, where: string): readonly [ThriftStruct, number] {
  let at = from;

  const byte = (): number => bytes[at++] ?? damaged(where, "breaks off");

  const varint = (): number => {
    let value = 0;
    for (let i = 0; i < 10; i++) {
      const next = byte();
      value += (next & 0x7f) * 2 ** (7 * i);
      if (next < 0x80) return value;
    }
    return damaged(where, "a number without an end");
  };

  /** A count of things that take a byte each, or more. */
  const count = (value: number): number =>
    value <= bytes.length - at ? value : damaged(where, "a length beyond its end");

  const zigzag = (): number => {
    const value = varint();
    return value % 2 === 0 ? value / 2 : -(value + 1) / 2;
  };

  const binary = (): Uint8Array => {
    const length = count(varint());
    at += length;
    return bytes.subarray(at - length, at);
  };

  const list = (depth: number): ThriftValue[] => {
    const head = byte();
    const length = count(head >> 4 === 15 ? varint() : head >> 4);
    const type = head & 15;
    return Array.from({ length }, () => (type < 3 ? byte() === 1 : element(type, depth)));
  };

  const element = (type: number, depth: number): ThriftValue => {
    if (depth > DEEPEST) damaged(where, "nested without an end");
    if (type === 1 || type === 2) return type === 1;
    if (type === 3) return byte();
    if (type >= 4 && type <= 6) return zigzag();
    if (type === 7) {
      at += count(8);
      return Number.NaN;
    }
    if (type === 8) return binary();
    if (type === 9) return list(depth + 1);
    if (type === 12) return struct(depth + 1);
    return damaged(where, "a field of no known kind");
  };

  const struct = (depth: number): ThriftStruct => {
    const fields = new Map<number, ThriftValue>();
    let id = 0;
    for (let head = byte(); (head & 15) !== 0; head = byte()) {
      id = head >> 4 === 0 ? zigzag() : id + (head >> 4);
      fields.set(id, element(head & 15, depth));
    }
    return fields;
  };

  return [struct(0), at];
}
