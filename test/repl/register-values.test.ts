/** Amplitudes as values of mathjs: they print, compare, sort, scale in lists, and take its other numbers. */
import { all, create } from "mathjs";
import { describe, expect, it } from "vitest";
import { type Amplitude, format, VeladisError } from "../../src/index";
import { type AmplitudeMath, registerAmplitudes } from "../../src/repl/index";
import { refusalOf } from "../refusals/refusal-of";

// biome-ignore lint/suspicious/noExplicitAny: all of an instance is used
type Whole = any;
const newMath = (config?: object): Whole => create(all as never, config as never);
const registered = (math: Whole): Whole => registerAmplitudes(math as AmplitudeMath);

/** An instance that was used before it was given amplitudes, since mathjs makes its functions when they are first used. */
function usedBefore(config?: object): Whole {
  const math = newMath(config);
  for (const one of ["[1, 2] * 2", "max([1, 2])", "sort([2, 1])", "sum(1, 2)", "mean([1, 2])", "1 < 2"])
    math.evaluate(one);
  return registered(math);
}

const scope = (math: Whole): object => ({
  x: math.evaluate('amplitude("4.49 mm/s rms")'),
  y: math.evaluate('amplitude("0.1 in/s rms")'),
  z: math.evaluate('amplitude("1 mm/s rms")'),
});

describe.each([
  ["a new instance", registered(newMath())],
  ["an instance that was used before", usedBefore()],
  ["one that was registered twice", registered(usedBefore())],
  ["one of big numbers", usedBefore({ number: "BigNumber" })],
  ["one of fractions", usedBefore({ number: "Fraction" })],
])("%s", (_, math) => {
  it.each([
    ["x", "4.49 mm/s rms"],
    ["2 x", "8.98 mm/s rms"],
    ["x / 2", "2.25 mm/s rms"],
    ["x * 1/4", "1.12 mm/s rms"],
    ["[x, y] * 2", "[8.98 mm/s rms, 0.200 in/s rms]"],
    ["2 * [x, y]", "[8.98 mm/s rms, 0.200 in/s rms]"],
    ["[1, 2] * x", "[4.49 mm/s rms, 8.98 mm/s rms]"],
    ["x * [[1], [2]]", "[[4.49 mm/s rms], [8.98 mm/s rms]]"],
    ["[x, y] / 2", "[2.25 mm/s rms, 0.0500 in/s rms]"],
    ["[x, y] + z", "[5.49 mm/s rms, 0.139 in/s rms]"],
    ["[x, y] .* [1, 2]", "[4.49 mm/s rms, 0.200 in/s rms]"],
    ["[x, y] ./ [1, 2]", "[4.49 mm/s rms, 0.0500 in/s rms]"],
    ["[x, y] > z", "[true, true]"],
    ["[x, y] == [x, z]", "[true, false]"],
    ["sort([x, y, z])", "[1.00 mm/s rms, 0.100 in/s rms, 4.49 mm/s rms]"],
    ['sort([z, x, y], "desc")', "[4.49 mm/s rms, 0.100 in/s rms, 1.00 mm/s rms]"],
    ["max(x, y, z)", "4.49 mm/s rms"],
    ["min([x, y, z])", "1.00 mm/s rms"],
    ["sum([x, z])", "5.49 mm/s rms"],
    ["mean([x, z])", "2.75 mm/s rms"],
    ["max(x)", "4.49 mm/s rms"],
    ['[x, z] to "um/s rms"', "[4490 um/s rms, 1000 um/s rms]"],
    ["x + decibels(6)", "8.96 mm/s rms"],
    ["decibels(6) - decibels(3)", "3.0 dB"],
    ["compare(x, y)", "1"],
    ["compare(z, y)", "-1"],
    ['compare(z, amplitude("1000 um/s rms"))', "0"],
  ])("%s", (expression, expected) => {
    expect(String(math.evaluate(expression, scope(math)))).toBe(expected);
  });

  it.each([
    ["x * y", "wrong-type"],
    ["-x", "wrong-type"],
    ["x * (1 + 2i)", "wrong-type"],
    ["x * (5 cm)", "wrong-type"],
    ["x + 1", "wrong-type"],
    ["1 < x", "wrong-type"],
    ["x * (-1)", "negative"],
    ["[x, y] * [x, y]", "wrong-type"],
    ["[x, y] * [1, 2]", "wrong-type"],
    ["[x, y] / [1, 2]", "wrong-type"],
    ["1 / [x, y]", "wrong-type"],
    ["[x, y] + [x, y, z]", "length-mismatch"],
    ['max(x, amplitude("1 mm/s pk"))', "wrong-detector"],
    ['sort([x, amplitude("1 g rms")])', "wrong-quantity"],
    ['sort([x, y], "up")', "unknown-option"],
    ['x * bignumber("1e400")', "not-finite"],
    ['x * bignumber("1e-400")', "out-of-range"],
  ])("%s is refused in words", (expression, code) => {
    expect(refusalOf(() => math.evaluate(expression, scope(math))).code).toBe(code);
  });
});

