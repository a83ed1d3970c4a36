import { type ExclusionReason, exclusionReason, noClassReason } from "./exclusion-reason";
import { type Fact, facts } from "./facts";
import type { KnownFacts } from "./machine";
import { type MachineType, machineTypes } from "./machine-types";
import type { Condition, MachineClass, Scheme } from "./scheme";
import { domain, factsOf, verdict } from "./verdict";

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
  /** The facts used, with defaults of the standard filled in. */
  readonly facts: KnownFacts;
  /** The one class that the facts decide for, if they do. */
  readonly chosen: MachineClass | undefined;
  /** Classes that nothing given speaks against. */
  readonly open: readonly MachineClass[];
  /** What is needed to decide between them. */
  readonly missing: readonly MissingFact[];
  readonly exclusion: ExclusionReason | undefined;
  /** Defaults of the standard that were used, in words. */
  readonly assumed: readonly string[];
}

/** Which of power and shaft height does not decide where a class is bounded by both: power for electrical machines. */
function idleSize({ type, power, shaftHeight }: KnownFacts): Fact {
  if (type === undefined) return shaftHeight !== undefined ? "power" : "shaftHeight";
  const electrical = machineTypes[type as MachineType].electrical;
  return electrical && (shaftHeight !== undefined || power === undefined) ? "power" : "shaftHeight";
}

/** The facts that speak against a class, and those not known of it. */
function objections(one: MachineClass, known: KnownFacts): { unmet: Fact[]; unknown: Fact[] } {
  const unmet: Fact[] = [];
  const unknown: Fact[] = [];
  const check = (condition: Condition | undefined, needed = false, list = factsOf(condition)): void => {
    for (const fact of list) {
      const found = verdict(condition as Condition, fact, known);
      if (found === "unmet") unmet.push(fact);
      if (found === "unknown" && needed) unknown.push(fact);
    }
  };
  check(one.when, true);
  check(one.within);
  const named = factsOf(one.named);
  const isNamed = named.length > 0 && named.every((fact) => known[fact] !== undefined);
  check(one.named);
  let by = factsOf(one.by);
  if (by.includes("power") && by.includes("shaftHeight")) {
    const other = idleSize(known);
    // without a type both count, so that a contradiction shows
    if (known.type !== undefined || known[other] === undefined) by = by.filter((fact) => fact !== other);
  }
  check(one.by, !isNamed, by);
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
    const only = shaftHeight !== undefined && power === undefined;
    return only ? ["shaft height in place of power: the machine is taken for an electrical one"] : [];
  }
  const electrical = machineTypes[type as MachineType].electrical;
  return electrical && shaftHeight === undefined && power !== undefined
    ? ["power in place of shaft height, which was not given"]
    : [];
}

/** How the facts of a machine match a scheme: the class they decide for, or what is missing, or what speaks against it. */
export function matchMachine(scheme: Scheme, given: KnownFacts): MachineMatch {
  const where = `${scheme.standard} (${scheme.edition})`;
  const assumed: string[] = [];
  const filled = { ...given } as { [F in Fact]?: number | string };
  for (const [fact, { is, because }] of Object.entries(scheme.defaults ?? {})) {
    if (filled[fact as Fact] !== undefined) continue;
    filled[fact as Fact] = is;
    assumed.push(`${fact} ${is}: ${because}`);
  }
  const known = filled as KnownFacts;
  const base = { facts: known, assumed };
  const scope = exclusionReason(scheme, known, where);
  if (scope !== undefined) return { ...base, chosen: undefined, open: [], missing: [], exclusion: scope };
  const found = scheme.classes.map((one) => ({ one, ...objections(one, known) }));
  const open = found.filter(({ unmet }) => unmet.length === 0);
  if (open.length === 0) {
    const exclusion = noClassReason(
      scheme,
      known,
      found.map(({ unmet }) => unmet),
      where,
    );
    return { ...base, chosen: undefined, open: [], missing: [], exclusion };
  }
  assumed.push(
    ...sizeAssumption(
      open.map(({ one }) => one),
      known,
    ),
  );
  const [first, second] = open.filter(({ unknown }) => unknown.length === 0);
  const chosen = second === undefined ? first?.one : undefined;
  const unknown = chosen === undefined ? [...new Set(open.flatMap((one) => one.unknown))] : [];
  return {
    ...base,
    chosen,
    open: open.map(({ one }) => one),
    missing: unknown.map((fact) => missingFact(scheme, fact)),
    exclusion: undefined,
  };
}
