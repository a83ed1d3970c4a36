import { VeladisError } from "../core/index";
import type { Fact } from "./facts";
import type { KnownFacts } from "./machine";
import { isOpen, matchMachine } from "./match-machine";
import type { Scheme } from "./scheme";
import { domain, labelsAgree } from "./verdict";

/** Labels that tell rows of a scheme apart and never choose the scheme. */
export const rowLabels = [
  "group",
  "class",
  "category",
  "grade",
  "part",
  "band",
  "content",
  "units",
] as const satisfies readonly Fact[];

/** The labels that were given. */
function labelsOf(known: KnownFacts): readonly (typeof rowLabels)[number][] {
  return rowLabels.filter((fact) => known[fact] !== undefined);
}

function uses(scheme: Scheme, fact: Fact): boolean {
  return domain(scheme, fact).texts.length > 0;
}

/**
 * Refuses a label that schemes for such a machine ask for and none of them has, in service or new, wherever it is
 * measured: taken for that of another machine's scheme, it would be passed over.
 *
 * @throws {@link VeladisError} `unknown-option` or `out-of-range`
 */
export function requireKnownLabels(schemes: readonly Scheme[], known: KnownFacts): void {
  const { type } = known;
  for (const fact of labelsOf(known)) {
    const alone = { type, [fact]: known[fact] } as KnownFacts;
    const users = schemes.filter((scheme) => uses(scheme, fact));
    const [first] = users;
    if (first === undefined || users.some((scheme) => isOpen(scheme, alone))) continue;
    const { exclusion } = matchMachine(first, alone);
    if (exclusion !== undefined) throw new VeladisError(exclusion.code, exclusion);
  }
}

/** The facts without some labels, and the labels in words. */
function without(known: KnownFacts, labels: readonly Fact[], scheme: Scheme): readonly [KnownFacts, string[]] {
  const left = Object.fromEntries(Object.entries(known).filter(([fact]) => !labels.includes(fact as Fact)));
  const aside = labels.map((fact) => `${fact} ${known[fact]}: none of ${scheme.standard} (${scheme.edition})`);
  return [left, aside];
}

/** The labels that are none of a scheme's own, though it asks for such. */
function foreignTo(scheme: Scheme, known: KnownFacts): readonly Fact[] {
  return labelsOf(known).filter((fact) => {
    const { texts } = domain(scheme, fact);
    return texts.length > 0 && !texts.some((text) => labelsAgree(fact, text, known[fact] as string));
  });
}

/** Facts that a row of a scheme may be told by beside its labels, whatever the speed and wherever it is measured. */
const besideLabels: readonly Fact[] = ["type", "power", "application", "shaftHeight", "support", "mounting"];

/**
 * Refuses labels that contradict other facts in any scheme that knows them, whether or not it is the one to judge by: a
 * label that cannot be true may not be passed over.
 *
 * @throws {@link VeladisError} `out-of-range` with both named
 */
export function requireConsistentLabels(schemes: readonly Scheme[], known: KnownFacts): void {
  const labels = labelsOf(known);
  if (labels.length === 0) return;
  const told = Object.fromEntries(
    Object.entries(known).filter(([fact]) => [...besideLabels, ...labels].includes(fact as Fact)),
  ) as KnownFacts;
  for (const scheme of schemes) {
    const [own] = without(told, foreignTo(scheme, told), scheme);
    const [bare] = without(own, labelsOf(own), scheme);
    if (isOpen(scheme, own) || !isOpen(scheme, bare)) continue;
    const { exclusion } = matchMachine(scheme, own);
    if (exclusion !== undefined) throw new VeladisError(exclusion.code, exclusion);
  }
}

/**
 * The facts as a scheme takes them: a label that is none of its own is set aside, and so are labels that only what was
 * taken for facts not given contradicts. A label never rules a scheme out.
 */
export function ownLabels(scheme: Scheme, facts: KnownFacts): readonly [KnownFacts, string[]] {
  const [left, aside] = without(facts, foreignTo(scheme, facts), scheme);
  if (isOpen(scheme, left)) return [left, aside];
  const [bare, all] = without(left, labelsOf(left), scheme);
  return [bare, [...aside, ...all]];
}
