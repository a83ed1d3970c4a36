import { VeladisError } from "../core/index";
import { type Fact, facts } from "./facts";
import type { MissingFact } from "./match-machine";
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
  return deciding.map((fact) => ({ fact, ask: facts[fact].ask }));
}

/** The refusal of a machine without facts that are needed; of a single one the answers stand in the error's own list. */
export function missingFacts(all: readonly MissingFact[]): VeladisError {
  const missing = all.filter(({ fact }, i) => all.findIndex((one) => one.fact === fact) === i);
  const [first] = missing;
  const questions = missing.map(({ fact, ask, unit, allowed }) => {
    const answers = allowed !== undefined && missing.length > 1 ? ` (${allowed.join(", ")})` : "";
    return `${fact}: ${ask}${unit ? ` in ${unit}` : ""}${writtenFact(fact, allowed)}${answers}`;
  });
  return new VeladisError("missing-fact", {
    expected: questions.join("; "),
    received: `a machine without ${missing.map(({ fact }) => fact).join(" and ")}`,
    fact: (first as MissingFact).fact,
    ...(missing.length === 1 && first?.allowed && { allowed: first.allowed }),
  });
}
