import { exclusionOf } from "./exclusion-reason";
import { type FactPoints, openFacts, pointsText } from "./fact-points";
import { factText } from "./fact-text";
import { type Fact, facts as factTable, isNumberFact } from "./facts";
import { ownLabels, requireConsistentLabels, requireKnownLabels, rowLabels } from "./known-labels";
import { withLabelledPower } from "./labelled-power";
import type { FactValue, KnownFacts } from "./machine";
import { isOpen } from "./match-machine";
import { withNominalPower } from "./nominal-power";
import type { Scheme } from "./scheme";
import { inOrder } from "./scheme-order";
import { isForKind } from "./verdict";

/** A scheme that the known facts admit: the first that is for the machine, if the facts not given are such. */
export interface Admitted {
  readonly scheme: Scheme;
  /** The facts; of those not given, the part for which the scheme is the first. */
  readonly facts: KnownFacts;
  /** The facts that were not given and decide that it is this one. */
  readonly deciding: readonly Fact[];
  /** What was taken for them, in words. */
  readonly scope: readonly string[];
  /** Labels that are none of this scheme's, in words. */
  readonly aside: readonly string[];
}

/** Facts that tell rows of a scheme apart and never choose the scheme. */
const rowFacts: readonly Fact[] = /* @__PURE__ */ (() =>
  [...rowLabels, "application", "shaftHeight", "height"] as const)();

/** Without the facts that tell rows of a scheme apart. */
function scopeFacts(known: KnownFacts): KnownFacts {
  return Object.fromEntries(Object.entries(known).filter(([fact]) => !rowFacts.includes(fact as Fact)));
}

/** The schemes that give a verdict on such a machine, new or in service, wherever it is measured, best first. */
function forMachine(schemes: readonly Scheme[], known: KnownFacts): readonly Scheme[] {
  const possible = schemes.filter(
    (one) => one.kind !== "grades" && one.informative === undefined && isForKind(one, known.type),
  );
  return inOrder(possible, known);
}

/** Those of them for a place, and for a new machine where there are such. */
function relevant(schemes: readonly Scheme[], known: KnownFacts, place: Scheme["place"]): readonly Scheme[] {
  const possible = schemes.filter((one) => one.place === place);
  const isNew = known.condition === "new" && possible.some(({ kind }) => kind === "acceptance");
  return possible.filter(({ kind }) => (kind === "acceptance") === isNew);
}

/** True for a withdrawn scheme to which only a known speed outside those of a better one leads: its limits may be higher. */
function isOldBySpeed(scheme: Scheme, all: readonly Scheme[], known: KnownFacts): boolean {
  if (scheme.status !== "withdrawn") return false;
  const { speed: _, ...rest } = known;
  const better = all.slice(0, all.indexOf(scheme));
  return better.some((one) => !isOpen(one, known) && isOpen(one, rest));
}

/** Walks through every combination of what the open facts may be; what is handed over is valid for that call only. */
function walk(open: readonly FactPoints[], known: KnownFacts, visit: (completed: KnownFacts) => void): void {
  const completed: { [F in Fact]?: FactValue } = { ...known };
  const from = (at: number): void => {
    const one = open[at];
    if (one === undefined) {
      visit(completed);
      return;
    }
    for (const point of one.points) {
      completed[one.fact] = point;
      from(at + 1);
    }
  };
  from(0);
}

/** What a scheme is taken for of a fact that was not given; undefined where that is all it may be. */
function narrowed(one: FactPoints, taken: ReadonlySet<FactValue>): { value?: FactValue; text?: string } | undefined {
  const { fact, points } = one;
  if (points.every((point) => taken.has(point))) return undefined;
  if (isNumberFact(fact)) {
    const numbers = (points as readonly number[]).filter((point) => taken.has(point));
    const [first, last] = [numbers[0] as number, numbers.at(-1) as number];
    // between its ends another scheme is the first: they bound nothing
    if (first === points[0] && last === points.at(-1)) return {};
    const entry = factTable[fact];
    return { value: [first, last], text: pointsText(one, numbers, "unit" in entry ? entry.unit : "") };
  }
  const [label, ...more] = [...taken] as string[];
  return more.length > 0 ? { text: [label, ...more].join(" or ") } : { value: label as string, text: label as string };
}

