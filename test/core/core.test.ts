import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { remedies } from "../../docs/site/pages/remedies";
import {
  cached,
  cachedWithRefusals,
  errorCodes,
  nearest,
  parseNumeral,
  shown,
  splitNumeral,
  VeladisError,
} from "../../src/core/index";
import { codeOf } from "../refusals/refusal-of";

describe("VeladisError", () => {
  it("is an Error of its own name, with all it knows as data", () => {
    const error = new VeladisError("unknown-unit", { expected: "a unit", received: '"x"', allowed: ["g", "m"] });
    expect(error).toBeInstanceOf(Error);
    expect(error.name).toBe("VeladisError");
    expect(error.message).toBe('expected a unit, received "x"; allowed: g, m');
    const { code, expected, received, allowed } = error;
    expect({ code, expected, received, allowed }).toEqual({
      code: "unknown-unit",
      expected: "a unit",
      received: '"x"',
      allowed: ["g", "m"],
    });
  });

  it("leaves out empty lists", () => {
    const error = new VeladisError("syntax", { expected: "a", received: "b", allowed: [], didYouMean: [] });
    expect(error.message).toBe("expected a, received b");
    expect("allowed" in error || "didYouMean" in error).toBe(false);
  });

  it("is data that JSON and a worker carry whole", () => {
    const error = new VeladisError("unknown-unit", { expected: "a unit", received: '"x"', didYouMean: ["g"] });
    const data = {
      name: "VeladisError",
      code: "unknown-unit",
      message: 'expected a unit, received "x"; did you mean g?',
      expected: "a unit",
      received: '"x"',
      didYouMean: ["g"],
    };
    expect(JSON.parse(JSON.stringify(error))).toEqual(data);
    expect(structuredClone(error.toJSON())).toEqual(data);
  });

  it("is told from all else", () => {
    const error = new VeladisError("syntax", { expected: "a", received: "b" });
    expect([VeladisError.is(error), error instanceof VeladisError]).toEqual([true, true]);
    for (const other of [
      undefined,
      null,
      7,
      "syntax",
      new Error("a"),
      { ...error },
      error.toJSON(),
      Object.create(null),
    ]) {
      expect([VeladisError.is(other), (other as object) instanceof VeladisError]).toEqual([false, false]);
    }
    // its mark is not seen among its fields
    expect(Object.keys(error)).toEqual(["name", "code", "expected", "received"]);
    expect(Object.getOwnPropertySymbols({ ...error })).toEqual([]);
  });

  it("has a meaning for every code", () => {
    for (const [code, meaning] of Object.entries(errorCodes)) expect(meaning.length, code).toBeGreaterThan(20);
  });
});

describe("shown", () => {
  it.each([
    ["a", '"a"'],
    ["x".repeat(61), `"${"x".repeat(60)}…"`],
    ['a"b\n', '"a\\"b\\n"'],
    [5, "5"],
    [Number.NaN, "NaN"],
    [null, "nothing"],
    [undefined, "nothing"],
    [true, "true"],
    [{}, "an object"],
    [Symbol("s"), "Symbol(s)"],
  ])("%o", (value, text) => {
    expect(shown(value)).toBe(text);
  });
});

describe("parseNumeral", () => {
  it.each([
    ["1", 1],
    [" 1.5 ", 1.5],
    ["+.5e-3", 0.0005],
    ["5.", 5],
    ["1E3", 1000],
    ["-0", -0],
  ])("%j is %d", (text, value) => {
    expect(parseNumeral(text)).toBe(value);
  });

  it.each(["", "x", "1x", "0x10", "1,5", "1 5", "1e", "--1", "NaN", "Infinity", "1_000", "１"])(
    "%j is none",
    (text) => {
      expect(() => parseNumeral(text)).toThrow(expect.objectContaining({ code: "not-a-number" }));
    },
  );

  it("reads every double that JavaScript writes", () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        (x) => Object.is(parseNumeral(`${x}`), x === 0 ? 0 : x) || x === 0,
      ),
    );
  });

  it.each([
    ["1e-9 m/s", ["1e-9", "m/s"]],
    ["25mm", ["25", "mm"]],
    ["1,500 um", ["1,500", "um"]],
    ["3 eff", ["3", "eff"]],
    ["3e4x", ["3e4", "x"]],
    ["mm", ["", "mm"]],
    ["+", ["", "+"]],
  ])("%j splits into %j", (text, expected) => {
    expect(splitNumeral(text)).toEqual(expected);
  });
});

