import { isVibrationList, isVibrationObject } from "./math-operands";

/** What an instance has behind its functions for expressions, where dimensions count from 1. */
interface Expressions {
  readonly transform: Record<string, unknown>;
  readonly mathWithTransform: Record<string, unknown>;
}

type Function = (...args: unknown[]) => unknown;

/**
 * Remembers how functions of an instance count dimensions in an expression, which an import forgets; what it gives puts that
 * back for all but amplitudes.
 */
export function dimensionsOf(math: object): () => void {
  const { expression } = math as { expression?: Expressions };
  const before = ["max", "min", "sum", "mean"].map((name) => [name, expression?.mathWithTransform[name]] as const);
  return () => {
    for (const [name, counted] of before) {
      if (expression === undefined || typeof counted !== "function") continue;
      const ours = (math as Record<string, Function>)[name] as Function;
      const isOurs = (value: unknown): boolean => isVibrationObject(value) || isVibrationList(value);
      const whole: Function = (...args) => (args.some(isOurs) ? ours : (counted as Function))(...args);
      expression.transform[name] = whole;
      expression.mathWithTransform[name] = whole;
    }
  };
}
