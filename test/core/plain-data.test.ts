import { describe, expect, it } from "vitest";
import { finiteResult, orNothing, orNull, requireKnownKeys, requireShape, type Shape } from "../../src/core/index";
import { codeAndExpectedOf } from "../refusals/refusal-of";

/** A shape that is made within its test, not on import: so the test is what holds the functions that make it. */
class Late {
  constructor(readonly make: () => Shape) {}
}

const late = (make: () => Shape): Late => new Late(make);
const made = (shape: Shape | Late): Shape => (shape instanceof Late ? shape.make() : shape);

describe("plain data of a shape", () => {
  it.each<[string, unknown, Shape | Late]>([
    ["a text, also an empty one", "", "text"],
    ["true", true, "truth"],
    ["false", false, "truth"],
    ["a number, also zero and below", -0, "number"],
    ["a number that may be null", 2.5, "number or null"],
    ["null for it", null, "number or null"],
    ["an object with more than is asked for", { title: "x", more: 1 }, { title: "text" }],
    ["an object of nothing", {}, {}],
    ["an empty list", [], ["number"]],
    ["a list of objects", [{ k: 1 }, { k: 2 }], [{ k: "number" }]],
    ["null where it may be null", null, late(() => orNull({ k: "number" }))],
    ["an object where it may be null", { k: 1 }, late(() => orNull({ k: "number" }))],
    ["nothing where it may be left out", {}, late(() => ({ note: orNothing("text") }))],
    ["a text where it may be left out", { note: "x" }, late(() => ({ note: orNothing("text") }))],
  ])("is %s", (_, value, shape) => {
    expect(requireShape(value, made(shape), "result")).toBe(true);
  });

  it.each<[string, unknown, Shape | Late, string]>([
    ["a number for a text", 7, "text", "wrong-type: result: a text"],
    ["null for a text", null, "text", "missing-option: result: a text"],
    ["nothing for a text", undefined, "text", "missing-option: result: a text"],
    ["one for true", 1, "truth", "wrong-type: result: true or false"],
    ["nothing for a truth", undefined, "truth", "missing-option: result: true or false"],
    ["null for a number", null, "number", "missing-option: result: a number"],
    ["NaN for a number", Number.NaN, "number", "not-a-number: result: a number"],
    ["nothing for a number", undefined, "number", "missing-option: result: a number"],
    [
      "infinity where null may stand",
      Number.POSITIVE_INFINITY,
      "number or null",
      "not-finite: result: a number or null",
    ],
    ["nothing where null may stand", undefined, "number or null", "missing-option: result: a number or null"],
    ["a text where null may stand", "1", "number or null", "wrong-type: result: a number or null"],
    ["an object for a list", { length: 0 }, ["number"], "wrong-type: result: a list"],
    ["nothing for a list", undefined, ["number"], "missing-option: result: a list"],
    ["null for an object", null, {}, "missing-option: result: an object"],
    ["a text for an object", "x", {}, "wrong-type: result: an object"],
    [
      "a part deep inside",
      { rows: [{ k: 1 }, { k: "2" }] },
      { rows: [{ k: "number" }] },
      "wrong-type: result.rows[1].k: a number",
    ],
    ["a part that may be null", { k: "1" }, late(() => ({ k: orNull("number") })), "wrong-type: result.k: a number"],
    ["nothing where only null may stand", undefined, late(() => orNull("text")), "missing-option: result: a text"],
    ["null where it may only be left out", null, late(() => orNothing("text")), "missing-option: result: a text"],
  ])("is not %s", (_, value, shape, words) => {
    expect(codeAndExpectedOf(() => requireShape(value, made(shape), "result"))).toBe(words);
  });

  it("may be held by a function of its own, which is told the place", () => {
    const seen: unknown[] = [];
    const look = (value: never, where: string) => seen.push([value, where]);
    expect(requireShape({ parts: [1, 2] }, { parts: [look] }, "sheet")).toBe(true);
    expect(seen).toEqual([
      [1, "sheet.parts[0]"],
      [2, "sheet.parts[1]"],
    ]);
  });
});

describe("settings", () => {
  const known = { threshold: true, hysteresis: true, onDelay: true };

  it("are given back if each key is a known one", () => {
    for (const settings of [{}, { threshold: "7.1 mm/s rms" }, { onDelay: undefined, threshold: 1 }]) {
      expect(requireKnownKeys(settings, known, "a setting of a trip")).toBe(settings);
    }
  });

  it("are refused for one key that is a stranger, also one that every object inherits", () => {
    expect(codeAndExpectedOf(() => requireKnownKeys({ threshold: 1, hysterisis: 1 }, known, "a setting"))).toBe(
      "unknown-option: a setting",
    );
    expect(codeAndExpectedOf(() => requireKnownKeys({ toString: 1 }, known, "a setting"))).toBe(
      "unknown-option: a setting",
    );
  });
});

describe("a result", () => {
  it("is given back if a number can hold it", () => {
    expect([finiteResult(0), finiteResult(-2.5), finiteResult(Number.MAX_VALUE)]).toEqual([0, -2.5, Number.MAX_VALUE]);
    expect(codeAndExpectedOf(() => finiteResult(1e308 * 10))).toBe("not-finite: a result that a number can hold");
    expect(codeAndExpectedOf(() => finiteResult(Number.NaN))).toBe("not-a-number: a result that a number can hold");
  });
});
