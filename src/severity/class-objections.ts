import { raised } from "../core/index";
import type { Fact } from "./facts";
import type { Interval } from "./interval";
import type { FactValue, KnownFacts } from "./machine";
import { type MachineType, machineTypes } from "./machine-types";
import type { Condition, MachineClass } from "./scheme";
import { factsOf, type Verdict, verdict } from "./verdict";

/** Whether a machine has a shaft height that counts: an electrical one, and one of which nothing but a height is known. */
function isElectrical({ type, shaftHeight }: KnownFacts): boolean {
  return type === undefined ? shaftHeight !== undefined : machineTypes[type as MachineType].electrical;
}

/** True where a power, or every power that is possible, is above all that an interval admits. */
function isAbove({ to, below }: Interval, power: FactValue): boolean {
  const least = typeof power === "number" ? power : (power[0] as number);
  return to !== undefined ? least > raised(to) : below !== undefined && least >= below;
}

/**
 * What a class that is told by power or by shaft height asks: of an electrical machine the shaft height decides, and
 * its power must not be above the class; where the height is not given, the power stands in for it.
 */
function sizeVerdicts(by: Condition, known: KnownFacts, isNamed: boolean): [Fact, Verdict][] {
  const { power } = known;
  if (!isElectrical(known)) return [["power", verdict(by, "power", known)]];
  const tooStrong: [Fact, Verdict][] =
    power !== undefined && isAbove(by.power as Interval, power) ? [["power", "unmet"]] : [];
  if (known.shaftHeight !== undefined) return [["shaftHeight", verdict(by, "shaftHeight", known)], ...tooStrong];
  if (power === undefined) return [["shaftHeight", "unknown"]];
  return isNamed ? tooStrong : [["power", verdict(by, "power", known)]];
}

/** The facts that speak against a class, and those not known of it. */
export function objections(one: MachineClass, known: KnownFacts): { unmet: Fact[]; unknown: Fact[] } {
  const unmet: Fact[] = [];
  const unknown: Fact[] = [];
  const note = (fact: Fact, found: Verdict, needed: boolean): void => {
    if (found === "unmet") unmet.push(fact);
    if (found === "unknown" && needed) unknown.push(fact);
  };
  const check = (condition: Condition | undefined, needed: boolean, list = factsOf(condition)): void => {
    for (const fact of list) note(fact, verdict(condition as Condition, fact, known), needed);
  };
  check(one.when, true);
  // the power that bounds a category stands in for its applications, and says nothing where one is told
  const isTold = known.application !== undefined && one.when?.category !== undefined;
  check(one.within, false, isTold ? factsOf(one.within).filter((fact) => fact !== "power") : factsOf(one.within));
  const named = factsOf(one.named);
  const isNamed = named.length > 0 && named.every((fact) => known[fact] !== undefined);
  check(one.named, false);
  const by = factsOf(one.by);
  const bySize = by.includes("power") && by.includes("shaftHeight");
  check(one.by, !isNamed, bySize ? by.filter((fact) => fact !== "power" && fact !== "shaftHeight") : by);
  if (bySize) {
    for (const [fact, found] of sizeVerdicts(one.by as Condition, known, isNamed)) note(fact, found, !isNamed);
  }
  return { unmet, unknown };
}

/** What is assumed when a class is told by power or by shaft height and the deciding one was not given. */
export function sizeAssumption(classes: readonly MachineClass[], known: KnownFacts): string[] {
  const { type, power, shaftHeight } = known;
  const bySize = classes.some(
    ({ named, by }) =>
      by?.power !== undefined &&
      by.shaftHeight !== undefined &&
      factsOf(named).some((fact) => known[fact] === undefined),
  );
  if (!bySize) return [];
  if (type === undefined) {
    return shaftHeight !== undefined ? ["shaft height given: the machine is taken for an electrical one"] : [];
  }
  return isElectrical(known) && shaftHeight === undefined && typeof power === "number"
    ? ["power in place of shaft height, which was not given"]
    : [];
}
