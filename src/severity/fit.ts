import { type Fact, facts, isNumberFact, type TextFact } from "./facts";
import { contains, type Interval, intervalText } from "./interval";
import { folded } from "./label";
import type { KnownFacts } from "./machine";
import { conditionText, labels } from "./machine-class";
import { type MachineType, machineTypes } from "./machine-types";
import type { Condition, MachineClass, Scheme } from "./scheme";

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

/** Why a machine has no place in a scheme. */
interface Misfit {
  readonly code: "out-of-range" | "unknown-option";
  readonly fact: Fact;
  readonly expected: string;
  readonly received: string;
  readonly allowed?: readonly string[];
  /** The scheme's own words, where it names another standard. */
  readonly reason?: string;
}

/** How a machine fits into a scheme. */
export interface Fit {
  /** The facts used, with defaults of the standard filled in. */
  readonly facts: KnownFacts;
  /** The one class that the facts decide for, if they do. */
  readonly chosen: MachineClass | undefined;
  /** Classes that nothing given speaks against. */
  readonly open: readonly MachineClass[];
  /** What is needed to decide between them. */
  readonly missing: readonly MissingFact[];
  readonly misfit: Misfit | undefined;
  /** Defaults of the standard that were used, in words. */
  readonly assumed: readonly string[];
}

type Verdict = "met" | "unmet" | "unknown";

function verdict(condition: Condition, fact: Fact, known: KnownFacts): Verdict {
  const given = known[fact];
  if (given === undefined) return "unknown";
  const met = isNumberFact(fact)
    ? contains(condition[fact] as Interval, given as number)
    : labels(condition[fact as TextFact] as string).some(
        (label) => label === given || folded(label) === folded(given as string),
      );
  return met ? "met" : "unmet";
}

function factsOf(condition: Condition | undefined): Fact[] {
  return Object.keys(condition ?? {}) as Fact[];
}

/** Which of power and shaft height decides where a class is bounded by both: shaft height for electrical machines. */
function sizeFact({ type, power, shaftHeight }: KnownFacts): Fact {
  if (type === undefined) return shaftHeight !== undefined && power === undefined ? "shaftHeight" : "power";
  const electrical = machineTypes[type as MachineType].electrical;
  return electrical && (shaftHeight !== undefined || power === undefined) ? "shaftHeight" : "power";
}

/** What speaks against a class, and what is not known of it. */
function against(one: MachineClass, known: KnownFacts): { unmet: Fact[]; unknown: Fact[] } {
  const unmet: Fact[] = [];
  const unknown: Fact[] = [];
  const check = (condition: Condition | undefined, list: readonly Fact[], needed: boolean): void => {
    for (const fact of list) {
      const found = verdict(condition as Condition, fact, known);
      if (found === "unmet") unmet.push(fact);
      if (found === "unknown" && needed) unknown.push(fact);
    }
  };
  check(one.when, factsOf(one.when), true);
  check(one.within, factsOf(one.within), false);
  const named = factsOf(one.named);
  const isNamed = named.length > 0 && named.every((fact) => known[fact] !== undefined);
  if (isNamed) check(one.named, named, true);
  let by = factsOf(one.by);
  if (by.includes("power") && by.includes("shaftHeight")) {
    const other = sizeFact(known) === "power" ? "shaftHeight" : "power";
    // without a type both count, so that a contradiction shows
    if (known.type !== undefined || known[other] === undefined) by = by.filter((fact) => fact !== other);
  }
  check(one.by, by, !isNamed);
  return { unmet, unknown };
}

