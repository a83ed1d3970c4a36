import type { MathNode } from "mathjs";

/** A function of mathjs by name, called with numbers only. */
export type Call = (name: string, args: readonly number[]) => unknown;

/** What the calculator needs of mathjs: its parser and its functions of numbers. */
export interface Engine {
  parse(expression: string): MathNode;
  readonly call: Call;
}

/**
 * The parser and the arithmetic of mathjs, in an instance of their own.
 *
 * Loaded when the first expression needs it: mathjs takes longer to load than everything else together. The part of
 * it that knows numbers only has no matrices, units or strings that an expression could reach.
 */
export async function loadEngine(): Promise<Engine> {
  const { create, all } = await import("mathjs/number");
  const math = create(all as never, { number: "number" }) as unknown as Record<string, (...args: unknown[]) => unknown>;
  const { parse } = math as unknown as { parse: (expression: string) => MathNode };
  return { parse, call: (name, args) => (math[name] as (...values: unknown[]) => unknown)(...args) };
}
