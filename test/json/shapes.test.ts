import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { answerKinds, jsonVersion } from "../../src/json/index";
import { fieldsOf } from "../../src/json/shapes/index";
import { root } from "../examples/fences";

/** What stood in the answers of this version when it was last noted: by kind, then by key. */
type Noted = Readonly<Record<string, Readonly<Record<string, string>>>>;

const path = `${root}/test/json/shapes/version-${jsonVersion}.json`;
const now: Noted = Object.fromEntries(answerKinds().map((kind) => [kind, Object.fromEntries(fieldsOf(kind).fields)]));
const noted: Noted = existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : {};

/** What a change of shapes breaks for whoever reads or has kept texts of this version. */
function breaks(before: Noted, after: Noted): string[] {
  const changed = Object.entries(before).flatMap(([kind, keys]) =>
    Object.entries(keys)
      .filter(([key, field]) => after[kind]?.[key] !== field)
      .map(([key, field]) => `${kind}.${key} was ${field}, is ${after[kind]?.[key] ?? "gone"}: raise the version`),
  );
  const added = Object.entries(after).flatMap(([kind, keys]) =>
    Object.entries(keys)
      .filter(([key, field]) => before[kind] !== undefined && before[kind][key] === undefined && !field.endsWith("?"))
      .map(
        ([key]) => `${kind}.${key} is new, and texts of this version do not have it: write "?", or raise the version`,
      ),
  );
  return [...changed, ...added];
}

describe("the shapes of a version stay as they were noted", () => {
  it("nothing is changed or taken away, and what is added may be left out", () => {
    expect(breaks(noted, now)).toEqual([]);
  });

  it("what is added is noted: NOTE_SHAPES=1 writes it", () => {
    if (process.env.NOTE_SHAPES !== undefined) writeFileSync(path, `${JSON.stringify(now, null, 2)}\n`);
    else expect(now).toEqual(noted);
  });

  it("a key renamed, removed, added or given another meaning is found", () => {
    const before = { margin: { ratio: "number", decibels: "number" } };
    expect(breaks(before, { margin: { ratio: "number", level: "number" } })).toHaveLength(2);
    expect(breaks(before, { margin: { ratio: "text", decibels: "number" } })).toHaveLength(1);
    expect(breaks(before, { margin: { ratio: "number", decibels: "number", note: "text?" } })).toEqual([]);
    expect(breaks(before, {})).toHaveLength(2);
    expect(breaks(before, { ...before, limit: { value: "number" } })).toEqual([]);
  });
});
