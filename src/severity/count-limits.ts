import { type Provenance, provenances, requireList, type Source, withParameters } from "../core/index";
import { namesOf } from "./limit";
import type { Criterion, Scheme } from "./scheme";
import { schemeOf } from "./scheme-of";
import { builtInSchemes } from "./schemes/index";

/** How many limits are known in each way, and how many there are. */
export interface LimitCount extends Readonly<Record<Provenance, number>> {
  readonly limits: number;
}

/** The count of one scheme. */
export interface SchemeCount extends LimitCount {
  readonly scheme: Scheme;
}

function sourcesOf(scheme: Scheme, { limits, source, limitSources, ceilings }: Criterion): Source[] {
  const present = namesOf(scheme).filter((name) => (limits[name] ?? null) !== null);
  const set = ceilings === undefined ? [] : [ceilings.source, ceilings.source];
  return [...present.map((name) => limitSources?.[name] ?? source), ...set];
}

/** Counts summed part by part, all parts there, the worst known first. */
function totals(counts: readonly Partial<LimitCount>[]): LimitCount {
  const total = (part: keyof LimitCount): number => counts.reduce((sum, count) => sum + (count[part] ?? 0), 0);
  const grades = Object.keys(provenances) as Provenance[];
  return Object.fromEntries([...grades, "limits" as const].map((one) => [one, total(one)])) as unknown as LimitCount;
}

function countOf(scheme: Scheme): SchemeCount {
  // a criterion that several classes share stands once in the standard
  const criteria = new Set(scheme.classes.flatMap((one) => one.criteria));
  const sources = [...criteria].flatMap((criterion) => sourcesOf(scheme, criterion));
  return { scheme, ...totals(sources.map(({ provenance }) => ({ [provenance]: 1, limits: 1 }))) };
}

/**
 * How many limits of the schemes are known in which way, in all and by scheme. A limit that falls with speed counts as
 * one; ceilings for alarm and trip count too.
 *
 * @param schemes - the built-in ones if not given
 * @example
 * ```ts
 * import { countLimits, schemeById } from "veladis/severity";
 *
 * const { limits, quoted, memory } = countLimits([schemeById("iso-10816-3-1998")]);
 * limits; // => 48
 * quoted; // => 10
 * memory; // => 38
 * ```
 */
export function countLimits(
  schemes: readonly Scheme[] = builtInSchemes,
): LimitCount & { readonly schemes: readonly SchemeCount[] } {
  return withParameters({ schemes }, () => {
    const counts = requireList(schemes, "schemes as a list", { parameter: "schemes" }).map(schemeOf).map(countOf);
    return { ...totals(counts), schemes: counts };
  });
}
