import { describe, expect, it } from "vitest";
import {
  cached,
  dataText,
  frozen,
  nearest,
  numeralAndUnit,
  requireChoice,
  requireFinite,
  requireGiven,
  requireList,
  requireNonNegative,
  requirePositive,
  requireText,
  shown,
  splitNumeral,
  symbolsByName,
  unknownName,
  VeladisError,
} from "../../src/core/index";
import { codeOf } from "../refusals/refusal-of";

describe("the error", () => {
  it("joins several suggestions by or", () => {
    const error = new VeladisError("unknown-unit", { expected: "a unit", received: '"nm"', didYouMean: ["mm", "um"] });
    expect(error.message).toBe('expected a unit, received "nm"; did you mean mm or um?');
    expect(error.didYouMean).toEqual(["mm", "um"]);
  });

  it("says a tab in words", () => {
    const error = new VeladisError("syntax", { expected: `cells without ${shown("\t")}`, received: "row\tlimit" });
    expect(error.message).toBe("expected cells without a tab, received row (a tab) limit");
  });

  it("suggests each symbol once, by whichever of its names is near", () => {
    const names = new Map([
      ["mil", "mil"],
      ["mils", "mil"],
      ["mm", "mm"],
    ]);
    const error = unknownName("unknown-unit", "a unit", "milx", [names, { mil: 1, mm: 2 }]);
    expect(error.didYouMean).toEqual(["mil"]);
    expect(error.allowed).toEqual(["mil", "mm"]);
  });
});

describe("guards give back what they let pass", () => {
  it("numbers, with the bound itself on the right side", () => {
    expect([
      requireFinite(-2.5, "a"),
      requireNonNegative(0, "a"),
      requireNonNegative(2, "a"),
      requirePositive(5e-324, "a"),
    ]).toEqual([-2.5, 0, 2, 5e-324]);
    expect(codeOf(() => requireNonNegative(-5e-324, "a"))).toBe("negative");
    expect(codeOf(() => requirePositive(-0, "a"))).toBe("not-positive");
  });

  it("texts as they are written, and none of white space alone", () => {
    expect(requireText(" mm/s ", "a text")).toBe(" mm/s ");
    for (const empty of ["", " ", "\t\n"]) expect(codeOf(() => requireText(empty, "a text"))).toBe("syntax");
  });

  it("what is there, even if it is false, zero or empty", () => {
    expect([requireGiven(0, "a"), requireGiven(false, "a"), requireGiven("", "a")]).toEqual([0, false, ""]);
    const rows = [0, "", false];
    expect(requireList(rows, "rows")).toBe(rows);
    expect(requireList([], "rows")).toEqual([]);
  });
});

describe("requireChoice", () => {
  const modes = ["down", "nearest", "up"] as const;

  it("gives back the word itself", () => {
    for (const mode of modes) expect(requireChoice(mode, modes, "a direction")).toBe(mode);
  });

  it("suggests nothing for a single letter, which is near to every other", () => {
    const refused = (word: string): VeladisError => {
      try {
        requireChoice(word, ["A", "B", "AB"], "a zone");
      } catch (error) {
        return error as VeladisError;
      }
      throw new Error("accepted");
    };
    expect(refused("E").didYouMean).toBeUndefined();
    expect(refused("E").allowed).toEqual(["A", "B", "AB"]);
    expect(refused("BA").didYouMean).toEqual(["B", "AB", "A"]);
  });
});

describe("numeralAndUnit", () => {
  it.each([
    ["120 kg", ["120", "kg"]],
    ["  120kg ", ["120", "kg"]],
    ["1,5 kg", ["1,5", "kg"]],
    ["-3 per cent", ["-3", "per cent"]],
  ])("takes %j apart", (written, parts) => {
    expect(numeralAndUnit(written, "a mass")).toEqual(parts);
  });

  it.each([
    [undefined, "missing-option"],
    [null, "missing-option"],
    [120, "missing-unit"],
    ["120", "missing-unit"],
    ["120 ", "missing-unit"],
    ["kg", "syntax"],
    ["", "syntax"],
    [true, "wrong-type"],
    [["120 kg"], "wrong-type"],
  ])("refuses %j as %s", (written, code) => {
    expect(codeOf(() => numeralAndUnit(written as string, "a mass"))).toBe(code);
  });
});

describe("splitNumeral", () => {
  it.each([
    ["25 mm,5", ["25", "mm,5"]],
    ["25 ,5", ["25", ",5"]],
    ["25,mm", ["25", ",mm"]],
    ["1,500.5,2x", ["1,500.5,2", "x"]],
  ])("leaves in %j a comma that no digits stand before or behind", (written, parts) => {
    expect(splitNumeral(written)).toEqual(parts);
  });
});

describe("plain data in a message", () => {
  it("shows big integers as they are written in the language", () => {
    expect(dataText({ above: 15n, below: 2 })).toBe('{"above":"15n","below":2}');
  });
});

describe("frozen", () => {
  it("freezes a table down to its last row and gives it back", () => {
    const table = { a: { rows: [{ value: 1 }] }, none: null, text: "x" };
    expect(frozen(table)).toBe(table);
    for (const part of [table, table.a, table.a.rows, table.a.rows[0]]) expect(Object.isFrozen(part)).toBe(true);
  });
});

describe("names in a table", () => {
  const table = {
    Mil: { also: ["thou"], spoken: ["mils"] },
    mm: { spoken: ["millimetre"] },
    um: { also: ["micron"] },
    ft: {},
  };

  it("are the other symbols and the spoken names, each with its symbol", () => {
    expect([...symbolsByName(table, false)()]).toEqual([
      ["thou", "Mil"],
      ["mils", "Mil"],
      ["millimetre", "mm"],
      ["micron", "um"],
    ]);
  });

  it("and the symbols themselves in small letters where they are asked for", () => {
    expect([...symbolsByName(table, true)().keys()]).toEqual([
      "mil",
      "thou",
      "mils",
      "mm",
      "millimetre",
      "um",
      "micron",
      "ft",
    ]);
  });

  it("are gathered once", () => {
    const names = symbolsByName(table, true);
    expect(names()).toBe(names());
  });
});

describe("nearest", () => {
  it("looks at words of up to 32 letters", () => {
    const longest = "x".repeat(32);
    expect(nearest(longest, [longest])).toEqual([longest]);
    expect(nearest(`${longest}x`, [longest, `${longest}x`])).toEqual([]);
  });
});

describe("cached", () => {
  it("gives the same answer object for a text, also when others came between", () => {
    const read = cached((written) => ({ written }));
    const first = read("a");
    expect(read("a")).toBe(first);
    read("b");
    expect(read("a")).toBe(first);
    expect(read("b").written).toBe("b");
  });
});