/** All that the classes of a scheme ask of one fact. */
function domain(scheme: Scheme, fact: Fact): { texts: string[]; intervals: Interval[] } {
  const texts: string[] = [];
  const intervals: Interval[] = [];
  for (const { named, by, when, within } of scheme.classes) {
    for (const condition of [named, by, when, within]) {
      const wanted = condition?.[fact];
      if (wanted === undefined) continue;
      if (isNumberFact(fact)) intervals.push(wanted as Interval);
      else texts.push(...labels(wanted as string));
    }
  }
  return { texts: [...new Set(texts)], intervals };
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

function received(fact: Fact, known: KnownFacts): string {
  const entry = facts[fact];
  const value = known[fact];
  return typeof value === "number" && "unit" in entry
    ? `${Number(value.toPrecision(10))} ${entry.unit}`
    : JSON.stringify(value);
}

function expected(fact: Fact, wanted: Condition[Fact], where: string): string {
  const entry = facts[fact];
  return "unit" in entry
    ? `${entry.ask} within ${where}: ${intervalText(wanted as Interval, entry.unit)}`
    : `${entry.ask} within ${where}: ${labels(wanted as string).join(" or ")}`;
}

/** What the scheme's scope has against the machine. */
function outOfScope(scheme: Scheme, known: KnownFacts, where: string): Misfit | undefined {
  const { machines, exclusions, within, place } = scheme;
  if (known.place !== undefined && known.place !== place) {
    return {
      code: "out-of-range",
      fact: "place",
      expected: `a reading taken on the ${place}, which ${where} is for`,
      received: `one taken on the ${known.place}`,
      reason: `for readings on the ${place}`,
    };
  }
  for (const { when, reason } of exclusions ?? []) {
    if (!factsOf(when).every((fact) => verdict(when, fact, known) === "met")) continue;
    return { code: "out-of-range", fact: "type", expected: `a machine within ${where}`, received: reason, reason };
  }
  if (known.type !== undefined && machines !== undefined && !machines.includes(known.type as MachineType)) {
    return {
      code: "out-of-range",
      fact: "type",
      expected: `a machine within ${where}`,
      received: JSON.stringify(known.type),
      allowed: machines,
      reason: `for ${machines.join(", ")} only`,
    };
  }
  for (const fact of factsOf(within)) {
    if (verdict(within as Condition, fact, known) !== "unmet") continue;
    return {
      code: "out-of-range",
      fact,
      expected: expected(fact, within?.[fact], where),
      received: received(fact, known),
      reason: `for ${conditionText({ [fact]: within?.[fact] })}; this machine: ${received(fact, known)}`,
    };
  }
  return undefined;
}

/** What to blame when no class is left: a fact that no class admits, else facts that contradict each other. */
function misfitOf(scheme: Scheme, known: KnownFacts, unmet: readonly Fact[][], where: string): Misfit {
  const fact = unmet[0]?.find((one) => unmet.every((list) => list.includes(one)));
  if (fact === undefined) {
    const fewest = Math.min(...unmet.map((list) => list.length));
    const against = [...new Set(unmet.filter((list) => list.length === fewest).flat())];
    return {
      code: "out-of-range",
      fact: against[0] as Fact,
      expected: `a machine within ${where}, whose ${against.join(" and ")} agree`,
      received: against.map((one) => `${one} ${received(one, known)}`).join(", "),
    };
  }
  const { texts, intervals } = domain(scheme, fact);
  const entry = facts[fact];
  if (!("unit" in entry)) {
    return {
      code: "unknown-option",
      fact,
      expected: `${entry.ask}, as in ${where}`,
      received: received(fact, known),
      allowed: texts,
    };
  }
  const ranges = [...new Set(intervals.map((interval) => intervalText(interval, entry.unit)))];
  return {
    code: "out-of-range",
    fact,
    expected: `${entry.ask} within ${where}: ${ranges.join("; ")}`,
    received: received(fact, known),
  };
}

/** What is taken for granted when a class is told by power or by shaft height and the deciding one was not given. */
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

/** How the facts fit into a scheme: the class they decide for, or what is missing, or what speaks against it. */
export function fitOf(scheme: Scheme, given: KnownFacts): Fit {
  const where = `${scheme.standard} (${scheme.edition})`;
  const assumed: string[] = [];
  const filled: { [F in Fact]?: number | string } = { ...given };
  for (const [fact, { is, because }] of Object.entries(scheme.defaults ?? {})) {
    if (filled[fact as Fact] !== undefined) continue;
    filled[fact as Fact] = is;
    assumed.push(`${fact} ${is}: ${because}`);
  }
  const known: KnownFacts = filled;
  const base = { facts: known, assumed };
  const scope = outOfScope(scheme, known, where);
  if (scope !== undefined) return { ...base, chosen: undefined, open: [], missing: [], misfit: scope };
  const found = scheme.classes.map((one) => ({ one, ...against(one, known) }));
  const open = found.filter(({ unmet }) => unmet.length === 0);
  if (open.length === 0) {
    const misfit = misfitOf(
      scheme,
      known,
      found.map(({ unmet }) => unmet),
      where,
    );
    return { ...base, chosen: undefined, open: [], missing: [], misfit };
  }
  assumed.push(
    ...sizeAssumption(
      open.map(({ one }) => one),
      known,
    ),
  );
  const complete = open.filter(({ unknown }) => unknown.length === 0);
  const chosen = complete.length === 1 ? complete[0]?.one : undefined;
  const unknown = chosen === undefined ? [...new Set(open.flatMap((one) => one.unknown))] : [];
  return {
    ...base,
    chosen,
    open: open.map(({ one }) => one),
    missing: unknown.map((fact) => missingFact(scheme, fact)),
    misfit: undefined,
  };
}
