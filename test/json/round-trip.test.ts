import fc from "fast-check";
import { type AnswerKind, fromJson, toJson } from "veladis/json";
import { describe, expect, it } from "vitest";
import { makers } from "./answers";

// biome-ignore lint/suspicious/noExplicitAny: the kinds are told by a table
type Loose = any;

const given = fc.record({
  amplitude: fc.double({ min: 0.1, max: 20, noNaN: true }),
  share: fc.double({ min: 0.01, max: 1, noNaN: true }),
  pick: fc.nat(1000),
});

/** Parts of a value that a caller could change; samples apart, which cannot be frozen. */
function changeable(value: unknown, path: string): string[] {
  if (typeof value !== "object" || value === null || ArrayBuffer.isView(value)) return [];
  const parts = Object.entries(value).flatMap(([key, part]) => changeable(part, `${path}.${key}`));
  return Object.isFrozen(value) ? parts : [path, ...parts];
}

describe("an answer goes to JSON and comes back equal and frozen", () => {
  it.each(makers)("%s: %s", (kind: AnswerKind, _name, make) => {
    fc.assert(
      fc.property(given, (numbers) => {
        const answer = make(numbers) as Loose;
        const text = toJson(kind, answer);
        expect(text).not.toContain("\n");
        const back = fromJson(kind, text) as Loose;
        expect(back).toEqual(answer);
        expect(changeable(back, kind)).toEqual([]);
        // what came back is written as the first was
        expect(toJson(kind, back)).toBe(text);
        // and survives what workers do to data
        expect(structuredClone(back)).toEqual(answer);
      }),
      { numRuns: 12 },
    );
  });
});
