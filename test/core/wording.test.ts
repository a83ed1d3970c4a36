import { describe, expect, it } from "vitest";
import {
  attempt,
  dataText,
  finiteResult,
  finiteSamples,
  lengthOf,
  nearest,
  numbersOf,
  numeralAndUnit,
  orNothing,
  orNull,
  parseNumeral,
  plainNumerals,
  pointedWords,
  provenanceShape,
  requireBoolean,
  requireChoice,
  requireFinite,
  requireGiven,
  requireKnownKeys,
  requireKnownOptions,
  requireList,
  requireNonNegative,
  requirePositive,
  requireShape,
  requireText,
  shown,
  unknownName,
} from "../../src/core/index";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: guards are handed what no type allows
const any = (value: unknown): any => value;
const symbols = new Map([
  ["millimetre", "mm"],
  ["mm", "mm"],
  ["micrometre", "um"],
]);

const cases: Cases = {
  "words, thousands or decimals": () => pointedWords("motor 1,480 r/min", true),
  "words, a number of two commas": () => pointedWords("motor 1,4,5 r/min", true),
  "a truth value, none": () => requireBoolean(undefined, "whether it latches"),
  "a truth value, a text": () => requireBoolean("yes", "whether it latches"),
  "an attempt of what is no function": () => attempt(5 as never),
  "an attempt of what answers later": () => attempt(() => Promise.reject(new Error("later"))),
  "options that are none": () =>
    requireKnownOptions(any(5), { digits: 1 }, { what: "an option", form: "options such as { digits: 4 }" }),
  "numbers of another kind": () => plainNumerals("1,5", any({ decimals: "," })),
  "numbers with a mark that is none": () => plainNumerals("1,5", any({ decimal: "'" })),
  "a decimal comma that was not told": () => plainNumerals("1,500 r/min"),
  "a point where a comma was told": () => plainNumerals("1.5 Hz", { decimal: "," }),
  "junk with a comma": () => plainNumerals(`1,${"5".repeat(300)}`),
  "options of null": () =>
    requireKnownOptions(any(null), { digits: 1 }, { what: "an option", form: "options such as { digits: 4 }" }),
  "a key that no settings have": () =>
    requireKnownKeys(any({ hysterisis: "8 %" }), { threshold: 1, hysteresis: 1 }, "a setting"),
  "a result that no double holds": () => finiteResult(1e308 * 10),
  "a part of a result that is missing": () => requireShape({}, { title: "text" }, "sheet"),
  "a number for a text of a result": () => requireShape({ title: 7 }, { title: "text" }, "sheet"),
  "a text for a truth of a result": () => requireShape({ verified: "yes" }, { verified: "truth" }, "proposal"),
  "no number in a result": () => requireShape({ mean: undefined }, { mean: "number" }, "baseline"),
  "a text for a number of a result": () => requireShape({ mean: "2" }, { mean: "number" }, "baseline"),
  "a text for a list of a result": () => requireShape({ rows: "2" }, { rows: ["number"] }, "table"),
  "a text for an object of a result": () => requireShape({ worst: "2" }, { worst: { error: "number" } }, "linearity"),
  "NaN in a list of a result": () => requireShape([1, Number.NaN], ["number"], "measured"),
  "null where a part may only be left out": () => requireShape({ text: null }, { text: orNothing("text") }, "section"),
  "nothing where a part may only be null": () => requireShape({}, { alarm: orNull({ k: "number" }) }, "proposal"),
  "a text for a number": () => requireFinite(any("1"), "a level in dB"),
  "a number that is none": () => requireFinite(Number.NaN, "a level in dB"),
  "a number beyond all others": () => requireFinite(Number.POSITIVE_INFINITY, "a level in dB"),
  "a number far below all others": () => requireFinite(Number.NEGATIVE_INFINITY, "a level in dB"),
  "a number below zero": () => requireNonNegative(-0.5, "an amplitude of zero or more"),
  "a text for a number of zero or more": () => requireNonNegative(any("1"), "an amplitude of zero or more"),
  "zero where it has no meaning": () => requirePositive(0, "a mass above zero, in kg"),
  "a number below zero where it must be above": () => requirePositive(-3, "a mass above zero, in kg"),
  "no number at all": () => requirePositive(any(undefined), "a mass above zero, in kg"),
  "an empty text": () => requireText("  ", "a unit of vibration"),
  "a number for a text": () => requireText(any(7), "a unit of vibration"),
  "a grade of provenance that is none": () => provenanceShape("hearsay", "proposal"),
  "nothing given": () => requireGiven(undefined, "a rotor with mass and speed"),
  "null given": () => requireGiven(null, "a rotor with mass and speed"),
  "a text in a list of numbers": () => numbersOf(any([1, "2"]), "a list of numbers", "source"),
  "no list": () => requireList(any("1, 2"), "steps with level and output"),
  "an object for a list": () => requireList(any({ length: 2 }), "steps with level and output"),
  "a list with a hole": () => requireList([1, undefined], "steps with level and output"),
  "a decimal comma": () => parseNumeral("1,5"),
  "a decimal comma in a crest factor": () => parseNumeral("1,5", "a crest factor"),
  "a word for a number": () => parseNumeral("many"),
  "a number that no double holds": () => parseNumeral("1e999", "a crest factor"),
  "a name near one that is known": () => {
    throw unknownName("unknown-unit", "a unit of length", "milimetre", [symbols, { mm: 1, um: 2 }]);
  },
  "a name near none": () => {
    throw unknownName("unknown-unit", "a unit of length", "furlong", [symbols, { mm: 1, um: 2 }]);
  },
  "a name near one by two spellings": () => {
    throw unknownName("unknown-unit", "a unit of length", "m m", [symbols, { mm: 1, um: 2 }]);
  },
  "a word near one of a list": () => requireChoice("neares", ["down", "nearest", "up"], "what the device does"),
  "a word near none of a list": () => requireChoice("sideways", ["down", "nearest", "up"], "what the device does"),
  "no word of a list": () => requireChoice(undefined, ["down", "nearest", "up"], "what the device does"),
  "a number for a word of a list": () => requireChoice(1, ["down", "nearest", "up"], "what the device does"),
  "a list for a text": () => requireText(any(["list"]), "a text"),
  "no number before the unit": () => numeralAndUnit("kg", 'a mass such as "120 kg"'),
  "no unit after the number": () => numeralAndUnit("120", 'a mass such as "120 kg"'),
  "a number for a text with its unit": () => numeralAndUnit(any(120), 'a mass such as "120 kg"'),
  "an object for a text with its unit": () => numeralAndUnit(any({}), 'a mass such as "120 kg"'),
  "nothing for a text with its unit": () => numeralAndUnit(any(undefined), 'a mass such as "120 kg"'),
  "junk of any length": () => parseNumeral("x".repeat(1e5)),
  "a list for a number": () => requireFinite(any([1]), "a number"),
  "an object for a number": () => requireFinite(any({}), "a number"),
  "a number for a list of levels": () => lengthOf(any(5), "a list of levels"),
  "a number for samples": () => finiteSamples(any(5)),
  "a sample not a number": () => finiteSamples([1, Number.NaN]),
};

