import type {
  ArrayNode,
  ConstantNode,
  FunctionNode,
  MathNode,
  OperatorNode,
  ParenthesisNode,
  RelationalNode,
  SymbolNode,
} from "mathjs";
import { counted, shown, unknownName, VeladisError } from "../core/index";
import { type Amplitude, type Assumption, union } from "../reading/index";
import type { Scheme } from "../severity/index";
import { type RatioOf, ratioOf } from "../uncertainty/index";
import { amplitudeOperation, isVibration } from "./arithmetic";
import { bounds } from "./bounds";
import { scaledReading } from "./combined";
import type { Engine } from "./engine";
import { type CalculatorFunction, functions, numberFunctions } from "./functions";
import { isAmplitude, isList, isReport, kindText, opened, type Value } from "./value";
import { checked, isNamed, isWide, numbersOf, percentageBeside } from "./walk-checks";

/** Operators an expression may use, by the name mathjs gives them. */
const operators = new Set([
  ...["add", "subtract", "multiply", "divide", "pow", "unaryMinus", "unaryPlus"],
  ...["larger", "largerEq", "smaller", "smallerEq", "equal", "unequal"],
]);

const constants: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([
  ["pi", Math.PI],
  ["tau", 6.283185307179586],
  ["e", Math.E],
]);

/** What the nodes that are refused are, in words. */
const refusedNodes: Readonly<Record<string, string>> = {
  AccessorNode: "access to a part of a value",
  AssignmentNode: "an assignment within an expression",
  BlockNode: "several statements in a line",
  ConditionalNode: "a choice by ? and :",
  FunctionAssignmentNode: "the definition of a function",
  IndexNode: "an index",
  ObjectNode: "an object",
  RangeNode: "a range",
};

const ofNumbers: ReadonlySet<string> = /* @__PURE__ */ new Set(numberFunctions);

/** All names an expression may use besides its variables, for suggestions and completion. */
export const knownNames: readonly string[] = /* @__PURE__ */ (() => [
  ...Object.keys(functions),
  ...numberFunctions,
  ...constants.keys(),
])();

/** The error for a function that is named without a call. */
function uncalled(name: string): VeladisError {
  const usage = ofNumbers.has(name) ? `${name}(2)` : functions[name as keyof typeof functions].usage;
  return new VeladisError("unknown-option", { expected: `a call such as ${usage}`, received: `${shown(name)} alone` });
}

/** Evaluates allow-listed nodes over the variables; everything else is refused by its kind. */
export class Walker {
  readonly #engine: Engine;
  readonly #variables: ReadonlyMap<string, Value>;
  readonly #schemes: readonly Scheme[] | undefined;
  #nodes = 0;
  #compared: readonly Assumption[] = [];
  readonly #bare: ReadonlySet<string> | undefined;
  #isBare = false;
  #ratio: RatioOf | undefined;

  constructor(
    engine: Engine,
    variables: ReadonlyMap<string, Value>,
    schemes?: readonly Scheme[],
    bare?: ReadonlySet<string>,
  ) {
    this.#bare = bare;
    this.#schemes = schemes;
    this.#engine = engine;
    this.#variables = variables;
  }

  /** What the amplitudes had assumed that were compared: a truth cannot carry it. */
  get compared(): readonly Assumption[] {
    return this.#compared;
  }

  /** True where a number or a truth was taken from the best values of readings with ±. */
  get isBare(): boolean {
    return this.#isBare;
  }

  /** The ratio of two readings with ± that an expression is, as an answer with its history; none where it is more than that. */
  ratioOf(node: MathNode): RatioOf | undefined {
    if (node.type === "ParenthesisNode") return this.ratioOf((node as ParenthesisNode).content);
    const { fn, args } = node as OperatorNode;
    return node.type === "OperatorNode" && (fn as string) === "divide" && args.every(isNamed) ? this.#ratio : undefined;
  }

  valueOf(node: MathNode): Value {
    if (++this.#nodes > bounds.nodes) {
      throw new VeladisError("out-of-range", {
        expected: `an expression of at most ${bounds.nodes} parts`,
        received: "a longer one",
      });
    }
    switch (node.type) {
      case "ConstantNode":
        return this.#constant(node as ConstantNode);
      case "SymbolNode":
        return this.#named((node as SymbolNode).name);
      case "ParenthesisNode":
        return this.valueOf((node as ParenthesisNode).content);
      case "ArrayNode":
        return (node as ArrayNode).items.map((item) => this.valueOf(item));
      case "OperatorNode":
        return this.#operation(node as OperatorNode);
      case "RelationalNode":
        return this.#relation(node as RelationalNode);
      case "FunctionNode":
        return this.#call(node as FunctionNode);
      default:
        throw new VeladisError("syntax", {
          expected: "arithmetic, comparisons, lists and calls of known functions",
          received: refusedNodes[node.type] ?? "something else",
        });
    }
  }