describe("nearest", () => {
  it("counts a swap of neighbours as one edit, and gives three at most, best first", () => {
    expect(nearest("rsm", ["rms", "pk", "pp"])).toEqual(["rms"]);
    expect(nearest("mm", ["mm", "cm", "nm", "um", "pm"])).toEqual(["mm", "cm", "nm"]);
    expect(nearest("x".repeat(33), ["x"])).toEqual([]);
    expect(nearest("furlong", ["x", "mm"])).toEqual([]);
  });
});

describe("cached", () => {
  it("makes once, forgets all when full, and keeps no error", () => {
    const made: string[] = [];
    const length = cached((text) => {
      made.push(text);
      if (text === "bad") throw new VeladisError("syntax", { expected: "a", received: "b" });
      return text.length;
    });
    const texts = Array.from({ length: 256 }, (_, i) => `${i}`);
    for (const text of [...texts, ...texts, "7", "7"]) expect(length(text)).toBe(text.length);
    expect(made).toEqual(texts);
    expect(["one more", "7", "one more"].map(length)).toEqual([8, 1, 8]);
    expect(made.slice(256)).toEqual(["one more", "7"]);
    expect(() => length("bad")).toThrow();
    expect(() => length("bad")).toThrow();
    expect(made.slice(258)).toEqual(["bad", "bad"]);
  });

  it("keeps refusals too where it is the one with refusals, and never another error", () => {
    const made: string[] = [];
    const read = cachedWithRefusals((text) => {
      made.push(text);
      if (text === "refused") throw new VeladisError("syntax", { expected: "a", received: "b" });
      if (text === "bug") throw new TypeError("bug");
      return text;
    });
    for (let i = 0; i < 2; i++) {
      expect(() => read("refused")).toThrow(VeladisError);
      expect(() => read("bug")).toThrow(TypeError);
      expect(read("good")).toBe("good");
    }
    expect(made).toEqual(["refused", "bug", "good", "bug"]);
  });

  it("counts refusals among what it holds", () => {
    const made: string[] = [];
    const read = cachedWithRefusals(
      (text) => {
        made.push(text);
        if (text.length < 3) throw new VeladisError("syntax", { expected: "a", received: "b" });
        return text;
      },
      { room: 2 },
    );
    const ask = (text: string) => codeOf(() => read(text));
    expect(["good", "a", "a", "b", "b", "a", "fine", "good"].map(ask)).toEqual([
      "accepted",
      ...Array(5).fill("syntax"),
      "accepted",
      "accepted",
    ]);
    expect(made).toEqual(["good", "a", "b", "a", "fine", "good"]);
  });

  it("holds as much as has room by its size, but always the last", () => {
    const made: number[] = [];
    const table = cached(
      (length: number) => {
        made.push(length);
        return new Float64Array(length);
      },
      { room: 10, size: (length) => length },
    );
    for (const length of [4, 6, 4, 6, 20, 20, 4, 4, 6, 4]) expect(table(length).length).toBe(length);
    expect(made).toEqual([4, 6, 20, 4, 6]);
  });
});

describe("the page of error codes", () => {
  it("says of each code, and of no other, what to do", () => {
    expect(Object.keys(remedies)).toEqual(Object.keys(errorCodes));
    for (const [code, words] of Object.entries(remedies)) expect(words.length, code).toBeGreaterThan(20);
  });
});
