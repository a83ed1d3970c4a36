import { requireList, type Source } from "../core/index";
import { namesOf } from "./limit";
import type { Criterion, Scheme } from "./scheme";
import { schemeOf } from "./scheme-of";
import { builtInSchemes } from "./schemes/index";

/** How many limits were read in print, and how many are from memory. */
export interface LimitCount {
  readonly published: number;
  readonly memory: number;
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

function countOf(scheme: Scheme): SchemeCount {
  // a criterion that several classes share stands once in the standard
  const criteria = new Set(scheme.classes.flatMap((one) => one.criteria));
  const sources = [...criteria].flatMap((criterion) => sourcesOf(scheme, criterion));
  const published = sources.filter(({ provenance }) => provenance === "published").length;
  return { scheme, published, memory: sources.length - published };
}

/**
 * How many limits of the schemes were read in print and how many are from memory, in all and by scheme. A limit that
 * falls with speed counts as one; ceilings for alarm and trip count too.
 *
 * @param schemes - the built-in ones if not given
 * @example
 * ```ts
 * import { countLimits, schemeById } from "veladis/severity";
 *
 * const { published, memory } = countLimits([schemeById("iso-10816-3-2009")]);
 * published; // => 10
 * memory; // => 14
 * ```
 */
export function countLimits(
  schemes: readonly Scheme[] = builtInSchemes,
): LimitCount & { readonly schemes: readonly SchemeCount[] } {
  const counts = requireList(schemes, "schemes as a list").map(schemeOf).map(countOf);
  const total = (part: keyof LimitCount): number => counts.reduce((sum, count) => sum + count[part], 0);
  return { published: total("published"), memory: total("memory"), schemes: counts };
}