/** The scheme with what was taken of the open facts. */
function admittedAs(
  scheme: Scheme,
  known: KnownFacts,
  open: readonly FactPoints[],
  taken: ReadonlyMap<Fact, ReadonlySet<FactValue>>,
): Admitted {
  const facts: { [F in Fact]?: FactValue } = { ...known };
  const scope: string[] = [];
  const deciding: Fact[] = [];
  for (const one of open) {
    const found = narrowed(one, taken.get(one.fact) as ReadonlySet<FactValue>);
    if (found === undefined) continue;
    deciding.push(one.fact);
    if (found.value !== undefined) facts[one.fact] = found.value;
    if (found.text === undefined) continue;
    const name = one.fact === "shaftHeight" ? "shaft height" : one.fact;
    const given = known[one.fact];
    const entry = factTable[one.fact];
    const range = typeof given === "object" && "unit" in entry ? factText(given, entry.unit) : "not";
    scope.push(`${name} ${found.text}: ${range} given, assumed`);
  }
  const [own, aside] = ownLabels(scheme, facts);
  return { scheme, facts: own, deciding, scope, aside };
}

/**
 * The schemes that the known facts admit for readings at a place: for whatever the facts not given may be, the first
 * scheme that is for such a machine. With all facts given that is one; a fact left out can only add to them. Of schemes
 * without precedence, all that are for such a machine.
 *
 * @throws {@link VeladisError} `out-of-range` where label and power contradict each other
 */
export function admittedSchemes(
  schemes: readonly Scheme[],
  stated: KnownFacts,
  place: Scheme["place"],
  precedence: "first" | "none" = "first",
): readonly Admitted[] {
  const all = forMachine(schemes, stated);
  const { known: given, assumed: nominal } = withNominalPower(relevant(all, stated, place), stated);
  // what labels say of a machine holds wherever it is measured, new or in service
  requireKnownLabels(all, given);
  const { known, assumed } = withLabelledPower(all, given);
  const at = { housing: relevant(all, given, "housing"), shaft: relevant(all, given, "shaft") };
  requireConsistentLabels([...at.housing, ...at.shaft], given);
  // a label tells rows apart and is left out below, but what it excludes it excludes
  const possible = at[place].filter((one) => exclusionOf(one, given) === undefined);
  const open = openFacts(possible, known);
  const found = new Map<Scheme, Map<Fact, Set<FactValue>>>();
  walk(open, scopeFacts(known), (completed) => {
    const first = possible.find((scheme) => isOpen(scheme, completed));
    // of schemes that the user names none goes before another
    const isOld =
      first !== undefined && !open.some(({ fact }) => fact === "speed") && isOldBySpeed(first, at[place], completed);
    const those =
      precedence === "first" ? (isOld ? [] : [first]) : possible.filter((scheme) => isOpen(scheme, completed));
    for (const one of those) {
      if (one === undefined) continue;
      const taken = found.get(one) ?? new Map<Fact, Set<FactValue>>(open.map(({ fact }) => [fact, new Set()]));
      for (const { fact } of open) taken.get(fact)?.add(completed[fact] as FactValue);
      found.set(one, taken);
    }
  });
  const admitted = possible.flatMap((scheme) => {
    const taken = found.get(scheme);
    if (taken === undefined) return [];
    const one = admittedAs(scheme, known, open, taken);
    return [{ ...one, scope: [...nominal, ...assumed, ...one.scope] }];
  });
  // a scheme that is only possible has no row for a shaft height as small as that: such machines it refuses
  const left = admitted.filter(({ scheme, facts }) => isOpen(scheme, facts));
  return left.length > 0 ? left : admitted;
}
