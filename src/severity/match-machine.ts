import { objections, sizeAssumption } from "./class-objections";
import { type ExclusionReason, exclusionReason, isOutside, noClassReason } from "./exclusion-reason";
import { type Fact, facts } from "./facts";
import { mayBeCategory } from "./fan-category";
import type { KnownFacts } from "./machine";
import { labels } from "./machine-class";
import { withNominalPower } from "./nominal-power";
import type { MachineClass, Scheme } from "./scheme";
import { domain } from "./verdict";

/** A fact that a table needs and was not given. */
export interface MissingFact {
  readonly fact: Fact;
  /** The question to the machine's owner. */
  readonly ask: string;
  /** The answers that the table knows, for a label. */
  readonly allowed?: readonly string[];
  /** The unit of the answer, for a number. */
  readonly unit?: string;
}

/** How a machine matches a scheme. */
export interface MachineMatch {
  /** The one class that the facts decide for, if they do. */
  readonly chosen: MachineClass | undefined;
  /** Classes that nothing given speaks against. */
  readonly open: readonly MachineClass[];
  /** What is needed to decide between them. */
  readonly missing: readonly MissingFact[];
  readonly exclusion: ExclusionReason | undefined;
  /** What was taken for facts not given, in words. */
  readonly assumed: readonly string[];
}

function missingFact(scheme: Scheme, fact: Fact): MissingFact {
  const { texts } = domain(scheme, fact);
  const entry = facts[fact];
  return {
    fact,
    ask: (scheme.meanings as Partial<Record<Fact, string>> | undefined)?.[fact] ?? entry.ask,
    ...(texts.length > 0 && { allowed: texts }),
    ...("unit" in entry && { unit: entry.unit }),
  };
}

/** What speaks against a class, a category that the application of a fan rules out among it. */
function objectionsOf(one: MachineClass, known: KnownFacts): { unmet: readonly Fact[]; unknown: readonly Fact[] } {
  const found = objections(one, known);
  const wanted = one.when?.category ?? one.named?.category;
  if (known.category !== undefined || wanted === undefined || mayBeCategory(known, labels(wanted))) return found;
  return { unmet: [...found.unmet, "category"], unknown: found.unknown.filter((fact) => fact !== "category") };
}

/** True where nothing known speaks against a scheme and one class of it at least. */
export function isOpen(scheme: Scheme, given: KnownFacts): boolean {
  const { known } = withNominalPower([scheme], given);
  return !isOutside(scheme, known) && scheme.classes.some((one) => objectionsOf(one, known).unmet.length === 0);
}

/** How the facts of a machine match a scheme: the class they decide for, or what is missing, or what speaks against it. */
export function matchMachine(scheme: Scheme, given: KnownFacts): MachineMatch {
  const { known, assumed } = withNominalPower([scheme], given);
  const where = `${scheme.standard} (${scheme.edition})`;
  const none = { chosen: undefined, open: [], missing: [], assumed: [] };
  const scope = exclusionReason(scheme, known, where);
  if (scope !== undefined) return { ...none, exclusion: scope };
  const found = scheme.classes.map((one) => ({ one, ...objectionsOf(one, known) }));
  const open = found.filter(({ unmet }) => unmet.length === 0);
  if (open.length === 0) {
    const exclusion = noClassReason(
      scheme,
      known,
      found.map(({ unmet }) => [...unmet]),
      where,
    );
    return { ...none, exclusion };
  }
  const [first, second] = open.filter(({ unknown }) => unknown.length === 0);
  const chosen = second === undefined ? first?.one : undefined;
  const unknown = chosen === undefined ? [...new Set(open.flatMap((one) => one.unknown))] : [];
  const classes = open.map(({ one }) => one);
  return {
    chosen,
    open: classes,
    missing: unknown.map((fact) => missingFact(scheme, fact)),
    assumed: [...(chosen === undefined ? assumed : []), ...sizeAssumption(classes, given)],
    exclusion: undefined,
  };
}
