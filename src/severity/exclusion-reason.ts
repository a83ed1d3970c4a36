import { shown } from "../core/index";
import { factText } from "./fact-text";
import { type Fact, facts } from "./facts";
import { type Interval, intervalText } from "./interval";
import type { FactValue, KnownFacts } from "./machine";
import { conditionText, labels } from "./machine-class";
import type { Condition, Exclusion, Scheme } from "./scheme";
import { domain, factOf, factsOf, isForKind, verdict } from "./verdict";

/** Why a machine has no place in a scheme. */
export interface ExclusionReason {
  readonly code: "out-of-range" | "unknown-option";
  readonly expected: string;
  readonly received: string;
  readonly allowed?: readonly string[];
  /** The scheme's own words, where it names another standard. */
  readonly reason?: string;
}

function received(fact: Fact, known: KnownFacts): string {
  const entry = facts[fact];
  const value = factOf(fact, known);
  return "unit" in entry ? factText(value as Exclude<FactValue, string>, entry.unit) : shown(value);
}

function expected(fact: Fact, wanted: Condition[Fact], where: string): string {
  const entry = facts[fact];
  return "unit" in entry
    ? `${entry.ask} within ${where}: ${intervalText(wanted as Interval, entry.unit)}`
    : `${entry.ask} within ${where}: ${labels(wanted as string).join(" or ")}`;
}

/** What a scheme excludes such a machine by; undefined where it does not. */
export function exclusionOf({ exclusions }: Scheme, known: KnownFacts): Exclusion | undefined {
  return exclusions?.find(({ when }) => factsOf(when).every((fact) => verdict(when, fact, known) === "met"));
}

/** Whether the machine lies outside the scope of the scheme: {@link exclusionReason} without its words. */
export function isOutside(scheme: Scheme, known: KnownFacts): boolean {
  const { within = {}, place } = scheme;
  const { place: measured, type } = known;
  if (measured !== undefined && measured !== place) return true;
  if (type !== undefined && !isForKind(scheme, type)) return true;
  for (const fact in within) if (verdict(within, fact as Fact, known) === "unmet") return true;
  return exclusionOf(scheme, known) !== undefined;
}

/** Why the machine lies outside the scope of the scheme; undefined where it does not. */
export function exclusionReason(scheme: Scheme, known: KnownFacts, where: string): ExclusionReason | undefined {
  const { machines, within = {}, place } = scheme;
  if (known.place !== undefined && known.place !== place) {
    return {
      code: "out-of-range",
      expected: `a reading taken on the ${place}, which ${where} is for`,
      received: `one taken on the ${known.place}`,
      reason: `for readings on the ${place}`,
    };
  }
  const excluded = exclusionOf(scheme, known);
  if (excluded !== undefined) {
    const { reason } = excluded;
    return { code: "out-of-range", expected: `a machine within ${where}`, received: reason, reason };
  }
  if (known.type !== undefined && machines !== undefined && !isForKind(scheme, known.type)) {
    return {
      code: "out-of-range",
      expected: `a machine within ${where}`,
      received: shown(known.type),
      allowed: machines,
      reason: `for ${machines.join(", ")} only`,
    };
  }
  for (const fact of factsOf(within)) {
    if (verdict(within, fact, known) !== "unmet") continue;
    return {
      code: "out-of-range",
      expected: expected(fact, within[fact], where),
      received: received(fact, known),
      reason: `for ${conditionText({ [fact]: within[fact] })}; this machine: ${received(fact, known)}`,
    };
  }
  return undefined;
}

/** True for a label that names a row of a scheme. */
function isRowLabel(fact: Fact): boolean {
  return fact === "group" || fact === "class" || fact === "category" || fact === "grade";
}

/** Why no class is left for the machine: a fact that no class admits, else facts that contradict each other. */
export function noClassReason(
  scheme: Scheme,
  known: KnownFacts,
  unmet: readonly Fact[][],
  where: string,
): ExclusionReason {
  const fact = (unmet[0] as Fact[]).find((one) => unmet.every((list) => list.includes(one)));
  if (fact === undefined) {
    // of the rows that the labels name, what speaks against them; else of those that are the nearest
    const named = unmet.filter((list) => !list.some((one) => known[one] !== undefined && isRowLabel(one)));
    const near = named.length > 0 ? named : unmet;
    const fewest = Math.min(...near.map((list) => list.length));
    const labels = named.length > 0 ? (Object.keys(known) as Fact[]).filter(isRowLabel) : [];
    const against = new Set([...labels, ...near.filter((list) => list.length === fewest).flat()]);
    return {
      code: "out-of-range",
      expected: `a machine within ${where}, whose ${[...against].join(" and ")} agree`,
      received: [...against].map((one) => `${one} ${received(one, known)}`).join(", "),
    };
  }
  const { texts, intervals } = domain(scheme, fact);
  const entry = facts[fact];
  if (!("unit" in entry)) {
    return {
      code: "unknown-option",
      expected: `${entry.ask}, as in ${where}`,
      received: received(fact, known),
      allowed: texts,
    };
  }
  const ranges = [...new Set(intervals.map((interval) => intervalText(interval, entry.unit)))];
  return {
    code: "out-of-range",
    expected: `${entry.ask} within ${where}: ${ranges.join("; ")}`,
    received: received(fact, known),
  };
}
