import type { Source } from "../core/index";
import { factText } from "./fact-text";
import { namesOf } from "./limit";
import type { KnownFacts } from "./machine";
import { conditionText, labels } from "./machine-class";
import type { MachineMatch, MissingFact } from "./match-machine";
import type { Condition, Criterion, LimitValue, MachineClass, Scheme, SpeedLaw } from "./scheme";

/** What a limit grows with, and where it stops. */
function sizeOf(limit: number | SpeedLaw): [number, number] {
  return typeof limit === "number" ? [limit, limit] : [limit.rootOf, limit.atMost ?? Number.POSITIVE_INFINITY];
}

/** True when both are numbers or both are laws of speed: one of each are told apart at a speed only. */
function areAlike(one: LimitValue, other: LimitValue): boolean {
  return one === null || other === null || typeof one === typeof other;
}

/** True when no limit of one class is above its like of the other, and both have the same limits. */
function isBelow(one: MachineClass, other: MachineClass): boolean {
  const sizes = ({ criteria }: MachineClass) =>
    new Map(
      criteria.flatMap(({ as, when, limits }) =>
        (Object.entries(limits) as [string, LimitValue][]).flatMap(([name, value]) =>
          value === null ? [] : [[`${as} ${JSON.stringify(when)} ${name}`, value] as const],
        ),
      ),
    );
  const [mine, others] = [sizes(one), sizes(other)];
  return (
    mine.size === others.size &&
    [...mine].every(([key, value]) => {
      const like = others.get(key);
      if (like === undefined || !areAlike(value, like)) return false;
      const [[size, most], [otherSize, otherMost]] = [sizeOf(value), sizeOf(like)];
      return size <= otherSize && most <= otherMost;
    })
  );
}

/** The lower of two limits; where they are laws of speed, one that is above neither. */
function lower(one: number | SpeedLaw, other: number | SpeedLaw): number | SpeedLaw {
  if (typeof one === "number" || typeof other === "number") return Math.min(one as number, other as number);
  const most = Math.min(sizeOf(one)[1], sizeOf(other)[1]);
  return { rootOf: Math.min(one.rootOf, other.rootOf), ...(Number.isFinite(most) && { atMost: most }) };
}

/** Two criteria in one type as one with the lower of each limit, every limit with its own source. */
function lowerOf(one: Criterion, other: Criterion, names: readonly string[]): Criterion {
  const limits: Record<string, LimitValue> = {};
  const sources: Record<string, Source> = {};
  for (const name of names) {
    const [a, b] = [one.limits[name] ?? null, other.limits[name] ?? null];
    if (a === null && b === null) continue;
    limits[name] = a === null ? b : b === null ? a : lower(a, b);
    const from = b === null || (a !== null && sizeOf(a)[0] <= sizeOf(b)[0]) ? one : other;
    sources[name] = from.limitSources?.[name] ?? from.source;
  }
  const [a, b] = [one.ceilings, other.ceilings];
  const ceilings =
    a !== undefined && b !== undefined
      ? {
          alarm: Math.min(a.alarm, b.alarm),
          trip: Math.min(a.trip, b.trip),
          source: a.trip <= b.trip ? a.source : b.source,
        }
      : (a ?? b);
  // what only one of them adds for a height is left out
  const { height, ...rest } = one;
  const isShared = JSON.stringify(height) === JSON.stringify(other.height);
  return {
    ...rest,
    limits,
    limitSources: sources,
    ...(ceilings && { ceilings }),
    ...(isShared && height && { height }),
  };
}

/** Limits that fall where they should rise, since they come from several classes, brought down to the next one. */
function ascending({ limits, ...rest }: Criterion, names: readonly string[]): Criterion {
  const risen: Record<string, LimitValue> = {};
  let next: number | SpeedLaw | undefined;
  for (const name of [...names].reverse()) {
    const limit = limits[name] ?? null;
    if (limit === null) continue;
    next = next === undefined ? limit : lower(limit, next);
    risen[name] = next;
  }
  return { ...rest, limits: Object.fromEntries(Object.entries(risen).reverse()) };
}

/** The labels of all classes under each fact that tells them apart; numbers are left to what is printed of the machine. */
function unitedLabels(open: readonly MachineClass[]): Condition {
  const united: Record<string, readonly string[]> = {};
  for (const { named, by, when } of open) {
    for (const [fact, wanted] of Object.entries({ ...by, ...named, ...when })) {
      if (typeof wanted !== "string" && !Array.isArray(wanted)) continue;
      united[fact] = [...new Set([...(united[fact] ?? []), ...labels(wanted as string)])];
    }
  }
  return united as Condition;
}

/**
 * Of the classes that nothing speaks against, the one whose limits are the lowest throughout; where there is none, a
 * class of the lowest of each limit. Undefined for facts that the scheme always asks for, and where limits that hang on
 * the speed meet others that do not.
 */
export function lowestLimits(scheme: Scheme, { open, missing }: MachineMatch): MachineClass | undefined {
  if (missing.some(({ fact }) => scheme.ask?.includes(fact))) return undefined;
  const lowest = open.find((one) => open.every((other) => isBelow(one, other)));
  if (lowest !== undefined) return lowest;
  const names = namesOf(scheme);
  const criteria = new Map<string, Criterion>();
  for (const criterion of open.flatMap((one) => one.criteria)) {
    const key = `${criterion.as} ${JSON.stringify(criterion.when)}`;
    const known = criteria.get(key);
    if (known === undefined) criteria.set(key, criterion);
    else if (names.every((name) => areAlike(known.limits[name] ?? null, criterion.limits[name] ?? null))) {
      criteria.set(key, lowerOf(known, criterion, names));
    } else return undefined;
  }
  return { when: unitedLabels(open), criteria: [...criteria.values()].map((one) => ascending(one, names)) };
}

/** What was assumed of facts not given, or given as a range on both sides of an edge, in words. */
export function lowestLimitsAssumed(
  { named, by, when }: MachineClass,
  missing: readonly MissingFact[],
  known: KnownFacts,
): string[] {
  const all: Condition = { ...named, ...by, ...when };
  return missing.map(({ fact, unit = "" }) => {
    const taken = all[fact];
    const given = known[fact];
    const because = typeof given === "object" ? `given as ${factText(given, unit)}` : "not given";
    return taken === undefined || (typeof taken !== "string" && Array.isArray(taken) && taken.length > 1)
      ? `${fact}: ${because}, and the lowest limits of all that it may be are taken`
      : `${conditionText({ [fact]: taken } as Condition)}: ${because}, and taken for its lower limits`;
  });
}