holdWording("core", cases);

describe("a value in a message", () => {
  it.each([
    ["a text", "mm/s", '"mm/s"'],
    ["a text with quotes", 'a "b"', '"a \\"b\\""'],
    ["a text of 60 characters", "x".repeat(60), `"${"x".repeat(60)}"`],
    ["a longer text, cut at 60", "x".repeat(61), `"${"x".repeat(60)}…"`],
    ["a number", -0.5, "-0.5"],
    ["true", true, "true"],
    ["a list", [1, 2], "a list"],
    ["an object", { length: 2 }, "an object"],
    ["nothing", undefined, "nothing"],
    ["null", null, "nothing"],
  ])("%s", (_, value, words) => {
    expect(shown(value)).toBe(words);
  });
});

describe("plain data in a message", () => {
  it.each([
    ["an object", { above: 15 }, '{"above":15}'],
    ["60 characters", "x".repeat(58), `"${"x".repeat(58)}"`],
    ["more, cut at 60", "x".repeat(59), `"${"x".repeat(59)}…`],
    ["nothing", undefined, "undefined"],
  ])("%s", (_, value, words) => {
    expect(dataText(value)).toBe(words);
  });
});

describe("names near a word", () => {
  it("are at most three, best first", () => {
    expect(nearest("abc", ["abx", "abc", "xbc", "axc", "xyz"])).toEqual(["abc", "abx", "axc"]);
  });
});
