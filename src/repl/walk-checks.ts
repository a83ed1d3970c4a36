import type { MathNode, OperatorNode, ParenthesisNode } from "mathjs";
import { shown, VeladisError, type VeladisErrorCode } from "../core/index";
import { isUncertain } from "../reading/index";
import { isVibration } from "./arithmetic";
import { kindText, opened, type Value } from "./value";

/** A number or a truth as mathjs gave it, or a refusal: never an infinity, NaN or anything else. */
export function checked(result: unknown, what: string): number | boolean {
  if (typeof result === "boolean" || (typeof result === "number" && Number.isFinite(result))) return result;
  throw new VeladisError(codeOf(result), {
    expected: what,
    received: typeof result === "number" ? String(result) : shown(result),
  });
}

function codeOf(result: unknown): VeladisErrorCode {
  if (typeof result !== "number") return "wrong-type";
  return Number.isNaN(result) ? "not-a-number" : "not-finite";
}

/** Numbers and lists of them, one after another. */
export function numbersOf(args: readonly Value[], what: string): number[] {
  return opened(args).map((value) => {
    if (typeof value === "number") return value;
    throw new VeladisError("wrong-type", { expected: `numbers for ${what}`, received: kindText(value) });
  });
}

/** The percentage that stands behind a plus or a minus: mathjs writes `a + 10 %` as `a + a * (10 %)`, with one node twice. */
export function percentageBeside({ fn, args: [before, product] }: OperatorNode): MathNode | undefined {
  if ((fn as string) !== "add" && (fn as string) !== "subtract") return undefined;
  const { type, args = [] } = (product ?? {}) as Partial<OperatorNode>;
  return type === "OperatorNode" && args.length === 2 && args[0] === before ? args[1] : undefined;
}

/** True for what carries an uncertainty. */
export function isWide(value: Value): boolean {
  return isVibration(value) && isUncertain(value.history ?? []);
}

/** A name or a reading alone, also in brackets. */
export function isNamed(node: MathNode): boolean {
  return node.type === "SymbolNode" || (node.type === "ParenthesisNode" && isNamed((node as ParenthesisNode).content));
}
