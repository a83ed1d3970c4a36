import { dataText, shown, VeladisError } from "../core/index";
import { applies } from "./applicable-criteria";
import { objections, sizeAssumption } from "./class-objections";
import { standardText } from "./edition-text";
import { isOutside } from "./exclusion-reason";
import type { KnownFacts } from "./machine";
import { plainType } from "./plain-type";
import type { Criterion, MachineClass, Scheme } from "./scheme";

/** Where a scheme is told in a message. */
const named = ({ standard, edition }: Scheme): string => standardText({ standard, edition });

/** The refusal of a machine without facts that a scheme asks for. */
export function withoutFacts(scheme: Scheme, facts: readonly string[]): VeladisError {
  return new VeladisError("missing-fact", {
    expected: `${facts.join(", ")} of the machine, which ${named(scheme)} asks for`,
    received: "nothing",
    parameter: "options",
    fact: facts[0] as string,
  });
}

/** The one class that the facts decide for, with what stood in for facts not given. */
export function exactClass(scheme: Scheme, known: KnownFacts): [MachineClass, assumed: readonly string[]] {
  const { kind, within, classes: rows } = scheme;
  const wanted = kind === "acceptance" ? "new" : "in service";
  const isOther = known.condition !== undefined && known.condition !== wanted && within?.condition === undefined;
  const open =
    isOther || isOutside(scheme, known)
      ? []
      : rows.map((one) => ({ one, ...objections(one, known) })).filter(({ unmet }) => unmet.length === 0);
  const [first, second] = open.filter(({ unknown }) => unknown.length === 0);
  if (first !== undefined && second === undefined) {
    const classes = open.map(({ one }) => one);
    return [first.one, sizeAssumption(classes, known)];
  }
  if (open.length > 0) throw withoutFacts(scheme, [...new Set(open.flatMap(({ unknown }) => unknown))]);
  throw new VeladisError("out-of-range", {
    expected: `a machine within ${named(scheme)}`,
    received: dataText(known),
    parameter: "options",
  });
}

/** The criterion for a reading of its own quantity and detector, and what else is limited. */
export function exactCriterion(
  scheme: Scheme,
  criteria: readonly Criterion[],
  as: string,
  known: KnownFacts,
): [Criterion, unjudged: string[]] {
  const own = plainType(as);
  let found: Criterion | undefined;
  const unjudged: string[] = [];
  for (const one of criteria) {
    const doesApply = applies(one, known);
    if (doesApply === undefined) throw withoutFacts(scheme, ["speed"]);
    const { quantity, detector } = plainType(one.as);
    if (!doesApply) continue;
    if (quantity !== own.quantity) unjudged.push(one.as);
    else if (detector === own.detector) found ??= one;
  }
  if (found !== undefined) return [found, unjudged];
  throw new VeladisError("wrong-detector", {
    expected: `a quantity and a detector that ${named(scheme)} limits`,
    received: shown(as),
    parameter: "as",
    allowed: criteria.map((one) => one.as),
  });
}