  #constant({ value }: ConstantNode): Value {
    if (typeof value === "string" || typeof value === "boolean") return value;
    return checked(value, "a number below 1.8e308");
  }

  #named(name: string): Value {
    const value = this.#variables.get(name) ?? constants.get(name);
    if (value !== undefined) {
      if (this.#bare?.has(name)) this.#isBare = true;
      return value;
    }
    if (ofNumbers.has(name) || Object.hasOwn(functions, name)) throw uncalled(name);
    const known = new Map([...this.#variables.keys(), ...knownNames].map((one) => [one, one]));
    throw unknownName("unknown-option", "a variable, a constant or a reading with unit and detector", name, [
      known,
      {},
    ]);
  }

  #operation(node: OperatorNode): Value {
    const operator = node.fn as string;
    if (operator === "mod") {
      throw new VeladisError("syntax", {
        expected: "a percentage in brackets before more arithmetic, as in (10 %) + (5 %); remainders are not reckoned",
        received: shown(node.op),
      });
    }
    if (!operators.has(operator)) {
      throw new VeladisError("syntax", {
        expected: "an operator of arithmetic or comparison",
        received: shown(node.op),
        allowed: ["+", "-", "*", "/", "^", "%", "<", "<=", ">", ">=", "==", "!="],
      });
    }
    const percent = percentageBeside(node);
    if (percent !== undefined) return this.#percentage(operator, node, percent);
    const args = node.args.map((arg) => this.valueOf(arg));
    return this.#applied(operator, node.op, args);
  }

  /** `a + 10 %`: a scale of what stands before it, not a second vibration. */
  #percentage(operator: string, { op, args: [before] }: OperatorNode, percent: MathNode): Value {
    const whole = this.valueOf(before as MathNode);
    const share = this.valueOf(percent);
    if (typeof whole === "object" && isAmplitude(whole) && typeof share === "number") {
      const by = operator === "add" ? 1 + share : 1 - share;
      return scaledReading(whole, { by, note: `${op} ${Number((100 * share).toPrecision(6))} %` });
    }
    return this.#applied(operator, op, [whole, this.#applied("multiply", "*", [whole, share])]);
  }

  #applied(operator: string, symbol: string, args: readonly Value[]): Value {
    if (args.some(isVibration)) {
      const outcome = amplitudeOperation(operator, symbol, args, this.#engine.call);
      this.#takeBest(args, outcome);
      if (operator === "divide" && typeof outcome === "number" && args.some(isWide)) {
        const [a, b] = args as [Amplitude, Amplitude];
        // at two frequencies their values are divided, and no vibration by another
        this.#ratio = a.hertz !== undefined && b.hertz !== undefined && a.hertz !== b.hertz ? undefined : ratioOf(a, b);
      }
      if (typeof outcome === "boolean") {
        for (const { assumed } of args.filter(isVibration)) this.#compared = union(this.#compared, assumed);
      }
      return outcome;
    }
    const wrong = args.find((value) => isList(value) || isReport(value) || typeof value === "string");
    if (wrong !== undefined) {
      throw new VeladisError("wrong-type", {
        expected: `numbers or amplitudes on both sides of ${symbol}`,
        received: kindText(wrong),
      });
    }
    return checked(this.#engine.call(operator, args as number[]), `a finite number from ${symbol}`);
  }

  /** Remembers where readings with ± led to what cannot carry it. */
  #takeBest(args: readonly Value[], outcome: Value): void {
    if (typeof outcome !== "object" && opened(args).some(isWide)) this.#isBare = true;
  }

  #relation(node: RelationalNode): Value {
    const { conditionals, params } = node as unknown as { conditionals: string[]; params: MathNode[] };
    const values = params.map((param) => this.valueOf(param));
    return conditionals.every((name, i) => this.#applied(name, name, values.slice(i, i + 2)) === true);
  }

  #call(node: FunctionNode): Value {
    const { name } = node.fn as unknown as { name?: unknown };
    const known = typeof name === "string" && (Object.hasOwn(functions, name) || ofNumbers.has(name));
    if (!known || (node.fn as unknown as MathNode).type !== "SymbolNode") {
      const all = new Map([...Object.keys(functions), ...numberFunctions].map((one) => [one, one]));
      throw unknownName("unknown-option", "a function of the calculator", String(name ?? "a call of something else"), [
        all,
        {},
      ]);
    }
    const args = node.args.map((arg) => this.valueOf(arg));
    if (ofNumbers.has(name as string)) {
      const result = this.#engine.call(name as string, numbersOf(args, name as string));
      return checked(result, `a finite number from ${name}`);
    }
    const { arity, run, usage }: CalculatorFunction = functions[name as keyof typeof functions];
    if (args.length < arity[0] || args.length > arity[1]) {
      throw new VeladisError("missing-option", {
        expected: `a call such as ${usage}`,
        received: counted(args.length, "value"),
      });
    }
    const outcome = run(args, this.#schemes);
    this.#takeBest(args, outcome);
    // of a change too the best values alone are told
    if (name === "change" && args.some(isWide)) this.#isBare = true;
    return outcome;
  }
}
