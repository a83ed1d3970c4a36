import type { Source } from "../core/index";
import type { Criterion, LimitValue, Scheme } from "./scheme";

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** A limit as numbers: what it grows with, and where it stops. */
function sizes(limit: LimitValue): readonly number[] {
  if (limit === null) return [];
  return typeof limit === "number" ? [limit] : [limit.rootOf, limit.atMost ?? 0];
}

/** What was shipped, or confirmed since: signed, told where it differs, and by two where it is higher. */
function isShippedOrConfirmed(
  was: readonly [readonly number[], Source],
  is: readonly [readonly number[], Source],
): boolean {
  const [before, from] = was;
  const [now, source] = is;
  if (same(before, now) && same(from, source)) return true;
  const signed = source.provenance === "confirmed" && source.by !== undefined && source.page !== undefined;
  if (!signed || from.provenance === "confirmed" || before.length !== now.length) return false;
  if (now.some((value, i) => value > (before[i] as number)) && source.second === undefined) return false;
  return same(before, now) || (source.shipped !== undefined && source.note !== undefined);
}

function isConfirmedCriterion(one: Criterion, other: Criterion): boolean {
  const { limits, limitSources, ceilings, ...rest } = one;
  const { limits: theirs, limitSources: theirSources, ceilings: theirCeilings, ...theirRest } = other;
  if (!same(rest, theirRest) || !same(Object.keys(limits), Object.keys(theirs))) return false;
  const isSame = Object.keys(limits).every((name) =>
    isShippedOrConfirmed(
      [sizes(limits[name] ?? null), limitSources?.[name] ?? one.source],
      [sizes(theirs[name] ?? null), theirSources?.[name] ?? other.source],
    ),
  );
  if (!isSame) return false;
  if (ceilings === undefined || theirCeilings === undefined) return ceilings === theirCeilings;
  return isShippedOrConfirmed(
    [[ceilings.alarm, ceilings.trip], ceilings.source],
    [[theirCeilings.alarm, theirCeilings.trip], theirCeilings.source],
  );
}

/** True for a built-in scheme of which nothing but confirmed limits was changed: it is that scheme still. */
export function isConfirmedCopy(builtIn: Scheme, scheme: Scheme): boolean {
  const { classes, ...rest } = builtIn;
  const { classes: theirs, ...theirRest } = scheme;
  if (!same(rest, theirRest) || classes.length !== theirs.length) return false;
  return classes.every(({ criteria, ...one }, i) => {
    const { criteria: others, ...other } = theirs[i] as Scheme["classes"][number];
    if (!same(one, other) || criteria.length !== others.length) return false;
    return criteria.every((criterion, k) => isConfirmedCriterion(criterion, others[k] as Criterion));
  });
}
