import { type Fact, isNumberFact, type TextFact } from "./facts";
import { type Interval, intervalText } from "./interval";
import { closedLabels, type FactValue, type KnownFacts } from "./machine";
import { labels } from "./machine-class";
import type { Condition, Scheme } from "./scheme";
import { domain, factOf } from "./verdict";

/** Values that stand for all that a fact may be: the edges that schemes have, and one between any two of them. */
export interface FactPoints {
  readonly fact: Fact;
  /** Edges and what is between them in turn, ascending; labels for a fact in words. */
  readonly points: readonly FactValue[];
  /** The edges among them. */
  readonly edges: readonly number[];
}

/** All conditions by which a scheme is or is not for a machine; of its classes, those on power and speed. */
function conditionsOf({ within, exclusions = [], classes }: Scheme): Condition[] {
  const scope = [within ?? {}, ...exclusions.map(({ when }) => when)];
  const rows = classes
    .flatMap((one) => [one.by, one.when, one.within])
    .map((row) => {
      const { power, speed } = row ?? {};
      return { ...(power && { power }), ...(speed && { speed }) };
    });
  return [...scope, ...rows];
}

function edgesOf({ from, above, to, below, oneOf = [] }: Interval): number[] {
  return [from, above, to, below, ...oneOf].filter((edge) => edge !== undefined);
}

/** Numbers that stand for all from the edges of schemes; of a range that was given, for all within it. */
function numberPoints(fact: Fact, all: readonly number[], given: FactValue | undefined): FactPoints {
  const [low, high] = typeof given === "object" ? given : [0, Number.POSITIVE_INFINITY];
  const inside = all.filter((edge) => edge > low && edge < high);
  const ends = typeof given === "object" ? [low, high] : [];
  const edges = [...new Set([...inside, ...ends])].sort((a, b) => a - b);
  if (edges.length === 0) return { fact, points: [], edges };
  const between = edges.flatMap((edge, i) => (i === 0 ? [edge] : [((edges[i - 1] as number) + edge) / 2, edge]));
  const beyond =
    typeof given === "object" ? between : [(edges[0] as number) / 2, ...between, (edges.at(-1) as number) * 2];
  return { fact, points: beyond, edges };
}

/** All labels that a fact may have: those it is limited to, else all that the schemes know. */
function labelPoints(schemes: readonly Scheme[], fact: TextFact, wanted: readonly string[]): readonly string[] {
  const all = closedLabels[fact] ?? [...wanted, ...schemes.flatMap((scheme) => domain(scheme, fact).texts)];
  return [...new Set(all)];
}

/** The facts by which it is not yet known which of the schemes is for a machine, each with points that stand for all. */
export function openFacts(schemes: readonly Scheme[], known: KnownFacts): FactPoints[] {
  const wanted = new Map<Fact, (Interval | string | readonly string[])[]>();
  for (const condition of schemes.flatMap(conditionsOf)) {
    for (const [fact, value] of Object.entries(condition) as [Fact, Interval | string][]) {
      wanted.set(fact, [...(wanted.get(fact) ?? []), value]);
    }
  }
  const found: FactPoints[] = [];
  for (const [fact, values] of wanted) {
    const given = factOf(fact, known);
    if (fact === "type" || fact === "place" || fact === "condition") continue;
    if (isNumberFact(fact)) {
      if (typeof given === "number") continue;
      found.push(numberPoints(fact, (values as Interval[]).flatMap(edgesOf), given));
    } else if (given === undefined) {
      found.push({ fact, points: labelPoints(schemes, fact, (values as string[]).flatMap(labels)), edges: [] });
    }
  }
  // one label alone tells nothing apart: a machine may have another, or none
  return found.filter(({ fact, points }) => points.length > (isNumberFact(fact) ? 0 : 1));
}

/** The part of all points that a scheme is taken for, as a range in words. */
export function pointsText({ points, edges }: FactPoints, taken: readonly number[], unit: string): string {
  const [first, last] = [taken[0] as number, taken.at(-1) as number];
  const before = edges.filter((edge) => edge < first).at(-1);
  const after = edges.find((edge) => edge > last);
  const low = first === points[0] ? {} : edges.includes(first) ? { from: first } : { above: before as number };
  const high = last === points.at(-1) ? {} : edges.includes(last) ? { to: last } : { below: after as number };
  return intervalText({ ...low, ...high }, unit);
}
