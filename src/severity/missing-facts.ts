import { VeladisError } from "../core/index";
import { factText } from "./fact-text";
import { type Fact, facts } from "./facts";
import type { MissingFact } from "./match-machine";
import type { NominalFacts } from "./nominal-power";
import type { UsualCase } from "./usual-case";
import { writtenFact } from "./written-fact";

const usualAnswers = { condition: ["new", "in service"], place: ["housing", "shaft"] } as const;

/** The questions for facts that are taken as usual elsewhere. */
export function usualMissing(usual: UsualCase): MissingFact[] {
  return (Object.keys(usual) as (keyof UsualCase)[]).map((fact) => ({
    fact,
    ask: facts[fact].ask,
    allowed: usualAnswers[fact],
  }));
}

/** The questions for facts that tell schemes apart. */
export function decidingMissing(deciding: readonly Fact[]): MissingFact[] {
  return deciding.map((fact) => {
    const entry = facts[fact];
    return { fact, ask: entry.ask, ...("unit" in entry && { unit: entry.unit }) };
  });
}

/** What was received in place of facts: none, or a range with both sides of what decides. */
function receivedOf(missing: readonly MissingFact[], { known, assumed }: NominalFacts): string {
  const ranges = missing.flatMap(({ fact, unit = "" }) => {
    const given = known[fact];
    return typeof given === "object" ? [`${fact} ${factText(given, unit)}`] : [];
  });
  const left = missing.filter(({ fact }) => typeof known[fact] !== "object").map(({ fact }) => fact);
  return [
    ...(left.length > 0 ? [`a machine without ${left.join(" and ")}`] : []),
    // a horsepower that stands for two powers says more than they do
    ...(assumed.length > 0 ? assumed : ranges).map((text) => `${text}; limits differ within`),
  ].join("; ");
}

/**
 * The refusal of a machine without facts that are needed; of a single one the answers stand in the error's own list.
 *
 * @param nominal - what is known of the machine: a fact that is needed may be a range
 */
export function missingFacts(all: readonly MissingFact[], nominal: NominalFacts): VeladisError {
  const missing = all.filter(({ fact }, i) => all.findIndex((one) => one.fact === fact) === i);
  const [first] = missing;
  const questions = missing.map(({ fact, ask, unit, allowed }) => {
    const answers = allowed !== undefined && missing.length > 1 ? ` (${allowed.join(", ")})` : "";
    return `${fact}: ${ask}${unit ? ` in ${unit}` : ""}${writtenFact(fact, allowed)}${answers}`;
  });
  return new VeladisError("missing-fact", {
    expected: questions.join("; "),
    received: receivedOf(missing, nominal),
    fact: (first as MissingFact).fact,
    ...(missing.length === 1 && first?.allowed && { allowed: first.allowed }),
  });
}
