import { amplitudeOperation } from "./arithmetic";
import type { Call } from "./engine";
import {
  listAsGiven,
  listFunctions,
  type OfTwo,
  onElements,
  readingsIn,
  refuseMatrixProduct,
  sortedReadings,
} from "./math-lists";
import { elementsOf, mathOperand } from "./math-operands";
import { each, type Own, type Signatures, type Typed } from "./math-typed";
import { readableAnswer } from "./readable";
import type { Value } from "./value";

const VIBRATIONS = ["Amplitude", "Decibels"];

/** The pairs with an amplitude or a number of decibels among them; what they do not come to is refused in words. */
const pairs = (): readonly string[] =>
  VIBRATIONS.flatMap((one) => [`${one}, any`, `any, ${one}`, ...VIBRATIONS.map((other) => `${one}, ${other}`)]);

/** The pairs with a list of those among them, or with one of those beside a list. */
const listPairs = (): readonly string[] => [
  "Amplitudes, Amplitudes",
  "Amplitudes, any",
  "any, Amplitudes",
  ...["Array", "Matrix", ...VIBRATIONS].flatMap((one) => [`Amplitudes, ${one}`, `${one}, Amplitudes`]),
  ...VIBRATIONS.flatMap((one) => ["Array", "Matrix"].flatMap((list) => [`${one}, ${list}`, `${list}, ${one}`])),
];

const operators: Readonly<Record<string, string>> = {
  add: "+",
  subtract: "-",
  multiply: "*",
  divide: "/",
  unaryPlus: "+",
  unaryMinus: "-",
  larger: ">",
  largerEq: ">=",
  smaller: "<",
  smallerEq: "<=",
  equal: "==",
  unequal: "!=",
  dotMultiply: ".*",
  dotDivide: "./",
};

/** Those that are another by name, element by element. */
const elementwise: Readonly<Record<string, string>> = { dotMultiply: "multiply", dotDivide: "divide" };

/** The operators, and the functions of lists, that mathjs has for numbers, for typed functions of the instance. */
export function typedOperators(own: Own, typed: Typed): Record<string, unknown> {
  // the instance's own functions compare, with its own tolerance
  const call: Call = (name, args) => own[name]?.(...args);
  const applied = (name: string, ...args: unknown[]): unknown =>
    readableAnswer(
      amplitudeOperation(elementwise[name] ?? name, operators[name] as string, args.map(mathOperand), call),
    );
  const asGiven = (given: readonly unknown[], result: unknown): unknown => listAsGiven(own, given, result);
  const onLists =
    (name: string) =>
    (a: unknown, b: unknown): unknown => {
      const isProduct = name === "multiply" ? elementsOf(a) !== undefined : name === "divide";
      if (isProduct && elementsOf(b) !== undefined) refuseMatrixProduct(operators[name] as string);
      return asGiven(
        [a, b],
        onElements((x, y) => applied(name, x, y), a, b),
      );
    };
  const compare: OfTwo = (a, b) => (applied("equal", a, b) ? 0 : applied("larger", a, b) ? 1 : -1);
  const made = Object.keys(operators).map((name) => {
    const run = (...args: unknown[]): unknown => applied(name, ...args);
    const unary = name.startsWith("unary");
    return [
      name,
      typed(name, unary ? each(VIBRATIONS, run) : { ...each(pairs(), run), ...each(listPairs(), onLists(name)) }),
    ];
  });
  const ofLists = Object.entries(
    listFunctions(
      (a, b) => applied("add", a, b),
      (a, b) => applied("divide", a, b),
    ),
  ).map(([name, of]) => {
    const run = (...args: unknown[]): unknown => readableAnswer(of(readingsIn(args)) as Value);
    return [name, typed(name, { Amplitudes: run, "...Amplitude": (args: unknown[]) => run(...args) } as Signatures)];
  });
  const sort = (list: unknown, order: unknown = "asc"): unknown =>
    asGiven([list], sortedReadings(readingsIn([list]), order, compare).map(readableAnswer));
  return {
    ...Object.fromEntries([...made, ...ofLists]),
    compare: typed("compare", {
      ...each(pairs(), compare),
      ...each(listPairs(), (a, b) => asGiven([a, b], onElements(compare, a, b))),
    }),
    sort: typed("sort", each(["Amplitudes", "Amplitudes, string", "Amplitudes, function"], sort)),
  };
}