describe.each([
  ["numbers", {}],
  ["big numbers", { number: "BigNumber" }],
])("an instance of %s", (_, config) => {
  const math = usedBefore(config);

  it.each([
    ["format(x, 5)", "4.4900 mm/s rms"],
    ['format(x, {notation: "fixed", precision: 1})', "4.5 mm/s rms"],
    ["format([x, z], 2)", "[4.5 mm/s rms, 1.0 mm/s rms]"],
    ["format(decibels(6.02), 3)", "6.0 dB"],
  ])("%s", (expression, expected) => {
    expect(String(math.evaluate(expression, scope(math)))).toBe(expected);
  });

  it.each([
    "max([[1, 3], [2, 4]], 1)",
    "max([[1, 3], [2, 4]], 2)",
    "min([[1, 3], [2, 4]], 1)",
    "sum([[1, 3], [2, 4]], 2)",
    "mean([[1, 3], [2, 4]], 2)",
    "max(3, 1, 2)",
    "sort([3, 1, 2])",
    "[1, 2] * [[1], [2]]",
    "compare(5 cm, 3 cm)",
    "(5 cm) * [1, 2]",
  ])("reckons %s as before", (expression) => {
    expect(String(math.evaluate(expression))).toBe(String(newMath(config).evaluate(expression)));
  });
});

describe("amplitudes registered", () => {
  it("more than once, into more than one instance, each time in its own", () => {
    const [one, other] = [newMath(), newMath()];
    for (const math of [one, other, one, other]) expect(registerAmplitudes(math)).toBe(math);
    expect(String(one.evaluate('2 * amplitude("1 g pk")'))).toBe("2.00 g pk");
    expect(String(other.evaluate('2 * amplitude("1 g pk")'))).toBe("2.00 g pk");
    expect(() => newMath().evaluate('amplitude("1 g pk")')).toThrow();
  });

  it.each([undefined, null, {}, "math"])("into %j is refused", (math) => {
    expect(() => registerAmplitudes(math as never)).toThrow(VeladisError);
  });

  it("carry nothing more in their data than before", () => {
    const math = registered(newMath());
    const answer = math.evaluate('amplitude("4.5 mm/s rms")') as Amplitude;
    expect(JSON.parse(JSON.stringify(answer))).toEqual({
      value: 4.5,
      unit: "mm/s",
      detector: "rms",
      quantity: "velocity",
    });
    expect(format(structuredClone(answer))).toBe("4.50 mm/s rms");
    expect(math.evaluate("a.value", { a: answer })).toBe(4.5);
  });

  it("compare with the tolerance of the instance", () => {
    const near = 'amplitude("1 mm/s rms") == amplitude("1.001 mm/s rms")';
    expect(registered(newMath()).evaluate(near)).toBe(false);
    expect(registered(newMath({ relTol: 1e-2, absTol: 1e-3 })).evaluate(near)).toBe(true);
  });
});
