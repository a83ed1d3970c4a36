import { raised } from "../core/index";
import { type ExclusionReason, exclusionReason, isOutside, noClassReason } from "./exclusion-reason";
import { type Fact, facts } from "./facts";
import type { Interval } from "./interval";
import type { FactValue, KnownFacts } from "./machine";
import { type MachineType, machineTypes } from "./machine-types";
import type { Condition, MachineClass, Scheme } from "./scheme";
import { domain, factsOf, type Verdict, verdict } from "./verdict";

/** A fact that a table needs and was not given. */
export interface MissingFact {
  readonly fact: Fact;
  /** The question to the machine's owner. */
  readonly ask: string;
  /** The answers that the table knows, for a label. */
  readonly allowed?: readonly string[];
  /** The unit of the answer, for a number. */
  readonly unit?: string;
}

/** How a machine matches a scheme. */
export interface MachineMatch {
  /** The one class that the facts decide for, if they do. */
  readonly chosen: MachineClass | undefined;
  /** Classes that nothing given speaks against. */
  readonly open: readonly MachineClass[];
  /** What is needed to decide between them. */
  readonly missing: readonly MissingFact[];
  readonly exclusion: ExclusionReason | undefined;
  /** What was taken for facts not given, in words. */
  readonly assumed: readonly string[];
}

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
function objections(one: MachineClass, known: KnownFacts): { unmet: Fact[]; unknown: Fact[] } {
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
  check(one.within, false);
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

function missingFact(scheme: Scheme, fact: Fact): MissingFact {
  const { texts } = domain(scheme, fact);
  const entry = facts[fact];
  return {
    fact,
    ask: (scheme.meanings as Partial<Record<Fact, string>> | undefined)?.[fact] ?? entry.ask,
    ...(texts.length > 0 && { allowed: texts }),
    ...("unit" in entry && { unit: entry.unit }),
  };
}

/** What is assumed when a class is told by power or by shaft height and the deciding one was not given. */
function sizeAssumption(classes: readonly MachineClass[], known: KnownFacts): string[] {
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

/** True where nothing known speaks against a scheme and one class of it at least. */
export function isOpen(scheme: Scheme, known: KnownFacts): boolean {
  return !isOutside(scheme, known) && scheme.classes.some((one) => objections(one, known).unmet.length === 0);
}

/** How the facts of a machine match a scheme: the class they decide for, or what is missing, or what speaks against it. */
export function matchMachine(scheme: Scheme, known: KnownFacts): MachineMatch {
  const where = `${scheme.standard} (${scheme.edition})`;
  const none = { chosen: undefined, open: [], missing: [], assumed: [] };
  const scope = exclusionReason(scheme, known, where);
  if (scope !== undefined) return { ...none, exclusion: scope };
  const found = scheme.classes.map((one) => ({ one, ...objections(one, known) }));
  const open = found.filter(({ unmet }) => unmet.length === 0);
  if (open.length === 0) {
    const exclusion = noClassReason(
      scheme,
      known,
      found.map(({ unmet }) => unmet),
      where,
    );
    return { ...none, exclusion };
  }
  const [first, second] = open.filter(({ unknown }) => unknown.length === 0);
  const chosen = second === undefined ? first?.one : undefined;
  const unknown = chosen === undefined ? [...new Set(open.flatMap((one) => one.unknown))] : [];
  const classes = open.map(({ one }) => one);
  return {
    chosen,
    open: classes,
    missing: unknown.map((fact) => missingFact(scheme, fact)),
    assumed: sizeAssumption(classes, known),
    exclusion: undefined,
  };
}
