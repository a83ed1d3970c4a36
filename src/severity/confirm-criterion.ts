import { provenances, type Source, shown, VeladisError } from "../core/index";
import { differenceText } from "./confirm-value";
import type { LimitPlace } from "./confirmable-limits";
import type { Confirmation } from "./confirmation";
import { editionText } from "./edition-text";
import type { Criterion, LimitValue, Scheme, SpeedLaw } from "./scheme";

/** A confirmation with the place that it names. */
export interface Placed {
  readonly one: Confirmation;
  readonly place: LimitPlace;
  /** Where it stands, for refusals. */
  readonly at: string;
}

/** What has one source and is confirmed together: a limit, both numbers of a law of speed, both highest settings. */
function unitOf({ place: { at } }: Pick<Placed, "place">): string {
  return "name" in at ? `limit ${at.name}` : "ceilings";
}

/** Refuses half of what stands together: it has one source, which says that it was confirmed whole. */
function requireWhole(group: readonly Placed[], places: readonly LimitPlace[]): void {
  const [{ place, one, at }] = group as [Placed];
  const all = places.filter(
    (other) => other.criteria[0] === place.criteria[0] && unitOf({ place: other }) === unitOf({ place }),
  );
  const left = all.filter((other) => group.every((given) => given.place.limit !== other.limit));
  if (left.length > 0) {
    throw new VeladisError("missing-fact", {
      expected: `${at}: ${left.map(({ limit }) => shown(limit)).join(" and ")} of the row ${shown(place.row)} too, which stands with it`,
      received: `${shown(place.limit)} alone`,
    });
  }
  const other = group.find(({ one: { by, on } }) => by !== one.by || on !== one.on);
  if (other === undefined) return;
  throw new VeladisError("out-of-range", {
    expected: `${other.at}: the name and the day of ${shown(place.limit)}, with which it stands`,
    received: `${other.one.by}, ${other.one.on}`,
  });
}

const settings: Readonly<Record<string, "alarm" | "trip">> = { "B/C": "alarm", "C/D": "trip" };

/** What to know of a limit above the highest setting that the table has for its zone, and that was not confirmed with it. */
function aboveCeiling({ ceilings }: Criterion, { place, one }: Placed): string[] {
  const { row, limit, as, at } = place;
  const setting = "name" in at ? settings[at.name] : undefined;
  if (setting === undefined || ceilings === undefined || one.printed <= ceilings[setting]) return [];
  const { cell } = provenances[ceilings.source.provenance];
  return [
    `${row}, ${limit}: the copy's ${one.printed} ${as} contradicts ${setting} at most, ${ceilings[setting]} (${cell}), which was not confirmed: read that too; until then it stays the highest ${setting} setting`,
  ];
}

/** The source of what was confirmed: the page of the copy, and who read it. */
function confirmedSource(scheme: Scheme, group: readonly Placed[], contradicted: readonly string[]): Source {
  const [{ place, one }] = group as [Placed];
  const second = group.find((given) => given.one.second !== undefined)?.one.second;
  const told = [...group.flatMap(({ place, one }) => differenceText(place, one.printed) ?? []), ...contradicted];
  const differing = group.filter(({ place, one }) => one.printed !== place.shipped);
  const named = group.length > 1;
  return Object.freeze({
    title: editionText(scheme),
    ...(place.source.where !== undefined && { where: place.source.where }),
    provenance: "confirmed",
    page: [...new Set(group.map(({ one }) => one.page))].join(" and "),
    ...(told.length > 0 && { note: told.join("; ") }),
    ...{ by: one.by, on: one.on },
    ...(second !== undefined && { second }),
    ...(differing.length > 0 && {
      shipped: differing
        .map(({ place: { limit, shipped, as } }) => `${named ? `${limit} ` : ""}${shipped} ${as}`)
        .join(", "),
    }),
  });
}

/** A limit with what was confirmed of it. */
function confirmedLimit(limit: LimitValue, group: readonly Placed[]): LimitValue {
  let value = limit;
  for (const { place, one } of group) {
    const part = "name" in place.at ? place.at.part : "value";
    if (part === "value") value = one.printed;
    else if (part === "at most") value = { ...(value as SpeedLaw), atMost: one.printed };
    else value = { ...(value as SpeedLaw), rootOf: part === "root of" ? one.printed : one.printed ** 2 };
  }
  return value;
}

/** The criterion with what was confirmed of its limits, which stays in its order. */
export function confirmedCriterion(
  scheme: Scheme,
  criterion: Criterion,
  given: readonly Placed[],
  places: readonly LimitPlace[],
): Criterion {
  const groups = new Map<string, Placed[]>();
  for (const one of given) groups.set(unitOf(one), [...(groups.get(unitOf(one)) ?? []), one]);
  const limits: Record<string, LimitValue> = { ...(criterion.limits as Record<string, LimitValue>) };
  const limitSources: Record<string, Source> = { ...(criterion.limitSources as Record<string, Source> | undefined) };
  let { ceilings } = criterion;
  for (const group of groups.values()) {
    requireWhole(group, places);
    const contradicted = groups.has("ceilings") ? [] : aboveCeiling(criterion, group[0] as Placed);
    const source = confirmedSource(scheme, group, contradicted);
    const { at } = (group[0] as Placed).place;
    if ("name" in at) {
      limits[at.name] = confirmedLimit(limits[at.name] as LimitValue, group);
      limitSources[at.name] = source;
    } else if (ceilings !== undefined) {
      const most = Object.fromEntries(
        group.map(({ place, one }) => ["ceiling" in place.at ? place.at.ceiling : "", one.printed]),
      );
      ceilings = { ...ceilings, ...most, source };
    }
  }
  return {
    ...criterion,
    limits,
    ...(Object.keys(limitSources).length > 0 && { limitSources }),
    ...(ceilings !== undefined && { ceilings }),
  };
}
