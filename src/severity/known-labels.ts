import { VeladisError } from "../core/index";
import type { Fact } from "./facts";
import type { KnownFacts } from "./machine";
import { isOpen, matchMachine } from "./match-machine";
import type { Scheme } from "./scheme";
import { domain } from "./verdict";

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

/** Those of the admitted schemes whose rows the given labels leave open; all where that is none, to be refused. */
export function withLabels<A extends { readonly scheme: Scheme; readonly facts: KnownFacts }>(
  admitted: readonly A[],
): readonly A[] {
  const left = admitted.filter(({ scheme, facts }) => isOpen(scheme, facts));
  return left.length === 0 ? admitted : left;
}
