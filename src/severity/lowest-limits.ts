import type { Fact } from "./facts";
import { conditionText } from "./machine-class";
import type { MachineMatch, MissingFact } from "./match-machine";
import type { Condition, LimitValue, MachineClass, Scheme } from "./scheme";

/** The limits of a class by what they are written in and their names; undefined where any hangs on a speed. */
function numbersOf({ criteria }: MachineClass): Map<string, number> | undefined {
  const numbers = new Map<string, number>();
  for (const { as, limits } of criteria) {
    for (const [name, value] of Object.entries(limits) as [string, LimitValue][]) {
      if (value === null) continue;
      if (typeof value === "object") return undefined;
      numbers.set(`${as} ${name}`, value);
    }
  }
  return numbers;
}

/** True when no limit of one is above its like of the other, and both have the same limits. */
function isBelow(one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>): boolean {
  return one.size === other.size && [...one].every(([name, value]) => value <= (other.get(name) as number));
}

/**
 * Of the classes that nothing speaks against, the one whose limits are the lowest throughout; undefined where there is
 * none, where limits hang on a speed, and for facts that the scheme always asks for.
 */
export function lowestLimits(scheme: Scheme, { open, missing }: MachineMatch): MachineClass | undefined {
  if (missing.some(({ fact }) => scheme.ask?.includes(fact))) return undefined;
  const all = open.map(numbersOf);
  return open.find((_, i) =>
    all.every((other) => other !== undefined && all[i] !== undefined && isBelow(all[i], other)),
  );
}

/** What was assumed of facts not given, in words. */
export function lowestLimitsAssumed({ named, by, when }: MachineClass, missing: readonly MissingFact[]): string[] {
  const all: Condition = { ...named, ...by, ...when };
  const asked = missing.map(({ fact }) => fact).filter((fact: Fact) => all[fact] !== undefined);
  return asked.map(
    (fact) => `${conditionText({ [fact]: all[fact] } as Condition)}: not given, and taken for its lower limits`,
  );
}
