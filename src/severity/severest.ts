import type { Fact } from "./facts";
import type { Fit, MissingFact } from "./fit";
import { conditionText } from "./machine-class";
import type { Condition, LimitValue, MachineClass, Scheme } from "./scheme";

/** The first limits of a class as numbers; undefined where they hang on a speed. */
function numbersOf({ criteria }: MachineClass): { as: string; values: number[] } | undefined {
  const [first] = criteria;
  const values = Object.values(first?.limits ?? {}) as LimitValue[];
  if (first === undefined || values.some((value) => typeof value === "object" && value !== null)) return undefined;
  return { as: first.as, values: values.filter((value) => typeof value === "number") };
}

function lower(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && (a[at] as number) < (b[at] ?? Number.POSITIVE_INFINITY);
}

/**
 * Of the classes that nothing speaks against, the one with the lowest limits; undefined where that would be no
 * sensible guess: facts the scheme always asks for, limits in different quantities, limits that hang on the speed.
 */
export function severestOf(scheme: Scheme, { open, missing }: Fit): MachineClass | undefined {
  if (missing.some(({ fact }) => scheme.ask?.includes(fact))) return undefined;
  const [first, ...others] = open;
  if (first === undefined) return undefined;
  let best = first;
  let least = numbersOf(first);
  for (const one of others) {
    const numbers = numbersOf(one);
    if (least === undefined || numbers?.as !== least.as) return undefined;
    if (!lower(numbers.values, least.values)) continue;
    best = one;
    least = numbers;
  }
  return least === undefined ? undefined : best;
}

/** What was assumed of facts not given, in words. */
export function assumptionsFor({ named, by, when }: MachineClass, missing: readonly MissingFact[]): string[] {
  const all: Condition = { ...named, ...by, ...when };
  const asked = missing.map(({ fact }) => fact).filter((fact: Fact) => all[fact] !== undefined);
  return asked.map(
    (fact) => `${conditionText({ [fact]: all[fact] } as Condition)}: not given, and taken for its lower limits`,
  );
}
