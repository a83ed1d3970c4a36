import type { KnownFacts } from "./machine";
import type { Scheme } from "./scheme";

/** How good a scheme is for a machine, most important first; less is better. */
function rankOf(scheme: Scheme, { condition }: KnownFacts): number[] {
  const { kind, place, status, informative, byContract, machines, edition } = scheme;
  const wanted = condition === "new" ? kind === "acceptance" : kind !== "acceptance";
  return [
    byContract ? 1 : 0,
    wanted ? 0 : 1,
    kind === "grades" ? 1 : 0,
    place === "shaft" ? 1 : 0,
    informative ? 3 : status === "guide" ? 2 : status === "withdrawn" ? 1 : 0,
    machines?.length ?? 99,
    -Number.parseInt(/\d{4}/.exec(edition)?.[0] ?? "0", 10),
  ];
}

function compared(a: readonly number[], b: readonly number[]): number {
  return a.map((value, i) => value - (b[i] as number)).find((difference) => difference !== 0) ?? 0;
}

/**
 * Schemes best first: those that no order has to name, of the kind asked for, editions in force, made for just this machine, the newest. Besides the
 * condition no fact counts, so that a fact left out never brings another scheme to the front.
 */
export function inOrder(schemes: readonly Scheme[], known: KnownFacts): readonly Scheme[] {
  return schemes
    .map((scheme) => ({ scheme, rank: rankOf(scheme, known) }))
    .sort((a, b) => compared(a.rank, b.rank))
    .map(({ scheme }) => scheme);
}
