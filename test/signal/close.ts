import { expect } from "vitest";

/** Holds a value against another implementation's, relative to its size. */
export function expectClose(actual: number | undefined, expected: number, relative: number, what = ""): void {
  const off = Math.abs((actual as number) - expected) / Math.abs(expected);
  expect(off <= relative, `${what} ${actual} should be ${expected}, is off by ${off}`).toBe(true);
}
